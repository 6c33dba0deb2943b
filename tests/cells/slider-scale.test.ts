import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sliderScale } from '#cells/parameters/slider-scale.ts';
import type { QuantityParameter } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

const slab: QuantityParameter = {
  key: 'slab',
  label: 'slab thickness',
  quantity: 'length',
  value: 0.038,
  min: 0,
  max: 0.1,
  step: 0.001,
};

test('in SI every step is the parameter’s own, without digits of floating point', () => {
  const scale = sliderScale(slab, 'SI');
  expect([scale.min, scale.max]).toEqual([0, 100]);
  expect(Array.from({ length: 101 }, (_, i) => scale.toValue(i))).toEqual(
    Array.from({ length: 101 }, (_, i) => Number((i / 1000).toFixed(3))),
  );
});

test('in inch-pound units a millimetre becomes the nearest sixteenth, and the ends of the range are reached', () => {
  const scale = sliderScale(slab, 'inch-pound');
  expect(scale.toValue(scale.toPosition(0.0381))).toBeCloseTo(0.0381, 12);
  expect(scale.toValue(24)).toBeCloseTo(0.0254 * 1.5, 12);
  expect(scale.toValue(scale.max)).toBe(0.1);
  expect(scale.toValue(scale.min)).toBe(0);
});

test('densities step through round numbers of pounds per cubic foot', () => {
  const density: QuantityParameter = { ...slab, quantity: 'density', min: 1000, max: 2400, step: 10 };
  const scale = sliderScale(density, 'inch-pound');
  const shown = scale.toValue(scale.toPosition(1760)) / (0.45359237 / 0.3048 ** 3);
  expect(shown * 2).toBeCloseTo(Math.round(shown * 2), 6);
});

test.each([
  ['density', { min: 800, max: 2400, step: 10 }],
  ['surface-mass', { min: 5, max: 900, step: 1 }],
  ['frequency', { min: 5, max: 60, step: 0.5 }],
] as const)('each step of a %s changes the number beside the slider, in inch-pound units too', (quantity, range) => {
  const scale = sliderScale({ ...slab, quantity, ...range }, 'inch-pound');
  const shown = Array.from({ length: scale.max - scale.min + 1 }, (_, i) =>
    formatQuantity(scale.toValue(scale.min + i), quantity, 'inch-pound'),
  );
  // The ends of the range may lie less than a step from their neighbours.
  const inner = shown.slice(1, -1);
  expect(inner.length).toBeGreaterThan(10);
  expect(new Set(inner).size).toBe(inner.length);
});

test('a range that does not begin on a step is still reached at both ends', () => {
  const scale = sliderScale({ ...slab, min: 0.0125, max: 0.0433 }, 'SI');
  expect(scale.toValue(scale.min)).toBe(0.0125);
  expect(scale.toValue(scale.max)).toBe(0.0433);
});

test('whatever the range and the unit, a position stays inside and survives the way there and back', () => {
  const range = fc.record({
    min: fc.double({ min: 0, max: 1, noNaN: true }),
    width: fc.double({ min: 0.001, max: 10, noNaN: true }),
    step: fc.double({ min: 0.0005, max: 0.1, noNaN: true }),
    units: fc.constantFrom('SI', 'inch-pound'),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(range, ({ min, width, step, units, at }) => {
      const parameter = { ...slab, min, max: min + width, step };
      const scale = sliderScale(parameter, units);
      const position = Math.round(scale.min + at * (scale.max - scale.min));
      const value = scale.toValue(position);
      expect(value).toBeGreaterThanOrEqual(min);
      expect(value).toBeLessThanOrEqual(min + width);
      if (position > scale.min && position < scale.max) expect(scale.toPosition(value)).toBe(position);
    }),
  );
});
