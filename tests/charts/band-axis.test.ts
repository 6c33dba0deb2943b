import { expect, test } from 'vitest';
import {
  bandLabel,
  bandPosition,
  besideBands,
  labelledBands,
  nominalPosition,
  octaveMiddleIndex,
} from '#src/charts/band-axis.ts';
import { BANDS_HZ } from './made-up-prediction.ts';

test('nominal bands stand at equal distances', () => {
  const positions = BANDS_HZ.map(nominalPosition);
  expect(positions).toEqual(positions.map((_, i) => 17 + i));
});

test('a frequency between bands has its place between them', () => {
  expect(bandPosition(100)).toBe(20);
  expect(bandPosition(46)).toBeGreaterThan(nominalPosition(40));
  expect(bandPosition(46)).toBeLessThan(nominalPosition(50));
});

test('with room every band is labelled', () => {
  expect(labelledBands(BANDS_HZ, 40)).toEqual(BANDS_HZ);
});

test('with little room the octave centres stay, 63 and 125 among them', () => {
  expect(labelledBands(BANDS_HZ, 14)).toEqual([63, 125, 250, 500, 1000, 2000, 4000]);
});

test('with hardly any room every other octave stays', () => {
  const left = labelledBands(BANDS_HZ, 5);
  expect(left.length).toBeGreaterThan(2);
  expect(left.length).toBeLessThan(5);
});

test.each([
  [31.5, '31.5'],
  [63, '63'],
  [1250, '1250'],
  [12500, '12 500'],
])('%d Hz is written %s', (band, text) => {
  expect(bandLabel(band)).toBe(text);
});

test('a one-third octave knows the middle of its octave, and that a chart may lack it', () => {
  const middle = (bands_Hz: readonly number[]) => bands_Hz.map((_, i) => bands_Hz[octaveMiddleIndex(bands_Hz, i)]);
  expect(middle([50, 63, 80, 100, 125, 160, 200])).toEqual([63, 63, 63, 125, 125, 125, undefined]);
});

test('what lies beside all bands is known from what lies among them, edges included', () => {
  expect(besideBands(37, BANDS_HZ)).toBe('below');
  expect(besideBands(46, BANDS_HZ)).toBeUndefined();
  expect(besideBands(5500, BANDS_HZ)).toBeUndefined();
  expect(besideBands(5700, BANDS_HZ)).toBe('above');
});
