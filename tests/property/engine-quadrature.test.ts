import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Quadrature } from '#src/acoustics/quadrature.ts';
import { REFERENCE_CONSTRUCTIONS } from '../published/reference-constructions.ts';
import { floors } from './floors.ts';

/** Each piece between breakpoints has 60 points or more; with its crowding that is far beyond 2000 angles a frequency. */
const DENSE: Quadrature = { frequencies: 60, peakFrequencies: 60, angles: 60, slowWaves: 60, resonance: 40 };

/** Levels below the first, and losses above the second, say nothing about any room. */
const AUDIBLE_dB = 0;
const ENOUGH_dB = 110;

function worst(floor: Construction, reference: Quadrature): { R: number; Ln: number } {
  const quick = predict(floor);
  const dense = predict(floor, { quadrature: reference });
  const R = quick.R_dB.map((v, i) => (dense.R_dB[i]! > ENOUGH_dB ? 0 : Math.abs(v - dense.R_dB[i]!)));
  const Ln = quick.Ln_dB.map((v, i) => (dense.Ln_dB[i]! < AUDIBLE_dB ? 0 : Math.abs(v - dense.Ln_dB[i]!)));
  return { R: Math.max(...R), Ln: Math.max(...Ln) };
}

it.each(['w1', 'w2', 'w4', 'w5', 'f1', 'f3', 't1', 't4', 'c75', 'c100', 'c150', 'g2'] as const)(
  'reference construction %s is within 0.1 dB of a dense quadrature in every band',
  (id) => {
    const { R, Ln } = worst(REFERENCE_CONSTRUCTIONS[id], {
      ...DENSE,
      frequencies: 20,
      peakFrequencies: 20,
      slowWaves: 40,
      resonance: 24,
    });
    expect(R).toBeLessThan(0.1);
    expect(Ln).toBeLessThan(0.1);
  },
  60_000,
);

it('any floor that could be built is within 0.05 dB of a dense quadrature in the median, 0.12 dB in nine of ten, 0.8 dB at worst', () => {
  const found: number[] = [];
  fc.assert(
    fc.property(floors('real', 2), (floor) => {
      const { R, Ln } = worst(floor, {
        frequencies: 16,
        peakFrequencies: 16,
        angles: 24,
        slowWaves: 24,
        resonance: 16,
      });
      found.push(Math.max(R, Ln));
      expect(Math.max(R, Ln)).toBeLessThan(0.8);
    }),
    { numRuns: 200, seed: 5, endOnFailure: true },
  );
  found.sort((a, b) => a - b);
  expect(found[Math.floor(found.length / 2)]!).toBeLessThan(0.05);
  expect(found[Math.floor(found.length * 0.9)]!).toBeLessThan(0.12);
}, 120_000);
