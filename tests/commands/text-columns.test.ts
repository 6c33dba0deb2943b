import { expect, it } from 'vitest';
import { columns, rated, signedTenths, tenths, whole } from '../../src/commands/text-columns.ts';

it('sets names and words to the left, numbers to the right', () => {
  expect(
    columns(
      [
        ['Hz', 'R', 'why'],
        ['50', '9.5', 'mass'],
        ['5000', '60.1', ''],
      ],
      1,
    ),
  ).toBe('Hz       R  why\n50     9.5  mass\n5000  60.1');
});

it('numbers have a true minus, changes a sign, what has no value a dash', () => {
  expect([tenths(-1.25), tenths(Number.NaN), tenths(undefined), whole(-3)]).toEqual(['−1.3', '–', '–', '−3']);
  expect([signedTenths(0.26), signedTenths(-0.04), signedTenths(0.04), signedTenths(-2)]).toEqual([
    '+0.3',
    '0.0',
    '0.0',
    '−2.0',
  ]);
});

it('a rating beyond its scale says on which side', () => {
  expect(rated({ value: 70, beyond: 'above' })).toBe('>70');
  expect(rated({ value: 15, beyond: 'below' })).toBe('<15');
  expect(rated({ value: 45 })).toBe('45');
});
