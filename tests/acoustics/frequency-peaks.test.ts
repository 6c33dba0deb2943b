import { expect, it } from 'vitest';
import type { Construction, Leaf, Sheet } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { frequencyPeaks } from '#src/acoustics/frequency-peaks.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { lineAt } from './fixtures.ts';

const C0 = 343.2;

function board(thickness_m: number, density_kg_m3: number, youngsModulus_Pa: number): Leaf {
  const sheet: Sheet = {
    name: 'board',
    thickness_m,
    density_kg_m3,
    youngsModulus_Pa,
    poissonRatio: 0.3,
    lossFactor: 0.02,
    form: 'board',
  };
  return { kind: 'leaf', sheets: [sheet], contact: 'loose' };
}

function peaksOf(...layers: Construction['layers']): number[] {
  const model = floorModel({ length_m: 4, width_m: 3, layers }, MODEL_CONSTANTS);
  return frequencyPeaks(model).map((p) => p.frequency_Hz);
}

const nearest = (peaks: readonly number[], wanted: number) =>
  peaks.reduce((best, f) => (Math.abs(f - wanted) < Math.abs(best - wanted) ? f : best), Infinity);

const gap = (depth_m: number) =>
  ({
    kind: 'cavity',
    joists: 'none',
    depth_m,
    joistWidth_m: 0.05,
    joistSpacing_m: 0.6,
    support: 'separate-joists',
    supportHeight_m: 0,
    fill: [],
  }) as const;

it('finds the critical frequency of a thin board, c²/2π √(m′/B)', () => {
  const bending = (3e9 * 0.006 ** 3) / (12 * (1 - 0.3 ** 2));
  const fc = (C0 ** 2 / (2 * Math.PI)) * Math.sqrt((0.006 * 800) / bending);
  // Thick-plate theory raises it by a few per cent.
  const found = nearest(peaksOf(board(0.006, 800, 3e9)), fc) / fc;
  expect(found).toBeGreaterThan(1);
  expect(found).toBeLessThan(1.1);
});

it('finds the half waves across an empty cavity, nc/2d', () => {
  const peaks = peaksOf(board(0.012, 700, 2e9), gap(0.2), board(0.025, 700, 2e9));
  const depth_m = 0.2;
  for (const n of [1, 2, 3]) expect(nearest(peaks, (n * C0) / (2 * depth_m))).toBeCloseTo((n * C0) / (2 * depth_m), 6);
});

it('finds where a leaf meets a cavity resonance at the angle of its coincidence, where the floor lets most through', () => {
  const layers = [board(0.05, 1500, 1e10), gap(0.2), board(0.012, 700, 2e9)] as const;
  const construction: Construction = { length_m: 4, width_m: 3, layers };
  const peaks = peaksOf(...layers);
  // By brute force: the loudest frequency around, each at its loudest angle.
  const loudest = (f_Hz: number) => {
    const line = lineAt(construction, f_Hz);
    let most = 0;
    for (let u = 0.005; u < 1; u += 0.001) {
      line.at(Math.sqrt(1 - u * u), u, false).march(true);
      most = Math.max(most, line.velocity2.at(-1)!);
    }
    return most;
  };
  let [best, most] = [0, 0];
  for (let f_Hz = 950; f_Hz < 1150; f_Hz += 1) {
    const now = loudest(f_Hz);
    if (now > most) [best, most] = [f_Hz, now];
  }
  expect(Math.abs(nearest(peaks, best) / best - 1)).toBeLessThan(0.01);
});
