import { describe, expect, test } from 'vitest';
import { type Limit, rangeEntry } from '#cells/parameters/range-entry.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { updateParameter } from '#src/notebook/edits/update-parameter.ts';
import type { Notebook, QuantityParameter } from '#src/notebook/types.ts';
import { practiceRoom } from '../../browser/practice-room.ts';

const slabOf = ({ parameters }: Notebook) => parameters.find((p) => p.key === 'slab') as QuantityParameter;
const typed = (limit: Limit, text: string, notebook = practiceRoom()) =>
  rangeEntry(notebook, slabOf(notebook), limit, text);

describe('the range of a parameter', () => {
  test.each([
    ['max', '80', 0.08],
    ['max', '1.5 in', 0.0381],
    ['min', '0', 0],
    ['step', '0.5', 0.0005],
  ] as const)('takes %s %s, as the edit does', (limit, text, value) => {
    expect(typed(limit, text)).toMatchObject({ ok: true, value: expect.closeTo(value, 9) });
    expect(() => updateParameter(practiceRoom(), 'slab', { [limit]: value })).not.toThrow();
  });

  test.each([
    ['step', '0', 'The step of slab thickness must be more than 0, got 0 mm.'],
    ['max', '1e-9', 'The range of slab thickness must end at 38 mm at least (the value in Slab on top), got 1e-9 mm.'],
    ['min', '0.001', 'The range of slab thickness must start at 0 mm at most (the value in As built), got 0.001 mm.'],
    [
      'max',
      '900 m',
      'The range of slab thickness must keep within 0 mm to 1 m (all that deck sheet 1 thickness can be; what is thicker bends as a plate at low frequencies only), got 900 m.',
    ],
    ['max', 'much', 'Expected a length, such as 38 mm; got "much".'],
  ] as const)('refuses %s %s in the units of the page', (limit, text, message) => {
    expect(typed(limit, text)).toMatchObject({ ok: false, message });
  });

  test('everything it refuses the edit refuses too', () => {
    for (const [limit, value] of [
      ['step', 0],
      ['max', 0.0379],
      ['min', 1e-6],
      ['max', 900],
    ] as const) {
      expect(typed(limit, `${value} m`)).toMatchObject({ ok: false });
      expect(() => updateParameter(practiceRoom(), 'slab', { [limit]: value })).toThrow(RangeError);
    }
  });

  test('what is typed as a value is shown is that value: 100 mm shows as 3 15/16 in', () => {
    const full: Notebook = { ...setParameter(practiceRoom(), 'slab', 0.1, 'both'), units: 'inch-pound' };
    expect(typed('max', '3 15/16 in', full)).toMatchObject({ ok: true });
    const least = setParameter({ ...practiceRoom(), units: 'inch-pound' }, 'slab', 0.095, 'both');
    expect(typed('max', '3.74 in', least)).toMatchObject({ ok: true, value: 0.095 });
  });
});
