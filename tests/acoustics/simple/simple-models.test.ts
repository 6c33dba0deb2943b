import { describe, expect, it } from 'vitest';
import { naturalFrequency_Hz } from '#src/acoustics/natural-frequency.ts';
import { deltaLw } from '#src/acoustics/ratings/delta-lw.ts';
import { bareSlabLnw, bareSlabRw, reductionPlusImpact_dB } from '#src/acoustics/simple/bare-slab.ts';
import { coveringImprovement_dB, floatingImprovement_dB } from '#src/acoustics/simple/floating-floor.ts';
import { type Incidence, massLaw_dB } from '#src/acoustics/simple/mass-law.ts';
import { sewellPanel_dB } from '#src/acoustics/simple/sewell-panel.ts';
import { threeBranchDoubleLeaf } from '#src/acoustics/simple/three-branch-double-leaf.ts';
import { THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';
import { screedImprovement_dB } from '#src/acoustics/standards/iso-12354-2-simplified.ts';

const BANDS_HZ = THIRD_OCTAVES_HZ.filter((f) => f >= 50 && f <= 5000);

describe('mass law', () => {
  it.each<[Incidence, number]>([
    ['diffuse', 90],
    ['field', 78],
  ])('the closed form for %s incidence is the integral over angles up to %d°', (incidence, limit_deg) => {
    for (const m of [0.01, 5, 300]) {
      const a = (Math.PI * 200 * m) / (1.204 * 343.2);
      let through = 0;
      let incident = 0;
      const n = 200_000;
      for (let i = 0; i < n; i++) {
        const theta = ((i + 0.5) / n) * limit_deg * (Math.PI / 180);
        const weight = 2 * Math.sin(theta) * Math.cos(theta);
        through += weight / (1 + (a * Math.cos(theta)) ** 2);
        incident += weight;
      }
      const R = massLaw_dB({ surfaceMass_kg_m2: m, frequency_Hz: 200, incidence });
      expect(R).toBeCloseTo(-10 * Math.log10(through / incident), 4);
    }
  });

  it('heavy leaves follow the textbook rules: R0, R0 − 5, R0 − 10 lg(0.23 R0) (Fahy & Gardonio 2007, ch. 5)', () => {
    const at = (incidence: Incidence) => massLaw_dB({ surfaceMass_kg_m2: 100, frequency_Hz: 1000, incidence });
    const R0 = 20 * Math.log10((Math.PI * 1000 * 100) / (1.204 * 343.2));
    expect(at('normal')).toBeCloseTo(R0, 4);
    expect(Math.abs(at('field') - (R0 - 5))).toBeLessThan(0.25);
    expect(Math.abs(at('diffuse') - (R0 - 10 * Math.log10(0.23 * R0)))).toBeLessThan(0.02);
  });

  it('twice the mass or the frequency is 6 dB; nothing stops nothing', () => {
    const R = (m: number, f: number) => massLaw_dB({ surfaceMass_kg_m2: m, frequency_Hz: f, incidence: 'normal' });
    expect(R(100, 500) - R(50, 500)).toBeCloseTo(6.02, 2);
    expect(R(100, 500)).toBeCloseTo(R(50, 1000), 9);
    for (const incidence of ['normal', 'field', 'diffuse'] as const) {
      expect(massLaw_dB({ surfaceMass_kg_m2: 0, frequency_Hz: 500, incidence })).toBe(0);
      expect(massLaw_dB({ surfaceMass_kg_m2: 1e-6, frequency_Hz: 500, incidence })).toBeGreaterThanOrEqual(0);
    }
  });
});

describe('finite panel', () => {
  it('Sewell 1970: by hand, 10 kg/m², 10 m², 500 Hz: R0 31.60, ln(28.95) + 0.16 = 3.525, R 26.13', () => {
    const R = sewellPanel_dB({ surfaceMass_kg_m2: 10, area_m2: 10, frequency_Hz: 500 });
    expect(R).toBeCloseTo(26.13, 1);
  });

  it('lies between diffuse incidence and normal incidence and falls with the area', () => {
    const panel = { surfaceMass_kg_m2: 20, frequency_Hz: 500 };
    const small = sewellPanel_dB({ ...panel, area_m2: 2 });
    const large = sewellPanel_dB({ ...panel, area_m2: 200 });
    expect(small).toBeGreaterThan(large);
    expect(small).toBeLessThan(massLaw_dB({ ...panel, incidence: 'normal' }));
  });

  it('stiffness costs 20 lg(1 − (f/fc)²); from fc up and below k√S = 1.4 there is no value', () => {
    const panel = { surfaceMass_kg_m2: 20, area_m2: 10 };
    const limp = sewellPanel_dB({ ...panel, frequency_Hz: 500 });
    const stiff = sewellPanel_dB({ ...panel, frequency_Hz: 500, criticalFrequency_Hz: 1000 });
    expect(stiff - limp).toBeCloseTo(20 * Math.log10(0.75), 9);
    expect(sewellPanel_dB({ ...panel, frequency_Hz: 1000, criticalFrequency_Hz: 1000 })).toBeNaN();
    expect(sewellPanel_dB({ ...panel, frequency_Hz: 15 })).toBeNaN();
    // k√S = 2π · 24.2 Hz · 3.162 m / 343.2 m/s = 1.40
    expect(sewellPanel_dB({ ...panel, frequency_Hz: 24 })).toBeNaN();
    expect(sewellPanel_dB({ ...panel, frequency_Hz: 25 })).toBeLessThan(
      sewellPanel_dB({ ...panel, frequency_Hz: 31.5 }),
    );
  });
});

describe('double leaf in three branches', () => {
  const floor = { bands_Hz: BANDS_HZ, upperMass_kg_m2: 67, lowerMass_kg_m2: 20, depth_m: 0.25 };

  it('Sharp 1978: f0 = 80 √((m1 + m2)/(m1 m2 d)), limit 55/d, the round numbers of the textbooks', () => {
    const { resonance_Hz, limit_Hz } = threeBranchDoubleLeaf(floor);
    expect(resonance_Hz).toBeCloseTo(80.4 * Math.sqrt(87 / (67 * 20 * 0.25)), 0);
    expect(Math.abs(limit_Hz * 0.25 - 55)).toBeLessThan(0.5);
  });

  it('the branches meet within a decibel', () => {
    const { resonance_Hz: f0, limit_Hz: fl } = threeBranchDoubleLeaf(floor);
    const { R_dB, branches } = threeBranchDoubleLeaf({ ...floor, bands_Hz: [f0 * 0.9999, f0, fl * 0.9999, fl] });
    expect(branches).toEqual(['one mass', 'two masses on air', 'two masses on air', 'two leaves apart']);
    expect(Math.abs(R_dB[1]! - R_dB[0]!)).toBeLessThan(1);
    expect(Math.abs(R_dB[3]! - R_dB[2]!)).toBeLessThan(1);
  });

  it('rises 18 dB per octave between and 12 above, once the leaves are heavy for the air', () => {
    const { R_dB } = threeBranchDoubleLeaf({ ...floor, bands_Hz: [60, 120, 1000, 2000] });
    expect(Math.abs(R_dB[1]! - R_dB[0]! - 18.06)).toBeLessThan(0.5);
    expect(R_dB[3]! - R_dB[2]!).toBeCloseTo(12.04, 1);
  });

  it('without depth or without a second leaf it is one mass', () => {
    const alone = BANDS_HZ.map((f) => massLaw_dB({ surfaceMass_kg_m2: 67, frequency_Hz: f, incidence: 'field' }));
    expect(threeBranchDoubleLeaf({ ...floor, lowerMass_kg_m2: 0 }).R_dB).toEqual(alone);
    expect(threeBranchDoubleLeaf({ ...floor, depth_m: 0 }).branches).toEqual(BANDS_HZ.map(() => 'one mass'));
  });

  it('takes the leaves’ own curves where they are given', () => {
    const own = BANDS_HZ.map(() => 30);
    const { R_dB } = threeBranchDoubleLeaf({ ...floor, upper_dB: own, lower_dB: own });
    expect(R_dB.at(-1)).toBe(66);
  });
});

describe('floating floors and coverings', () => {
  it('ISO 12354-2: f0 = 160 √(s′/m′) with s′ in MN/m³: 110 kg/m² on 10 MN/m³, 48.2 Hz', () => {
    const f0 = naturalFrequency_Hz(10e6, 110);
    expect(f0).toBeCloseTo(160 * Math.sqrt(10 / 110), 0);
    expect(f0).toBeCloseTo(47.99, 1);
  });

  it('rises 9 dB per octave as a plate, 12 where it gives way locally, and takes nothing below f0', () => {
    expect(floatingImprovement_dB(200, 50, 'plate') - floatingImprovement_dB(100, 50, 'plate')).toBeCloseTo(9.03, 2);
    expect(floatingImprovement_dB(200, 50, 'local') - floatingImprovement_dB(100, 50, 'local')).toBeCloseTo(12.04, 2);
    expect(floatingImprovement_dB(30, 50, 'local')).toBe(0);
  });

  it('a covering of 10⁷ N/m begins at 712 Hz under a hammer of 0.5 kg', () => {
    expect(coveringImprovement_dB(700, 1e7)).toBe(0);
    expect(coveringImprovement_dB(7120, 1e7)).toBeCloseTo(40, 1);
  });

  it('ISO 12354-2:2017: the rated 30 lg(f/f0) agrees with 13 lg m′ − 14.2 lg s′ + 20.8 within 3 dB', () => {
    for (const [m, s] of [
      [60, 20e6],
      [110, 10e6],
      [160, 30e6],
    ] as const) {
      const f0 = naturalFrequency_Hz(s, m);
      const values_dB = BANDS_HZ.map((f) => floatingImprovement_dB(f, f0, 'plate'));
      const { dLw } = deltaLw({ bands_Hz: BANDS_HZ, values_dB });
      expect(Math.abs(dLw - screedImprovement_dB(m, s))).toBeLessThanOrEqual(3);
    }
  });
});

describe('bare slabs by their mass', () => {
  it('EN 12354-2:2000 4.3: 164 − 35 lg m′; 345 kg/m² give 75.2', () => {
    expect(bareSlabLnw(345)).toBeCloseTo(75.18, 2);
    expect([bareSlabLnw(99), bareSlabLnw(601)]).toEqual([NaN, NaN]);
  });

  it('EN 12354-1:2000 Annex B: 37.5 lg m′ − 42; 460 kg/m² give 57.9', () => {
    expect(bareSlabRw(460)).toBeCloseTo(57.85, 2);
    expect(bareSlabRw(149)).toBeNaN();
  });

  it('Heckl & Rathe 1963: 38 + 30 lg f far above fc, less near it, nothing below', () => {
    expect(reductionPlusImpact_dB(1000, 1)).toBeCloseTo(128, 2);
    expect(reductionPlusImpact_dB(1000, 1, 'octave')).toBeCloseTo(133, 2);
    expect(reductionPlusImpact_dB(1000, 500)).toBeCloseTo(128 - 1.505, 3);
    expect(reductionPlusImpact_dB(500, 500)).toBeNaN();
  });
});
