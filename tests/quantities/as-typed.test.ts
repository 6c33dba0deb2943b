import { expect, test } from 'vitest';
import { asTyped } from '#src/quantities/as-typed.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

test('what rounds to another number keeps every digit, and gets the unit it was read in', () => {
  expect(formatQuantity(1e-9, 'span', 'SI')).toBe('0 m');
  expect(asTyped('1e-9', 'span', 'SI')).toBe('1e-9 m');
  expect(asTyped(' 100.0001 ', 'length', 'SI')).toBe('100.0001 mm');
});

test.each([
  ['1 1/2', 'length', 'inch-pound', '1 1/2 in'],
  ['-3', 'length', 'inch-pound', '-3 in'],
  ['110 lb/ft3', 'density', 'SI', '110 lb/ft3'],
  ['5\' 6"', 'span', 'SI', '5\' 6"'],
  ['5 ft 6', 'span', 'inch-pound', '5 ft 6'],
  ['40 cm', 'length', 'inch-pound', '40 cm'],
  ['1.5', 'ratio', 'SI', '1.5'],
] as const)('%s as %s in %s is told as %s', (text, kind, system, told) => {
  expect(asTyped(text, kind, system)).toBe(told);
});

test('a page of digits is cut', () => {
  const told = asTyped('9'.repeat(200), 'length', 'SI');
  expect(told).toBe(`${'9'.repeat(39)}… mm`);
});
