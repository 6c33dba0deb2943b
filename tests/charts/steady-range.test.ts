import { expect, test } from 'vitest';
import { steadyRange, wantedRange } from '#src/charts/steady-range.ts';

const STEPS = { step: 10, least: 50 };

test('the wanted range ends at whole steps around the values', () => {
  expect(wantedRange([14, 71], STEPS)).toEqual({ low: 10, high: 80 });
});

test('the wanted range keeps its least width', () => {
  expect(wantedRange([42, 43], STEPS)).toEqual({ low: 40, high: 90 });
});

test('gaps do not count', () => {
  expect(wantedRange([NaN, 14, Infinity, 71], STEPS)).toEqual({ low: 10, high: 80 });
});

test('without a value there is still a range', () => {
  expect(wantedRange([NaN], STEPS)).toEqual({ low: 0, high: 50 });
});

test('a range grows at once, on the side that needs it', () => {
  expect(steadyRange({ low: 10, high: 60 }, { low: 20, high: 80 }, false)).toEqual({ low: 10, high: 80 });
});

test('a range does not shrink while values change', () => {
  const held = { low: 10, high: 80 };
  expect(steadyRange(held, { low: 20, high: 70 }, false)).toBe(held);
});

test('a range shrinks when it may', () => {
  expect(steadyRange({ low: 10, high: 80 }, { low: 20, high: 70 }, true)).toEqual({ low: 20, high: 70 });
});
