/**
 * Hatches as plain lines, cut to their area. SVG patterns would be shorter, but on paper they become pixels: browsers print
 * them as images of a page's size.
 */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Lines at 45°, rising or falling to the right, `pitch` apart along the axes. Neighbouring areas join. */
export function diagonals({ x, y, width, height }: Area, pitch: number, direction: 'rising' | 'falling'): string {
  const right = x + width;
  const bottom = y + height;
  let d = '';
  if (direction === 'rising') {
    for (let c = pitch * Math.ceil((x + y) / pitch); c < right + bottom; c += pitch) {
      const from = Math.max(x, c - bottom);
      const to = Math.min(right, c - y);
      if (from < to) d += segment(from, c - from, to, c - to);
    }
    return d;
  }
  for (let c = pitch * Math.ceil((y - right) / pitch); c < bottom - x; c += pitch) {
    const from = Math.max(x, y - c);
    const to = Math.min(right, bottom - c);
    if (from < to) d += segment(from, from + c, to, to + c);
  }
  return d;
}

/** Dots in staggered rows; those that would be cut by the edge are left out. */
export function dots({ x, y, width, height }: Area, pitch: number, radius: number): string {
  let d = '';
  const firstRow = Math.ceil((y + radius) / pitch);
  for (let row = firstRow; row * pitch <= y + height - radius; row++) {
    const shift = row % 2 ? pitch / 2 : 0;
    for (let k = Math.ceil((x + radius - shift) / pitch); k * pitch + shift <= x + width - radius; k++)
      d += `M${round(k * pitch + shift)} ${round(row * pitch)}h.01`;
  }
  return d;
}

/** One stroke of a figure: where it begins in its tile, and how it goes on from there, in relative commands. */
export type Stroke = readonly [x: number, y: number, path: string];

/** A figure repeated over an area whose upper left corner is the origin; the caller cuts it to the area. */
export function tiled(
  strokes: readonly Stroke[],
  tile: { readonly width: number; readonly height: number },
  area: Pick<Area, 'width' | 'height'>,
): string {
  let d = '';
  for (let top = 0; top < area.height; top += tile.height)
    for (let left = 0; left < area.width; left += tile.width)
      for (const [x, y, path] of strokes) {
        if (left + x < area.width && top + y < area.height) d += `M${round(left + x)} ${round(top + y)}${path}`;
      }
  return d;
}

function segment(x1: number, y1: number, x2: number, y2: number): string {
  return `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}`;
}

function round(value: number): string {
  return value.toFixed(1).replace(/\.0$/, '');
}
