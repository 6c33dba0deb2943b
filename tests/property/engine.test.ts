import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Construction, ConstructionLayer } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { floors } from './floors.ts';

describe('every floor the engine accepts', () => {
  it('gets finite levels in every band, 20 Hz to 5 kHz, and in every path', () => {
    fc.assert(
      fc.property(floors('accepted'), (floor) => {
        const { R_dB, Ln_dB, paths_dB, mechanisms } = predict(floor, { lowestBand_Hz: 20 });
        for (const levels of [R_dB, Ln_dB, ...Object.values(paths_dB)]) {
          for (const level of levels!) expect(Number.isFinite(level)).toBe(true);
        }
        for (const { share } of mechanisms) expect(share > 0 && share <= 1).toBe(true);
      }),
      { numRuns: 150, seed: 1, endOnFailure: true },
    );
  });

  it('passes on no more than it gets: R ≥ 0', () => {
    fc.assert(
      fc.property(floors('accepted'), (floor) => {
        for (const R of predict(floor).R_dB) expect(R).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 100, seed: 2, endOnFailure: true },
    );
  });
});

describe('floors that could be built', () => {
  it('change little with a small change of any thickness: 1 % moves no band by more than 3 dB', () => {
    fc.assert(
      fc.property(floors('real', 2), fc.nat(), (floor, pick) => {
        const before = predict(floor);
        const after = predict(thicker(floor, pick, 1.01));
        before.R_dB.forEach((R, i) => {
          expect(Math.abs(R - after.R_dB[i]!), `R at ${before.bands_Hz[i]} Hz`).toBeLessThan(3);
          expect(Math.abs(before.Ln_dB[i]! - after.Ln_dB[i]!), `Ln at ${before.bands_Hz[i]} Hz`).toBeLessThan(3);
        });
      }),
      { numRuns: 60, seed: 3, endOnFailure: true },
    );
  });

  it('gain, where mass rules, as their only leaf gets heavier', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 1.01, max: 2, noNaN: true }),
        (m, more) => {
          const limp = (mass: number): Construction => ({
            length_m: 4,
            width_m: 3,
            layers: [
              {
                kind: 'leaf',
                contact: 'loose',
                sheets: [
                  {
                    name: 'limp',
                    thickness_m: 0.01,
                    density_kg_m3: mass * 100,
                    youngsModulus_Pa: 1e6,
                    poissonRatio: 0.3,
                    lossFactor: 0.1,
                    form: 'board',
                  },
                ],
              },
            ],
          });
          const [light, heavy] = [predict(limp(m)), predict(limp(m * more))];
          light.R_dB.forEach((R, i) => void expect(heavy.R_dB[i]!).toBeGreaterThan(R));
        },
      ),
      { numRuns: 30, seed: 4 },
    );
  });
});

/** One sheet, mat or cavity thicker by the factor. */
function thicker(floor: Construction, pick: number, factor: number): Construction {
  const index = pick % floor.layers.length;
  const layers = floor.layers.map((layer, i): ConstructionLayer => {
    if (i !== index) return layer;
    if (layer.kind === 'leaf') {
      return { ...layer, sheets: layer.sheets.map((s) => ({ ...s, thickness_m: s.thickness_m * factor })) };
    }
    if (layer.kind === 'mat') return { ...layer, dynamicStiffness_N_m3: layer.dynamicStiffness_N_m3 / factor };
    return { ...layer, depth_m: layer.depth_m * factor };
  });
  return { ...floor, layers };
}
