import { expect, test } from 'vitest';
import { curvePath } from '#cells/parameters/small-curves.ts';

const BOX = { range: { low: 10, high: 60 }, width: 100, height: 54 };

test('the ends of the range lie inside the picture, from its left edge to its right one', () => {
  expect(curvePath([10, 35, 60], BOX)).toBe('M0 52L50 27L100 2');
});

test('a gap interrupts the curve', () => {
  expect(curvePath([10, NaN, 60, 60, 10], BOX)).toBe('M0 52M50 2L75 2L100 52');
});

test('a single band is a point, none is nothing', () => {
  expect(curvePath([10], BOX)).toBe('M0 52');
  expect(curvePath([], BOX)).toBe('');
});
