import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isUntouched, readEntry } from '#cells/parameters/read-entry.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

const THICKNESS = { label: 'slab thickness', quantity: 'length', min: 0.012, max: 0.1 } as const;

describe('an entry at a limit', () => {
  test('may be typed as it is shown: 100 mm shows as 3 15/16 in, which reads as 100.01 mm', () => {
    expect(formatQuantity(0.1, 'length', 'inch-pound')).toBe('3 15/16 in');
    expect(readEntry(THICKNESS, '3 15/16', 'inch-pound')).toEqual({ ok: true, value: 0.1 });
    expect(readEntry(THICKNESS, '3 15/16 in', 'SI')).toEqual({ ok: true, value: 0.1 });
  });

  test('beyond what rounding explains is refused with the limits in words', () => {
    expect(readEntry(THICKNESS, '4 in', 'inch-pound')).toEqual({
      ok: false,
      message: 'slab thickness must be from 0.472 in to 3 15/16 in, got 4 in.',
    });
    expect(readEntry(THICKNESS, '100.2 mm', 'SI').ok).toBe(false);
  });

  test('is told as it was typed, not rounded to another number', () => {
    const span = { label: 'length', quantity: 'span', min: 0.3, max: 100 } as const;
    const told = (text: string) => readEntry(span, text, 'SI');
    expect(told('1e-9')).toEqual({ ok: false, message: 'length must be from 0.3 m to 100 m, got 1e-9 m.' });
    expect(told('3 mm')).toEqual({ ok: false, message: 'length must be from 0.3 m to 100 m, got 3 mm.' });
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
          for (const limit of [limits.min, limits.max]) {
            const text = formatQuantity(limit, quantity, units);
            const entry = readEntry(limits, text, units);
            expect(entry.ok, text).toBe(true);
          }
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
