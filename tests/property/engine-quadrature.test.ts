import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { QUICK_QUADRATURE, type Quadrature } from '#src/acoustics/quadrature.ts';
import { REFERENCE_CONSTRUCTIONS } from '../published/reference-constructions.ts';
import { ENOUGH_dB, floors, logUniform } from './floors.ts';

/** So many points between breakpoints, crowded to the peaks: no fewer than 2000 plain angles would see. */
const DENSE: Quadrature = {
  frequencies: 20,
  peakFrequencies: 20,
  angles: 60,
  slowWaves: 40,
  resonance: 24,
  // Nothing is too little for all its points.
  tolerance: 1e-9,
  bandTolerance: Infinity,
  mostHalvings: 0,
  mostBandHalvings: 0,
};

/** Fewer points, and pieces refined until they err by less than 1/5000. */
const REFINED: Quadrature = {
  frequencies: 16,
  peakFrequencies: 16,
  angles: 24,
  slowWaves: 24,
  resonance: 16,
  tolerance: 2e-4,
  bandTolerance: 2e-4,
  mostHalvings: 12,
  mostBandHalvings: 4,
};

const COVERING = { name: 'covering', surfaceMass_kg_m2: 2, thickness_m: 0.005 };

/** Levels below say nothing about any room. */
const AUDIBLE_dB = 0;

/** @param own That of every prediction if left out. */
function worst(floor: Construction, reference: Quadrature, own?: Quadrature): { R: number; Ln: number } {
  const quick = predict(floor, own ? { quadrature: own } : {});
  const dense = predict(floor, { quadrature: reference });
  const R = quick.R_dB.map((v, i) => (dense.R_dB[i]! > ENOUGH_dB ? 0 : Math.abs(v - dense.R_dB[i]!)));
  const Ln = quick.Ln_dB.map((v, i) => (dense.Ln_dB[i]! < AUDIBLE_dB ? 0 : Math.abs(v - dense.Ln_dB[i]!)));
  return { R: Math.max(...R), Ln: Math.max(...Ln) };
}

it.each(['w1', 'w2', 'w4', 'w5', 'f1', 'f3', 't1', 't4', 'c75', 'c100', 'c150', 'g2'] as const)(
  'reference construction %s is within 0.1 dB of a dense quadrature in every band',
  (id) => {
    const { R, Ln } = worst(REFERENCE_CONSTRUCTIONS[id], DENSE);
    expect(R).toBeLessThan(0.1);
    expect(Ln).toBeLessThan(0.1);
  },
  60_000,
);

/** Errors of the floors in rising order, R or Ln whichever is worse, dB. */
function errors_dB(all: fc.Arbitrary<Construction>, count: number, own?: Quadrature): number[] {
  return fc
    .sample(all, { numRuns: count, seed: 5 })
    .map((floor) => {
      const { R, Ln } = worst(floor, REFINED, own);
      return Math.max(R, Ln);
    })
    .sort((a, b) => a - b);
}

function hasCavity({ layers }: Construction): boolean {
  return layers.some(({ kind }) => kind === 'cavity');
}

/** What share of the errors is below `limit_dB`. */
function within(errors: readonly number[], limit_dB: number): number {
  return errors.filter((e) => e < limit_dB).length / errors.length;
}

it.each([
  ['of up to two leaves', floors('real', 2), 300],
  ['of two leaves with a cavity between', floors('real', 2).filter(hasCavity), 300],
] as const)(
  'floors %s that could be built are within 0.1 dB of a dense quadrature in every band of up to 110 dB',
  (_, all, count) => {
    const errors = errors_dB(all, count);
    expect(errors[count / 2]).toBeLessThan(0.02);
    expect(errors.at(-1)).toBeLessThan(0.1);
  },
  120_000,
);

it('floors of up to three leaves that could be built are within 0.1 dB in every band', () => {
  expect(errors_dB(floors('real', 3), 150).at(-1)).toBeLessThan(0.1);
}, 120_000);

it('floors with a covering, from soft carpet to hard, are within 0.1 dB in every band', () => {
  const covered = fc
    .tuple(floors('real', 2), logUniform(1e4, 1e7))
    .map(([floor, contactStiffness_N_m]) => ({ ...floor, covering: { ...COVERING, contactStiffness_N_m } }));
  expect(errors_dB(covered, 150).at(-1)).toBeLessThan(0.1);
}, 120_000);

it.each([
  [2, 300],
  [3, 100],
])(
  'anything the engine accepts of up to %d leaves is within 0.1 dB in every band: all %d drawn',
  (leaves, count) => {
    expect(errors_dB(floors('accepted', leaves), count).at(-1)).toBeLessThan(0.1);
  },
  240_000,
);

it('the quick quadrature is within 0.25 dB in every band, 98 of 100 floors of two leaves, none of these drawn 0.6 dB off', () => {
  const errors = errors_dB(floors('real', 2), 150, QUICK_QUADRATURE);
  expect(within(errors, 0.25)).toBeGreaterThanOrEqual(0.98);
  expect(errors.at(-1)).toBeLessThan(0.6);
}, 120_000);
