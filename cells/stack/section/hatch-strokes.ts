/** Fillings by drafting convention, in pixels so that they look alike at every scale. */
import { diagonals, type Stroke, tiled } from '#src/charts/hatch-path.ts';
import type { Hatch } from './section.ts';

export interface HatchStrokes {
  readonly d: string;
  readonly width: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Lines over an area with its upper left corner at the origin; the caller cuts them to it. */
export function hatchStrokes(hatch: Hatch, size: Size): readonly HatchStrokes[] {
  const area = { x: 0, y: 0, ...size };
  switch (hatch) {
    case 'concrete':
      return [
        { d: tiled(STONES, { width: 34, height: 26 }, size), width: 0.7 },
        { d: tiled(GRAINS, { width: 34, height: 26 }, size), width: 1.4 },
      ];
    case 'topping':
      return [{ d: tiled(SAND, { width: 13, height: 11 }, size), width: 1.4 }];
    case 'panel':
      return [{ d: tiled(STRANDS, { width: 22, height: 6 }, size), width: 0.6 }];
    case 'timber':
      return [{ d: tiled(GRAIN, { width: 30, height: 8 }, size), width: 0.6 }];
    case 'gypsum':
      return [{ d: diagonals(area, 5.5, 'rising'), width: 0.6 }];
    case 'mat':
      return [{ d: diagonals(area, 7, 'rising') + diagonals(area, 7, 'falling'), width: 0.6 }];
    case 'covering':
      return [{ d: tiled(PILE, { width: 3, height: size.height }, size), width: 0.6 }];
    default:
      return [];
  }
}

const POINT = 'h.01';
const STONES: readonly Stroke[] = [
  [5, 6, 'l3.2 5h-6.2z'],
  [22, 15, 'l4.5 2.6l-4.2 2.6z'],
];
const GRAINS: readonly Stroke[] = [
  [14, 4, POINT],
  [27, 7, POINT],
  [17, 10, POINT],
  [10, 18, POINT],
  [31, 22, POINT],
  [18, 24, POINT],
  [4, 23, POINT],
  [31, 12, POINT],
];
const SAND: readonly Stroke[] = [
  [2, 2, POINT],
  [8, 4, POINT],
  [4.5, 7.5, POINT],
  [11, 8.5, POINT],
];
const STRANDS: readonly Stroke[] = [
  [1, 1.5, 'h9'],
  [14, 1.5, 'h5'],
  [5, 4.5, 'h6'],
  [15, 4.5, 'h6'],
];
const GRAIN: readonly Stroke[] = [
  [0, 2, 'c8-2 14 2 30 0'],
  [0, 6, 'c10 2 18-2 30 0'],
];
const PILE: readonly Stroke[] = [[1.5, 0, 'v99']];

/** The even paint under the lines. */
export function hatchGround(hatch: Hatch): string {
  if (hatch === 'rubber') return 'var(--ink)';
  return hatch === 'metal' ? 'var(--hairline)' : 'var(--paper-raised)';
}
