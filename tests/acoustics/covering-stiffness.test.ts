import { describe, expect, it } from 'vitest';
import { contactStiffnessFor_N_m, coveringDeltaLw_dB, STATED_DLW_dB } from '#src/acoustics/covering-stiffness.ts';
import { laidImprovement } from '#src/acoustics/laid-improvement.ts';
import { COVERING_LIMITS } from '#src/acoustics/material-limits.ts';
import { STANDARD_SLAB } from '#src/acoustics/standard-slab.ts';
import { REFERENCE_COVERING_DLW_DB } from '#src/acoustics/standards/iso-717-2-reference-floors.ts';
import { covering } from '../published/reference-constructions.ts';

const byTheModel_dB = (contactStiffness_N_m: number, surfaceMass_kg_m2 = 3) =>
  laidImprovement({
    ...STANDARD_SLAB,
    covering: { name: 'own', contactStiffness_N_m, surfaceMass_kg_m2, thickness_m: 0.005 },
  })!.dLw;

describe('ΔLw of a covering on concrete by its contact stiffness', () => {
  it('ISO 717-2, Annex B: the reference covering, 6e5 N/m by its curve, has 19 dB, within 1 dB', () => {
    expect(Math.abs(coveringDeltaLw_dB(6e5) - REFERENCE_COVERING_DLW_DB)).toBeLessThanOrEqual(1);
  });

  // DIN 4109 Beiblatt 1:1989, Table 18 (from memory, unverified).
  it.each([
    ['carpet', 28],
    ['sheet-vinyl', 13],
    ['vinyl-plank', 16],
  ] as const)('%s has what the table of floor coverings says, within 1 dB', (key, expected_dB) => {
    expect(Math.abs(coveringDeltaLw_dB(covering(key).contactStiffness_N_m) - expected_dB)).toBeLessThanOrEqual(1);
  });

  it.each([1e4, 1e5, 3e5, 1e6, 3e6, 1e7, 1e8])(
    'is what the whole model predicts for %d N/m, within 1 dB',
    (stiffness) => {
      for (const mass of [0.5, 10])
        expect(Math.abs(coveringDeltaLw_dB(stiffness) - byTheModel_dB(stiffness, mass))).toBeLessThanOrEqual(1);
    },
  );

  it('falls with the stiffness all the way down to nothing, and is no more than that for harder ones', () => {
    const [softest, hardest] = COVERING_LIMITS.contactStiffness_N_m;
    let before = coveringDeltaLw_dB(softest);
    expect(before).toBeGreaterThan(STATED_DLW_dB[1]);
    for (let stiffness = softest; stiffness <= hardest; stiffness *= 1.1) {
      const now = coveringDeltaLw_dB(stiffness);
      expect(now, `${stiffness} N/m`).toBeLessThanOrEqual(Math.max(before, 0));
      before = now;
    }
    expect(before).toBeLessThanOrEqual(0);
  });
});

describe('the contact stiffness for a stated ΔLw', () => {
  const [least, most] = STATED_DLW_dB;
  const stated = Array.from({ length: most - least + 1 }, (_, i) => least + i);

  it('has it, for every whole number that may be stated, and is softer the more is stated', () => {
    let before = Infinity;
    for (const dLw_dB of stated) {
      const stiffness = contactStiffnessFor_N_m(dLw_dB);
      expect(coveringDeltaLw_dB(stiffness)).toBe(dLw_dB);
      expect(stiffness).toBeLessThan(before);
      before = stiffness;
    }
  });

  it.each([5, 13, 16, 19, 24, 28, 33])('has %d dB in the whole model too, within 1 dB', (dLw_dB) => {
    expect(Math.abs(byTheModel_dB(contactStiffnessFor_N_m(dLw_dB)) - dLw_dB)).toBeLessThanOrEqual(1);
  });

  it('is one of three digits', () => {
    for (const dLw_dB of stated) {
      const stiffness = contactStiffnessFor_N_m(dLw_dB);
      expect(stiffness).toBe(Number(stiffness.toPrecision(3)));
    }
  });
});
