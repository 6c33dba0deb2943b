import { describe, expect, it } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import { rw } from '#src/acoustics/ratings/rw.ts';
import { stc } from '#src/acoustics/ratings/stc.ts';
import { bareSlabRw } from '#src/acoustics/simple/bare-slab.ts';
import { massLaw_dB } from '#src/acoustics/simple/mass-law.ts';
import { exactBandOf, THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';
import { type HomogeneousElement, homogeneousReduction_dB } from '#src/acoustics/standards/iso-12354-1-element.ts';
import { HOMOGENEOUS_MATERIALS } from '#src/acoustics/standards/iso-12354-1-materials.ts';
import { flankingByBand_dB, flankingSimplified } from '#src/acoustics/standards/iso-12354-1-simplified.ts';
import { PUBLISHED_TABLES } from '../../published/ratings-tables.ts';

const bands_Hz = THIRD_OCTAVES_HZ.filter((f) => f >= 50 && f <= 5000);

type Material = keyof typeof HOMOGENEOUS_MATERIALS;
const MATERIALS = Object.keys(HOMOGENEOUS_MATERIALS) as Material[];

function wall(material: Material, thickness_m: number): HomogeneousElement {
  const { density_kg_m3, ...rest } = HOMOGENEOUS_MATERIALS[material];
  return { ...rest, thickness_m, surfaceMass_kg_m2: density_kg_m3 * thickness_m, length_m: 4, height_m: 2.6 };
}
const spectrum = (element: HomogeneousElement) => ({ bands_Hz, values_dB: homogeneousReduction_dB(element, bands_Hz) });

describe('EN 12354-1:2000, Annex B: homogeneous elements', () => {
  it('table B.1: densities, speeds and loss factors (from memory, unverified)', () => {
    const { columns: _, ...rows } = PUBLISHED_TABLES.iso12354_1_materials.values;
    const mine = Object.entries(HOMOGENEOUS_MATERIALS).map(([name, m]) => [name, Object.values(m)]);
    expect(Object.fromEntries(mine)).toEqual(rows);
  });

  it.each([0.1, 0.15, 0.2, 0.25])(
    'Rw of concrete of %d m follows 37.5 lg m′ − 42 of the same annex within 2.5 dB',
    (thickness) => {
      const element = wall('concrete', thickness);
      expect(Math.abs(rw(spectrum(element)).Rw - bareSlabRw(element.surfaceMass_kg_m2))).toBeLessThanOrEqual(2.5);
    },
  );

  /** A. C. C. Warnock, "Cast-in-place concrete slabs": representative laboratory STC of slabs of about 2300 kg/m³. */
  it.each([
    [0.1, 47],
    [0.125, 50],
    [0.15, 53],
    [0.17, 55],
    [0.2, 58],
  ])('Warnock: concrete of %d m is STC %d, within 3 points', (thickness, STC) => {
    expect(Math.abs(stc(spectrum(wall('concrete', thickness))).STC - STC)).toBeLessThanOrEqual(3);
  });

  it('dips in the band next to the critical frequency, 187 Hz for 100 mm at c_L = 3500 m/s', () => {
    const R = spectrum(wall('concrete', 0.1));
    const lowest = Math.min(...R.values_dB);
    expect(R.bands_Hz[R.values_dB.indexOf(lowest)]).toBe(160);
  });

  it('a light wall far below its critical frequency follows the mass law of a finite panel', () => {
    const light = wall('autoclaved aerated concrete', 0.05);
    const [R] = homogeneousReduction_dB({ ...light, longitudinalSpeed_m_s: 100 }, [500]);
    const diffuse = massLaw_dB({ surfaceMass_kg_m2: 20, frequency_Hz: 500, incidence: 'diffuse' });
    expect(R! - diffuse).toBeGreaterThan(-1);
    expect(R! - diffuse).toBeLessThan(4);
  });

  it('is finite and above 0 dB for every material, thickness and band', () => {
    for (const material of MATERIALS) {
      for (const thickness of [0.05, 0.1, 0.2, 0.4]) {
        for (const R of spectrum(wall(material, thickness)).values_dB) expect(R).toBeGreaterThan(10);
      }
    }
  });
});

describe('walls of the standard’s materials', () => {
  const middle_Hz = bands_Hz.map((band_Hz) => exactBandOf(band_Hz).middle_Hz);
  const { density_kg_m3: air_kg_m3, soundSpeed_m_s: c0 } = ROOM_AIR;
  const walls = MATERIALS.flatMap((name) =>
    [0.1, 0.15, 0.24, 0.365, 0.5].map((thickness_m) => ({ name, ...wall(name, thickness_m) })),
  );
  type Wall = (typeof walls)[number];
  const limit_Hz = (w: Wall) => w.longitudinalSpeed_m_s / (5.5 * w.thickness_m);
  const critical_Hz = (w: Wall) => c0 ** 2 / (1.8 * w.longitudinalSpeed_m_s * w.thickness_m);
  const loss = (w: Wall, f: number) => w.internalLossFactor + w.surfaceMass_kg_m2 / (485 * Math.sqrt(f));
  /** R = 20 lg(ρ cL/4ρ0c0) + 10 lg(η/0.02), S. Ljunggren 1991 (from memory, unverified). */
  const plateau_dB = (w: Wall, f: number) => {
    const impedance = (w.surfaceMass_kg_m2 / w.thickness_m) * w.longitudinalSpeed_m_s;
    return 20 * Math.log10(impedance / (4 * air_kg_m3 * c0)) + 10 * Math.log10(loss(w, f) / 0.02);
  };
  /** Annex B above fc, written out with fc,eff (from memory, unverified). */
  const annexB_dB = (w: Wall, f: number) => {
    const x = (4.05 * w.thickness_m * f) / w.longitudinalSpeed_m_s;
    const fc_Hz = critical_Hz(w) * (x + Math.sqrt(1 + x * x));
    const mass_dB = 20 * Math.log10((Math.PI * f * w.surfaceMass_kg_m2) / (air_kg_m3 * c0));
    return mass_dB + 10 * Math.log10((2 * f * loss(w, f) * (1 - fc_Hz / f)) / (Math.PI * fc_Hz));
  };
  /** Small stiff walls, whose first mode lies above fc/2, radiate otherwise. */
  const hasModes = (w: Wall) => {
    const f11_Hz = (c0 ** 2 / (4 * critical_Hz(w))) * (1 / w.length_m ** 2 + 1 / w.height_m ** 2);
    return f11_Hz < critical_Hz(w) / 2;
  };

  it.each(walls)('$name of $thickness_m m: above fc Annex B with fc,eff, until the plateau', (w) => {
    const R_dB = homogeneousReduction_dB(w, bands_Hz);
    const above = middle_Hz.flatMap((f, i) => (f > 2 * critical_Hz(w) ? [{ f, R_dB: R_dB[i]! }] : []));
    expect(above.length).toBeGreaterThan(5);
    for (const { f, R_dB: R } of above) {
      expect(R).toBeLessThan(plateau_dB(w, f) + 1e-9);
      if (hasModes(w)) expect(R).toBeCloseTo(Math.min(annexB_dB(w, f), plateau_dB(w, f)), 6);
    }
  });

  it.each(walls)(
    '$name of $thickness_m m: the plateau touches no band below fp, and none falls behind the one before',
    (w) => {
      const R_dB = homogeneousReduction_dB(w, bands_Hz);
      middle_Hz.forEach((f, i) => {
        if (f < 0.9 * limit_Hz(w)) expect(R_dB[i]!).toBeLessThan(plateau_dB(w, f));
        // Along the plateau it is the loss alone that falls, by half a decibel from third to third.
        if (f > 3 * critical_Hz(w)) expect(R_dB[i]! - R_dB[i - 1]!).toBeGreaterThan(-0.6);
      });
    },
  );

  it('concrete comes to the same plateau by the branch beyond fp, 2 fc (f/fp)³, within 1 dB', () => {
    for (const w of walls.filter(({ name }) => name === 'concrete')) {
      // Far beyond fp R + 10 lg(1/η) by that branch depends on f no more; radiation factor 1.
      const f = 10 * limit_Hz(w);
      const fc_Hz = 2 * critical_Hz(w) * 10 ** 3;
      const mass_dB = 20 * Math.log10((Math.PI * f * w.surfaceMass_kg_m2) / (air_kg_m3 * c0));
      const branch_dB = mass_dB + 10 * Math.log10((2 * f * loss(w, f)) / (Math.PI * fc_Hz));
      expect(Math.abs(branch_dB - plateau_dB(w, f))).toBeLessThan(1);
    }
  });
});

describe('flanking band by band', () => {
  const R_dB = homogeneousReduction_dB(wall('concrete', 0.2), bands_Hz);
  const element = {
    name: 'party wall',
    sourceArea_m2: 10,
    receivingArea_m2: 10,
    junctionLength_m: 4,
    straightK_dB: 6,
    cornerK_dB: 8,
  };
  const wallR_dB = homogeneousReduction_dB(wall('calcium-silicate blocks', 0.1), bands_Hz);
  const inBands = flankingByBand_dB({
    separating: { area_m2: 12, R_dB },
    flanking: [{ ...element, sourceR_dB: wallR_dB, receivingR_dB: wallR_dB }],
  });

  it('is the simplified formula in each band', () => {
    inBands.forEach((R, i) => {
      const one = { ...element, sourceRw_dB: wallR_dB[i]!, receivingRw_dB: wallR_dB[i]! };
      expect(R).toBe(flankingSimplified({ area_m2: 12, Rw_dB: R_dB[i]! }, [one]).Rw_dB);
      expect(R).toBeLessThan(R_dB[i]!);
    });
  });

  it('rated, it agrees with the simplified model fed by ratings within 2 dB, the deviation that the standard states', () => {
    const Rw = (values_dB: readonly number[]) => rw({ bands_Hz, values_dB }).Rw;
    const one = { ...element, sourceRw_dB: Rw(wallR_dB), receivingRw_dB: Rw(wallR_dB) };
    const simplified = flankingSimplified({ area_m2: 12, Rw_dB: Rw(R_dB) }, [one]).Rw_dB;
    expect(Math.abs(Rw(inBands) - simplified)).toBeLessThanOrEqual(2);
  });

  it('a band without a value in the wall has none in the building', () => {
    const short = flankingByBand_dB({
      separating: { area_m2: 12, R_dB },
      flanking: [{ ...element, sourceR_dB: wallR_dB.slice(0, 3), receivingR_dB: wallR_dB }],
    });
    expect(short.map(Number.isNaN)).toEqual(bands_Hz.map((_, i) => i >= 3));
  });
});
