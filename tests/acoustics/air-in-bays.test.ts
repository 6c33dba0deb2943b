import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AirInBays, baysOf, keptShare, outsideKx2 } from '#src/acoustics/air-in-bays.ts';
import type { Cavity } from '#src/acoustics/construction.ts';
import { cavity } from '../published/reference-constructions.ts';

const logarithmic = (least: number, most: number) =>
  fc.double({ min: Math.log(least), max: Math.log(most), noNaN: true }).map(Math.exp);

it('gives back the wave of which a part counts between joists', () => {
  const stopped = fc.double({ min: 0, max: 0.5, noNaN: true });
  fc.assert(
    fc.property(logarithmic(1e-6, 1e3), stopped, logarithmic(1e-3, 1e5), (fourth_m4, stopped, kx2) => {
      const bays: AirInBays = { fourth_m4, stopped };
      const inside = kx2 * keptShare(bays, kx2);
      expect(outsideKx2(bays, inside) / kx2).toBeCloseTo(1, 5);
    }),
  );
});

it('keeps half of the wave number while no half wave fits into a bay, and all where many do', () => {
  const bays = { fourth_m4: (0.4 / Math.PI) ** 4, stopped: 0.5 };
  expect(keptShare(bays, 0.1 ** 2)).toBeCloseTo(0.5, 6);
  expect(keptShare(bays, 1000 ** 2)).toBeCloseTo(1, 6);
});

describe('what joists stop', () => {
  const stopped = (gap_m: number, change: Partial<Cavity> = {}) => baysOf(cavity(change), 0.235 + gap_m).stopped;

  it('is half of kx² where they fill the cavity, and nothing where there are none or air passes through their webs', () => {
    expect(stopped(0)).toBe(0.5);
    expect(stopped(0, { joists: 'none' })).toBe(0);
    expect(stopped(0, { joists: 'open-truss' })).toBe(0);
  });

  it('is less the higher the gap under them, without a jump', () => {
    const gaps_m = Array.from({ length: 400 }, (_, i) => 1e-5 * 10 ** (i / 66));
    const shares = gaps_m.map((gap_m) => stopped(gap_m));
    shares.forEach((share, i) => {
      if (i === 0) return;
      expect(share).toBeLessThanOrEqual(shares[i - 1]!);
      expect(shares[i - 1]! - share).toBeLessThan(0.01);
    });
    expect(shares.at(-1)).toBeLessThan(0.02);
  });

  // A gap of half the depth: ln 1/sin(π/4) = 0.3466 (own arithmetic).
  it('is what the air in the gap weighs', () => {
    const heavy_m = 0.038 * (0.47 / 0.235 - 1) + ((4 * 0.47) / Math.PI) * 0.34657;
    expect(stopped(0.235)).toBeCloseTo(0.5 * (1 - 0.406 / (0.406 + heavy_m)), 4);
  });
});
