import { describe, expect, it } from 'vitest';
import { bentAlong, carriedAlong } from '#src/acoustics/carried-along.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { cavity, leaf, mat } from '../published/reference-constructions.ts';
import { isolated, limp } from './fixtures.ts';

// 30 kg/m² on a mat on 20 kg/m², a ceiling below.
const model = floorModel(
  isolated(leaf([limp(30)]), mat('mat', 0.01, 1e7), leaf([limp(20)]), cavity(), leaf([limp(10)])),
  MODEL_CONSTANTS,
);
const [onMat] = model.interlayers;
if (onMat?.kind !== 'mat') throw new Error('the first leaf must lie on a mat');
/** As loaded by the leaf on it, N/m³. */
const s_N_m3 = onMat.mat.dynamicStiffness_N_m3;
const f0_Hz = Math.sqrt(s_N_m3 * (1 / 30 + 1 / 20)) / (2 * Math.PI);

/** The shares are our own, no source: what they must be at their ends and in their middle. */
describe('a leaf on a mat', () => {
  it('is carried along wholly far below the resonance of both, by half at it, and not far above', () => {
    expect(carriedAlong(model, f0_Hz / 100)).toBeCloseTo(1, 6);
    expect(carriedAlong(model, f0_Hz)).toBeCloseTo(1 / 2, 9);
    expect(carriedAlong(model, 100 * f0_Hz)).toBeCloseTo(0, 6);
  });

  it('bends along as far as it is carried if it is limp, and the less the stiffer it is beside the mat', () => {
    const line_m = 0.4;
    const bent = (f_Hz: number, timesMat: number) =>
      bentAlong(model, f_Hz, 0, { bending_Nm: timesMat * s_N_m3 * (line_m / (2 * Math.PI)) ** 4, line_m });
    for (const f_Hz of [f0_Hz / 100, f0_Hz, 10 * f0_Hz])
      expect(bent(f_Hz, 0)).toBeCloseTo(carriedAlong(model, f_Hz), 9);
    expect(bent(f0_Hz / 100, 1)).toBeCloseTo(1 / 2, 6);
    expect(bent(f0_Hz / 100, 99)).toBeCloseTo(1 / 100, 6);
    expect(bent(f0_Hz, 1)).toBeCloseTo(1 / 3, 6);
  });

  it('bends along less between lines that are closer', () => {
    const bent = (line_m: number) => bentAlong(model, f0_Hz / 100, 0, { bending_Nm: 1000, line_m });
    // Far on the stiff side by the fourth power.
    expect(bent(0.02) / bent(0.01)).toBeCloseTo(16, 2);
    expect(bent(0.6)).toBeGreaterThan(bent(0.4));
  });
});

it('over a cavity nothing is carried or bent along', () => {
  expect(carriedAlong(model, f0_Hz, 1)).toBe(0);
  expect(bentAlong(model, f0_Hz, 1, { bending_Nm: 0, line_m: 0.4 })).toBe(0);
});
