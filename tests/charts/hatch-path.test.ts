import fc from 'fast-check';
import { expect, test } from 'vitest';
import { diagonals, dots, tiled } from '#src/charts/hatch-path.ts';

const area = fc.record({
  x: fc.double({ min: -50, max: 500, noNaN: true }),
  y: fc.double({ min: -50, max: 500, noNaN: true }),
  width: fc.double({ min: 0, max: 200, noNaN: true }),
  height: fc.double({ min: 0, max: 200, noNaN: true }),
});

const points = (d: string) =>
  [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

test.each(['rising', 'falling'] as const)('%s lines stay inside their area, at 45°', (direction) => {
  fc.assert(
    fc.property(area, (a) => {
      const at = points(diagonals(a, 8, direction));
      at.forEach(([x, y], i) => {
        // Written to a tenth of a pixel.
        expect(x).toBeGreaterThanOrEqual(a.x - 0.06);
        expect(x).toBeLessThanOrEqual(a.x + a.width + 0.06);
        expect(y).toBeGreaterThanOrEqual(a.y - 0.06);
        expect(y).toBeLessThanOrEqual(a.y + a.height + 0.06);
        if (i % 2) {
          const [x0, y0] = at[i - 1]!;
          expect(Math.abs(y - y0 - (direction === 'rising' ? -1 : 1) * (x - x0))).toBeLessThan(0.25);
        }
      });
    }),
  );
});

test('lines of neighbouring areas join', () => {
  const left = points(diagonals({ x: 0, y: 0, width: 20, height: 20 }, 8, 'rising'));
  const right = points(diagonals({ x: 20, y: 0, width: 20, height: 20 }, 8, 'rising'));
  const onBorder = (all: typeof left) =>
    all
      .filter(([x, y]) => x === 20 && y > 0 && y < 20)
      .map(([, y]) => y)
      .toSorted();
  expect(onBorder(left).length).toBeGreaterThan(0);
  expect(onBorder(left)).toEqual(onBorder(right));
});

test('dots stay inside their area with their whole radius', () => {
  fc.assert(
    fc.property(area, (a) => {
      for (const [x, y] of points(dots(a, 6, 1))) {
        expect(x).toBeGreaterThanOrEqual(a.x + 0.94);
        expect(x).toBeLessThanOrEqual(a.x + a.width - 0.94);
        expect(y).toBeGreaterThanOrEqual(a.y + 0.94);
        expect(y).toBeLessThanOrEqual(a.y + a.height - 0.94);
      }
    }),
  );
});

test('a figure is repeated over the whole area', () => {
  const d = tiled([[1, 1, 'h2']], { width: 10, height: 5 }, { width: 30, height: 10 });
  expect(points(d)).toEqual([
    [1, 1],
    [11, 1],
    [21, 1],
    [1, 6],
    [11, 6],
    [21, 6],
  ]);
});
