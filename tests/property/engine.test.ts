import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Construction, ConstructionLayer, Sheet } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { lineAt, tauAt, turned } from '../acoustics/fixtures.ts';
import { ENOUGH_dB, floors, logUniform, uniform } from './floors.ts';

describe('every floor the engine accepts', () => {
  it('gets finite levels in every band, 20 Hz to 5 kHz, and in every path', () => {
    fc.assert(
      fc.property(floors('accepted'), (floor) => {
        const { R_dB, Ln_dB, paths_dB, mechanisms, impactMechanisms } = predict(floor, { lowestBand_Hz: 20 });
        for (const levels of [R_dB, Ln_dB, ...Object.values(paths_dB)]) {
          for (const level of levels!) expect(Number.isFinite(level)).toBe(true);
        }
        for (const { share } of [...mechanisms, ...impactMechanisms]) expect(share > 0 && share <= 1).toBe(true);
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

  it('passes the same sound upside down: τ of every wave to 1e-6 (reciprocity)', () => {
    fc.assert(
      fc.property(floors('accepted').map(symmetric), logUniform(20, 5000), uniform(0.02, 1), (floor, f_Hz, u) => {
        expect(tauAt(lineAt(floor, f_Hz), u) / tauAt(lineAt(turned(floor), f_Hz), u)).toBeCloseTo(1, 6);
      }),
      { numRuns: 300, seed: 6, endOnFailure: true },
    );
  });
});

describe('floors that could be built', () => {
  it('have the same transmission loss upside down where nothing solid joins their leaves: every band of up to 110 dB within 0.1 dB', () => {
    fc.assert(
      fc.property(floors('real').map(symmetric).map(unjoined), (floor) => {
        const [down, up] = [predict(floor), predict(turned(floor))];
        down.R_dB.forEach((R, i) => {
          if (R > ENOUGH_dB) return;
          expect(Math.abs(R - up.R_dB[i]!), `${down.bands_Hz[i]} Hz`).toBeLessThan(0.1);
        });
      }),
      { numRuns: 150, seed: 8, endOnFailure: true },
    );
  });

  it('change little with a small change of any number: 1 % moves no band by more than 2.5 dB', () => {
    fc.assert(
      fc.property(floors('real', 2), fc.nat(), (floor, pick) => {
        const before = predict(floor);
        const [path, after] = onePerCentMore(floor, pick);
        const changed = predict(after);
        before.R_dB.forEach((R, i) => {
          expect(Math.abs(R - changed.R_dB[i]!), `R at ${before.bands_Hz[i]} Hz, ${path}`).toBeLessThan(2.5);
          expect(
            Math.abs(before.Ln_dB[i]! - changed.Ln_dB[i]!),
            `Ln at ${before.bands_Hz[i]} Hz, ${path}`,
          ).toBeLessThan(2.5);
        });
      }),
      { numRuns: 400, seed: 3, endOnFailure: true },
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

/** The floor with one of its numbers 1 % greater, and where it stands. */
function onePerCentMore(floor: Construction, pick: number): [path: string, floor: Construction] {
  const copy = structuredClone(floor);
  const places = numbersIn(copy, '');
  const { path, owner, key } = places[pick % places.length]!;
  owner[key]! *= 1.01;
  return [path, copy];
}

interface NumberPlace {
  readonly path: string;
  readonly owner: Record<string, number>;
  readonly key: string;
}

function numbersIn(value: object, path: string): NumberPlace[] {
  return Object.entries(value).flatMap(([key, inside]: [string, unknown]) => {
    const here = `${path}/${key}`;
    if (typeof inside === 'number') return [{ path: here, owner: value as Record<string, number>, key }];
    return typeof inside === 'object' && inside !== null ? numbersIn(inside, here) : [];
  });
}

/** No supports in any cavity. */
function unjoined(floor: Construction): Construction {
  const layers = floor.layers.map(
    (layer): ConstructionLayer => (layer.kind === 'cavity' ? { ...layer, support: 'direct' } : layer),
  );
  return { ...floor, layers };
}

function clamp(x: number, least: number, most: number): number {
  return Math.min(Math.max(x, least), most);
}

/**
 * Boards, mats and cavities alike from above and from below: all there, nothing on joists, fill to the brim; mats that
 * are accepted under the load of either side.
 */
function symmetric(floor: Construction): Construction {
  const layers = floor.layers.map((layer): ConstructionLayer => {
    if (layer.kind === 'mat') return { ...layer, dynamicStiffness_N_m3: clamp(layer.dynamicStiffness_N_m3, 1e7, 1e8) };
    if (layer.kind === 'leaf') {
      const there = (s: Sheet): Sheet => ({ ...s, form: 'board', thickness_m: Math.max(s.thickness_m, 1e-4) });
      return { ...layer, sheets: layer.sheets.map(there) };
    }
    const support = layer.support === 'hangers' ? 'clips' : layer.support;
    const fill = layer.fill.slice(0, 1).map((f) => ({ ...f, thickness_m: 5 }));
    return { ...layer, joists: 'none', support, fill, depth_m: Math.min(layer.depth_m, 4.9) };
  });
  return { ...floor, layers };
}
