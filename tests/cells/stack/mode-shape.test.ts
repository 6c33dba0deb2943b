import fc from 'fast-check';
import { expect, test } from 'vitest';
import { modeShape } from '#cells/stack/swing/mode-shape.ts';

test('two masses swing against each other in the inverse ratio of their masses', () => {
  const [m1, m2, s] = [60, 20, 1e6];
  const f0 = Math.sqrt(s * (1 / m1 + 1 / m2)) / (2 * Math.PI);
  const [x1, x2] = modeShape([m1, m2], [s], f0);
  expect(x1! / x2!).toBeCloseTo(-m2 / m1, 9);
});

// Three equal masses on two equal springs: ω² = s/m (ends against each other, the middle still) and 3 s/m. By hand.
test('three equal masses have the shapes (1, 0, −1) and (1, −2, 1)', () => {
  const s = 1e6;
  const frequency = (ratio: number) => Math.sqrt((ratio * s) / 30) / (2 * Math.PI);
  modeShape([30, 30, 30], [s, s], frequency(1)).forEach((x, i) => {
    expect(x).toBeCloseTo([1, 0, -1][i]!, 9);
  });
  modeShape([30, 30, 30], [s, s], frequency(3)).forEach((x, i) => {
    expect(x).toBeCloseTo([0.5, -1, 0.5][i]!, 9);
  });
});

test('in a mode of two masses nothing as a whole moves, whatever masses and spring', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1000, noNaN: true }),
      fc.double({ min: 1, max: 1000, noNaN: true }),
      fc.double({ min: 1e4, max: 1e9, noNaN: true }),
      (m1, m2, s) => {
        const f0 = Math.sqrt(s * (1 / m1 + 1 / m2)) / (2 * Math.PI);
        const [x1, x2] = modeShape([m1, m2], [s], f0);
        expect((m1 * x1! + m2 * x2!) / (m1 + m2)).toBeCloseTo(0, 9);
        expect(Math.max(Math.abs(x1!), Math.abs(x2!))).toBe(1);
      },
    ),
  );
});

test('a single mass has nothing to swing against', () => {
  expect(modeShape([50], [], 40)).toEqual([1]);
});
