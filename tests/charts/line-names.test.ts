import { expect, test } from 'vitest';
import { exitAbove } from '#src/charts/line-names.ts';

const POSITION = [17, 18, 19, 20];

test('a line leaves where it crosses the upper edge for the last time', () => {
  expect(exitAbove([50, 60, 80, 95], POSITION, 70)).toBe(18.5);
  expect(exitAbove([50, 75, 65, 75], POSITION, 70)).toBe(19.5);
});

test('gaps neither hide a crossing nor make one', () => {
  expect(exitAbove([60, NaN, 80, NaN], POSITION, 70)).toBe(18);
  expect(exitAbove([60, NaN, 65, NaN], POSITION, 70)).toBeUndefined();
});

test('a line that ends in the picture leaves nowhere, one that never lies in it has no place', () => {
  expect(exitAbove([75, 80, 72, 70], POSITION, 70)).toBeUndefined();
  expect(exitAbove([NaN, NaN, NaN, NaN], POSITION, 70)).toBeUndefined();
  expect(exitAbove([80, 90, 95, 99], POSITION, 70)).toBe(-Infinity);
});
