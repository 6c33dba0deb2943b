import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isUntouched, readEntry } from '#cells/parameters/read-entry.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { limitText } from '#src/quantities/limit-text.ts';

const THICKNESS = { label: 'slab thickness', quantity: 'length', min: 0.012, max: 0.1 } as const;

describe('an entry at a limit', () => {
  test('may be typed as it is shown: 100 mm shows as 3 15/16 in, which reads as 100.01 mm', () => {
    expect(formatQuantity(0.1, 'length', 'inch-pound')).toBe('3 15/16 in');
    expect(readEntry(THICKNESS, '3 15/16', 'inch-pound')).toEqual({ ok: true, value: 0.1 });
    expect(readEntry(THICKNESS, '3 15/16 in', 'SI')).toEqual({ ok: true, value: 0.1 });
  });

  test('may be typed as it is shown where what is typed would show as a fraction: 14.37 in, near 14 3/8 in', () => {
    const limits = { label: 'depth', quantity: 'length', min: 0.3, max: 14.36501 * 0.0254 } as const;
    expect(formatQuantity(limits.max, 'length', 'inch-pound')).toBe('14.37 in');
    expect(formatQuantity(14.37 * 0.0254, 'length', 'inch-pound')).toBe('14 3/8 in');
    expect(readEntry(limits, '14.37 in', 'inch-pound')).toEqual({ ok: true, value: limits.max });
    expect(readEntry(limits, '14 3/8 in', 'inch-pound').ok).toBe(false);
  });

  test('beyond what rounding explains is refused with the limit in words', () => {
    expect(readEntry(THICKNESS, '4 in', 'inch-pound')).toEqual({
      ok: false,
      message: 'slab thickness must be at most 3 15/16 in, got 4 in.',
    });
    expect(readEntry(THICKNESS, '100.2 mm', 'SI').ok).toBe(false);
  });

  test('is told as it was typed, not rounded to another number', () => {
    const span = { label: 'length', quantity: 'span', min: 0.3, max: 100 } as const;
    const told = (text: string) => readEntry(span, text, 'SI');
    expect(told('1e-9')).toEqual({ ok: false, message: 'length must be at least 0.3 m, got 1e-9 m.' });
    expect(told('3 mm')).toEqual({ ok: false, message: 'length must be at least 0.3 m, got 3 mm.' });
  });

  test('long lengths are told in metres and in feet, and a reason with the limit that it is about', () => {
    const depth = { label: 'depth', quantity: 'length', min: 0, max: 2, whyNotMore: 'that is a room' } as const;
    const told = (text: string, units: 'SI' | 'inch-pound', more: object = {}) => {
      const entry = readEntry({ ...depth, ...more }, text, units);
      return entry.ok ? entry.value : entry.message;
    };
    expect(told('2100', 'SI')).toBe('depth must be at most 2 m (that is a room), got 2100 mm.');
    expect(told('-1', 'SI')).toBe('depth must be at least 0 mm, got -1 mm.');
    expect(told('80', 'inch-pound')).toBe('depth must be at most 6 ft 6 3/4 in (that is a room), got 80 in.');
    expect(told('6 ft 6 3/4 in', 'inch-pound')).toBe(2);
    expect(told('3 m', 'SI', { limitsFrom: 'its range' })).toBe(
      'depth must be at most 2 m (its range; that is a room), got 3 m.',
    );
  });

  test('every limit can be typed as shown, in both systems of units', () => {
    const kinds = ['length', 'span', 'density', 'surface-mass', 'stiffness', 'modulus', 'level', 'ratio'] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.constantFrom('SI' as const, 'inch-pound' as const),
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.double({ min: 1.001, max: 1000, noNaN: true }),
        (quantity, units, min, ratio) => {
          const limits = { label: 'x', quantity, min, max: min * ratio };
          for (const limit of [limits.min, limits.max])
            for (const text of [formatQuantity(limit, quantity, units), limitText(limit, quantity, units)])
              expect(readEntry(limits, text, units).ok, text).toBe(true);
        },
      ),
      { numRuns: 500 },
    );
  });
});

test('a value within the limits is taken as it was typed', () => {
  expect(readEntry(THICKNESS, '37.96 mm', 'inch-pound')).toEqual({ ok: true, value: 0.03796 });
});

test('a text that was not edited is known, blanks around it aside', () => {
  expect(isUntouched(' 3 15/16 in ', '3 15/16 in')).toBe(true);
  expect(isUntouched('3 15/16', '3 15/16 in')).toBe(false);
});
