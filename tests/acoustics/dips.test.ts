import { expect, test } from 'vitest';
import { dips } from '#src/acoustics/dips.ts';

/** Twenty bands of a made-up curve. */
const curve = (value: (i: number) => number) => Array.from({ length: 20 }, (_, i) => value(i));

const bands = (found: ReturnType<typeof dips>) => found.flatMap((dip, i) => (dip ? [i] : []));

test.each<[string, (i: number) => number]>([
  ['level', () => 40],
  ['rising by mass', (i) => 20 + 2 * i],
  ['rising faster and faster', (i) => 20 + 0.2 * i * i],
  ['rising slower and slower', (i) => 20 + 20 * Math.sqrt(i)],
  ['bent from 2 to 6 dB a band', (i) => (i < 10 ? 2 * i : 20 + 6 * (i - 10))],
  ['bent from 6 to 2 dB a band', (i) => (i < 10 ? 6 * i : 60 + 2 * (i - 10))],
  ['without values', () => Number.NaN],
  ['of nothing that comes through', () => Number.POSITIVE_INFINITY],
])('a curve %s has no dip', (_, value) => {
  expect(bands(dips(curve(value)))).toEqual([]);
});

test('a dip of 6 dB in a rise of 2 dB a band is found with its depth and its bottom (own hand-worked case)', () => {
  const found = dips(curve((i) => 20 + 2 * i - (i === 9 ? 6 : 0)));
  // Level with the band before: 36 − (20 + 18 − 6) = 4; between its neighbours (36 + 40)/2 − 32 = 6, as it rose before 38 − 32.
  expect(found[9]).toEqual({ depth_dB: 6, bottom: 9 });
  expect(bands(found)).toEqual([9]);
});

test('a dip over several bands has one bottom, and ends where the curve is above all in the octave before it', () => {
  const level = [30, 32, 34, 35, 31, 25, 28, 33, 38, 42, 46, 50];
  const found = dips(level);
  expect(bands(found)).toEqual([4, 5, 6]);
  expect(new Set(found.flatMap((dip) => dip?.bottom ?? []))).toEqual(new Set([5]));
});

test('two dips side by side have each their bottom', () => {
  const found = dips([30, 33, 36, 30, 24, 31, 22, 30, 38, 42, 46]);
  expect(found[3]!.bottom).toBe(4);
  expect(found[4]!.bottom).toBe(4);
  expect(found[6]!.bottom).toBe(6);
  expect(found[7]!.bottom).toBe(6);
});

test('a curve that falls up to its highest band is in a dip whose end lies beyond', () => {
  const found = dips([30, 32, 34, 36, 37, 33, 28]);
  expect(bands(found)).toEqual([5, 6]);
});

test('below a second curve a smooth rise lacks what it is short of, and nothing where that has no value', () => {
  const level = curve((i) => 20 + 2 * i);
  const least = level.map((value, i) => (i < 4 ? Number.NaN : i < 7 ? value + i : value - 1));
  const found = dips(level, least);
  expect(bands(found)).toEqual([4, 5, 6]);
  expect(found[4]).toEqual({ depth_dB: 4, bottom: 6 });
});
