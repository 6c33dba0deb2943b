import { expect, test } from 'vitest';
import { nominalPosition } from '#src/charts/band-axis.ts';
import { bandFrame } from '#src/charts/band-frame.ts';
import { exitAbove, namePlaces, nameWidth_px } from '#src/charts/line-names.ts';

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

/** Ten bands on 600 px, 10 to 70 dB on 300 px. */
const FRAME = bandFrame({
  width: 640,
  bands_Hz: [500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000],
  range: { low: 10, high: 70 },
  topRows: 0,
  rightLabels: 60,
  plotHeight: 300,
});
const positions = FRAME.bands_Hz.map(nominalPosition);
/** From the first value to the last one, straight. */
const straight = (label: string, first: number, last: number) => ({
  label,
  values_dB: positions.map((_, i) => first + ((last - first) * i) / (positions.length - 1)),
});

test('names of lines that end at the same place, or leave by the same corner, stand apart', () => {
  const lines = [
    straight('flanking', 48, 69),
    straight('mass law', 27, 69.5),
    straight('supports', 40, 71.5),
    straight('direct', 30, 70.5),
  ];
  const { ends, exits } = namePlaces(lines, positions, FRAME);
  expect(exits).toEqual([]);
  const places = ends.map((e) => FRAME.y(e.value_dB)).toSorted((a, b) => a - b);
  places.slice(1).forEach((y, i) => {
    expect(y - places[i]!).toBeGreaterThanOrEqual(13.99);
  });
  // The line that leaves first is named highest.
  const height = (label: string) => ends.find((e) => e.label === label)!.value_dB;
  expect(['supports', 'direct', 'mass law', 'flanking'].map(height)).toEqual(
    ends.map((e) => e.value_dB).toSorted((a, b) => b - a),
  );
});

test('a line that leaves far from the right edge is named there, inside the picture', () => {
  const { ends, exits } = namePlaces([straight('direct', 20, 170)], positions, FRAME);
  expect(ends).toEqual([]);
  expect(exits[0]!.x + nameWidth_px('direct')).toBeLessThanOrEqual(FRAME.right);
  expect(exits[0]!.row).toBe(0);
});

test('names at the upper edge take another row only where they would touch', () => {
  const steep = [straight('direct', 20, 170), straight('double leaf', 22, 172), straight('hanger', 20, 95)];
  expect(namePlaces(steep, positions, FRAME).exits.map(({ label, row }) => [label, row])).toEqual([
    ['direct', 1],
    ['double leaf', 0],
    ['hanger', 0],
  ]);
});

test('the same lines in another order get the same places', () => {
  const lines = [straight('a', 20, 60), straight('b', 20, 61), straight('c', 20, 62)];
  const byLabel = (list: typeof lines) =>
    namePlaces(list, positions, FRAME).ends.toSorted((a, b) => a.label.localeCompare(b.label));
  expect(byLabel(lines.toReversed())).toEqual(byLabel(lines));
});
