import { expect, test } from 'vitest';
import { massText, signed, signedMass, signedQuantity } from '#cells/shared/number-words.ts';

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

test('masses and what they differ by have one decimal each, whatever their digits', () => {
  expect([30.21, 97.1, 99, 0].map((m) => massText(m, 'SI'))).toEqual([
    ...['30.2 kg/m²', '97.1 kg/m²', '99.0 kg/m²', '0.0 kg/m²'],
  ]);
  expect([66.9, 2.13, 69, -88.04, 0.1 + 0.2 - 0.3].map((m) => signedMass(m, 'SI'))).toEqual([
    ...['+66.9 kg/m²', '+2.1 kg/m²', '+69.0 kg/m²', '−88.0 kg/m²', '±0.0 kg/m²'],
  ]);
  // 1 lb/ft² is 4.882 kg/m².
  expect(signedMass(67, 'inch-pound')).toBe('+13.7 lb/ft²');
  // What is there is never shown as nothing.
  expect(signedMass(0.02, 'SI')).toBe('+0.02 kg/m²');
  expect(massText(NaN, 'SI')).toBe('–');
});
