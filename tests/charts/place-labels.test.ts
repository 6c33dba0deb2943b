import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelRows, spreadLabels } from '#src/charts/place-labels.ts';

test('labels that do not touch stay where they are', () => {
  expect(spreadLabels([10, 40, 70], { gap: 12, low: 0, high: 100 })).toEqual([10, 40, 70]);
});

test('labels that touch move apart evenly around where they wanted to be', () => {
  expect(spreadLabels([50, 50], { gap: 12, low: 0, high: 100 })).toEqual([44, 56]);
});

test('labels keep inside, and keep their order', () => {
  expect(spreadLabels([99, 98], { gap: 12, low: 0, high: 100 })).toEqual([100, 88]);
});

test('spread labels never overlap and never leave the space, whatever they want', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -50, max: 150, noNaN: true }), { maxLength: 12 }), (wanted) => {
      const places = spreadLabels(wanted, { gap: 8, low: 0, high: 100 }).toSorted((a, b) => a - b);
      places.forEach((y, i) => {
        expect(y).toBeGreaterThanOrEqual(-1e-9);
        expect(y).toBeLessThanOrEqual(100 + 1e-9);
        if (i) expect(y - places[i - 1]!).toBeGreaterThanOrEqual(8 - 1e-9);
      });
    }),
  );
});

test('too many labels share the space', () => {
  const places = spreadLabels([5, 5, 5, 5, 5], { gap: 40, low: 0, high: 100 });
  expect(places.toSorted((a, b) => a - b)).toEqual([0, 25, 50, 75, 100]);
});

test('labels in a row never overlap', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ left: fc.integer({ min: 0, max: 300 }), width: fc.integer({ min: 1, max: 80 }) })),
      (spans) => {
        const rows = labelRows(spans, 4);
        spans.forEach((a, i) => {
          spans.slice(0, i).forEach((b, k) => {
            if (rows[i] !== rows[k]) return;
            expect(a.left >= b.left + b.width + 4 || b.left >= a.left + a.width + 4).toBe(true);
          });
        });
      },
    ),
  );
});

test('labels with room share one row', () => {
  expect(
    labelRows(
      [
        { left: 100, width: 20 },
        { left: 0, width: 20 },
      ],
      4,
    ),
  ).toEqual([0, 0]);
});
