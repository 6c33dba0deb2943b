import fc from 'fast-check';
import { expect, it } from 'vitest';
import { keptShare, outsideKx2 } from '#src/acoustics/air-in-bays.ts';

const logarithmic = (least: number, most: number) =>
  fc.double({ min: Math.log(least), max: Math.log(most), noNaN: true }).map(Math.exp);

it('gives back the wave of which a part counts between joists', () => {
  fc.assert(
    fc.property(logarithmic(1e-6, 1e3), logarithmic(1e-3, 1e5), (bay4, kx2) => {
      const inside = kx2 * keptShare(bay4, kx2);
      expect(outsideKx2(bay4, inside) / kx2).toBeCloseTo(1, 5);
    }),
  );
});

it('keeps half of the wave number while no half wave fits into a bay, and all where many do', () => {
  const bay4 = (0.4 / Math.PI) ** 4;
  expect(keptShare(bay4, 0.1 ** 2)).toBeCloseTo(0.5, 6);
  expect(keptShare(bay4, 1000 ** 2)).toBeCloseTo(1, 6);
});
