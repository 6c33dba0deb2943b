import { describe, expect, it, test } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import { exactBandOf, THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';
import { homogeneousReduction_dB } from '#src/acoustics/standards/iso-12354-1-element.ts';
import { HOMOGENEOUS_MATERIALS } from '#src/acoustics/standards/iso-12354-1-materials.ts';
import { softeningKink_Hz, thickPlateFactor } from '#src/acoustics/thick-plate.ts';

const CONCRETE = { thickness_m: 0.2, longitudinalSpeed_m_s: 3500 };
/** fc,eff/fc: fc goes as 1/√B. */
const rise = (f_Hz: number, { thickness_m, longitudinalSpeed_m_s } = CONCRETE) =>
  1 / Math.sqrt(thickPlateFactor(f_Hz, thickness_m, longitudinalSpeed_m_s));

describe('EN 12354-1:2000, Annex B: effective critical frequency of thick elements (from memory, unverified)', () => {
  it.each([
    // x = 4.05 f h/cL: 0.05786, 0.2314, 0.4629; x + √(1 + x²).
    [250, 1.05953],
    [1000, 1.25785],
    [2000, 1.56479],
    // fp = cL/5.5h = 3181.8 Hz; 2 (f/fp)³.
    [4000, 3.9736],
    [5000, 7.76093],
  ])('own case by hand: 200 mm of concrete, cL = 3500 m/s, at %d Hz: fc,eff = %f fc', (f_Hz, expected) => {
    expect(rise(f_Hz)).toBeCloseTo(expected, 4);
  });

  it('both branches meet at fp within the 1.1 % by which the formulas differ there', () => {
    const fp_Hz = 3500 / (5.5 * 0.2);
    expect(softeningKink_Hz(0.2, 3500) / fp_Hz).toBeCloseTo(1, 2);
    expect(rise(fp_Hz)).toBeCloseTo(2, 9);
    expect(rise(0.99 * fp_Hz) / rise(fp_Hz)).toBeGreaterThan(0.97);
  });

  it('goes by f h/cL alone, rises with it, and leaves low frequencies and thin elements alone', () => {
    expect(rise(800, { thickness_m: 0.1, longitudinalSpeed_m_s: 1400 })).toBeCloseTo(rise(1000), 12);
    const f_Hz = Array.from({ length: 60 }, (_, i) => 20 * 1.1 ** i);
    f_Hz.slice(1).forEach((f, i) => {
      expect(rise(f)).toBeGreaterThan(rise(f_Hz[i]!));
    });
    expect(rise(5000, { ...CONCRETE, thickness_m: 0.001 })).toBeLessThan(1.006);
  });
});

describe('walls of the standard’s materials', () => {
  const bands_Hz = THIRD_OCTAVES_HZ.filter((f) => f >= 50 && f <= 5000);
  const middle_Hz = bands_Hz.map((band_Hz) => exactBandOf(band_Hz).middle_Hz);
  const { density_kg_m3: air_kg_m3, soundSpeed_m_s: c0 } = ROOM_AIR;
  const walls = Object.entries(HOMOGENEOUS_MATERIALS).flatMap(([name, { density_kg_m3, ...rest }]) =>
    [0.1, 0.15, 0.24, 0.365, 0.5].map((thickness_m) => {
      const surfaceMass_kg_m2 = density_kg_m3 * thickness_m;
      return { name, ...rest, thickness_m, surfaceMass_kg_m2, length_m: 4, height_m: 2.6 };
    }),
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

  test.each(walls)('$name of $thickness_m m: above fc Annex B with fc,eff, until the plateau', (wall) => {
    const R_dB = homogeneousReduction_dB(wall, bands_Hz);
    const above = middle_Hz.flatMap((f, i) => (f > 2 * critical_Hz(wall) ? [{ f, R_dB: R_dB[i]! }] : []));
    expect(above.length).toBeGreaterThan(5);
    for (const { f, R_dB: R } of above) {
      expect(R).toBeLessThan(plateau_dB(wall, f) + 1e-9);
      if (hasModes(wall)) expect(R).toBeCloseTo(Math.min(annexB_dB(wall, f), plateau_dB(wall, f)), 6);
    }
  });

  test.each(walls)(
    '$name of $thickness_m m: the plateau touches no band below fp, and none falls behind the one before',
    (wall) => {
      const R_dB = homogeneousReduction_dB(wall, bands_Hz);
      middle_Hz.forEach((f, i) => {
        if (f < 0.9 * limit_Hz(wall)) expect(R_dB[i]!).toBeLessThan(plateau_dB(wall, f));
        // Along the plateau it is the loss alone that falls, by half a decibel from third to third.
        if (f > 3 * critical_Hz(wall)) expect(R_dB[i]! - R_dB[i - 1]!).toBeGreaterThan(-0.6);
      });
    },
  );

  test('concrete comes to the same plateau by the branch beyond fp, 2 fc (f/fp)³, within 1 dB', () => {
    for (const wall of walls.filter(({ name }) => name === 'concrete')) {
      // Far beyond fp R + 10 lg(1/η) by that branch depends on f no more; radiation factor 1.
      const f = 10 * limit_Hz(wall);
      const fc_Hz = 2 * critical_Hz(wall) * 10 ** 3;
      const mass_dB = 20 * Math.log10((Math.PI * f * wall.surfaceMass_kg_m2) / (air_kg_m3 * c0));
      const branch_dB = mass_dB + 10 * Math.log10((2 * f * loss(wall, f)) / (Math.PI * fc_Hz));
      expect(Math.abs(branch_dB - plateau_dB(wall, f))).toBeLessThan(1);
    }
  });
});
