import { expect, test } from 'vitest';
import { signed, signedQuantity } from '#cells/shared/number-words.ts';

test.each([
  [66.9, 'surface-mass', 'SI', '+66.9 kg/m²'],
  [-0.038, 'length', 'SI', '−38 mm'],
  [0, 'length', 'SI', '±0 mm'],
  // What adding up layers leaves behind, in either direction.
  [0.3 - 0.1 - 0.2, 'length', 'SI', '±0 mm'],
  [0.1 + 0.2 - 0.3, 'length', 'SI', '±0 mm'],
  [1e-9, 'length', 'inch-pound', '±0 in'],
  [NaN, 'length', 'SI', '–'],
] as const)('a difference of %d (%s, %s) reads %s', (difference, kind, units, text) => {
  expect(signedQuantity(difference, kind, units)).toBe(text);
});

test.each([
  [0.4, '±0'],
  [-0.4, '±0'],
  [4.6, '+5'],
  [-3, '−3'],
  [NaN, '–'],
])('a difference of %d in whole decibels reads %s', (difference, text) => {
  expect(signed(difference)).toBe(text);
});
