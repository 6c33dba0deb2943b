import { describe, expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { matLoss } from '#src/acoustics/mat-loss.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { tappingForce2_N2_Hz } from '#src/acoustics/tapping-machine.ts';
import { covering, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated, lineAt } from './fixtures.ts';

function lossOn(construction: Construction, f_Hz: number): number {
  return matLoss(floorModel(construction, MODEL_CONSTANTS), lineAt(construction, f_Hz).states, f_Hz, 0);
}

const screed = leaf([sheet('cement-screed', 0.05)]); // 110 kg/m²

describe('the loss that a floating slab takes from its mat', () => {
  it('on a rigid floor is s′η/(ω²m′) (own hand-worked case: 0.2 · 10⁷ · ∛(110/200)/((2π·200)² · 110) = 0.009434)', () => {
    const rigid = leaf([sheet('concrete', 1.9, { density_kg_m3: 24000 })]);
    expect(lossOn(isolated(screed, mat('mat', 0.02, 1e7, 0.2), rigid), 200)).toBeCloseTo(0.009434, 6);
  });

  it('vanishes on a very soft mat, and is nothing for a slab on no mat', () => {
    const slab = leaf([sheet('concrete', 0.15)]);
    expect(lossOn(isolated(screed, mat('mat', 0.02, 1000, 0.2), slab), 200)).toBeLessThan(2e-6);
    expect(lossOn(isolated(slab), 200)).toBe(0);
  });

  it('is never negative, whatever lies below', () => {
    for (const thickness of [0.01, 0.05, 0.3])
      for (const f_Hz of [50, 200, 1000, 5000]) {
        const below = leaf([sheet('plywood', thickness)]);
        expect(lossOn(isolated(screed, mat('mat', 0.006, 4e7, 0.2), below), f_Hz)).toBeGreaterThanOrEqual(0);
      }
  });
});

describe('a blow on a covering', () => {
  it('gives back less the more the contact loses: 6 dB elastic, 0 dB dead', () => {
    const dead = 3.925;
    const level = (loss: number) => 10 * Math.log10(tappingForce2_N2_Hz(5, 1e-9, 1e6, loss) / dead);
    expect(level(0)).toBeCloseTo(6, 1);
    expect(level(2)).toBeCloseTo(0, 1);
    expect(level(0.5)).toBeLessThan(level(0.2));
  });

  it('leaves concrete without covering as it is', () => {
    expect(tappingForce2_N2_Hz(500, 1e-6, Number.POSITIVE_INFINITY, 0.5)).toBeCloseTo(3.925, 2);
  });

  it('on a heavy floor with carpet is heard no louder than bare by more than 3 dB in any band (ISO 717-2 reference covering: ΔL ≥ 0)', () => {
    const slab = leaf([sheet('concrete', 0.15)]);
    const bare = predict(isolated(slab)).Ln_dB;
    const carpeted = predict({ ...isolated(slab), covering: covering('carpet') }).Ln_dB;
    carpeted.forEach((Ln, i) => {
      expect(Ln - bare[i]!).toBeLessThanOrEqual(3);
    });
  });
});
