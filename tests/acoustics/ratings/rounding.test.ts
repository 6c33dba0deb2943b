import { describe, expect, it } from 'vitest';
import { roundHalfEven, roundHalfUp, toTenths } from '#src/acoustics/ratings/rounding.ts';

describe('rounding', () => {
  it.each([
    [20.45, 205],
    [20.449, 204],
    [1.005, 10],
    [0.15, 2],
    [1.45, 15],
    [8.35, 84],
    [-0.25, -2],
    [-0.26, -3],
    [52, 520],
  ])('ISO 717-1:2013 4.4 footnote: %d dB is %d tenths, half up on the decimal as written', (value, tenths) => {
    expect(toTenths(value)).toBe(tenths);
  });

  it('half up goes towards better numbers on both sides of zero', () => {
    expect([2.5, 3.5, -2.5, -3.5].map(roundHalfUp)).toEqual([3, 4, -2, -3]);
  });

  it('ASTM E29: half even goes to the even neighbour, everything else to the nearest', () => {
    expect([2.5, 3.5, -2.5, -3.5, 2.4, 2.6].map(roundHalfEven)).toEqual([2, 4, -2, -4, 2, 3]);
  });

  it('keeps a gap a gap', () => {
    expect([roundHalfUp(NaN), roundHalfEven(NaN), toTenths(NaN)]).toEqual([NaN, NaN, NaN]);
  });
});
