/** The names of thin lines over the curves, each where its line leaves the picture. */
import { type Markish, text } from '@observablehq/plot';
import type { LineOverlay } from './band-data.ts';
import type { BandFrame } from './band-frame.ts';
import { HALO } from './framed-plot.ts';
import { spreadLabels } from './place-labels.ts';

const SOFT = 'var(--ink-soft)';
const ROW = 15;

/** Names of thin lines: at their right ends, or where one leaves the picture upwards, beside that place. */
export function lineNames(overlays: readonly LineOverlay[], position: readonly number[], frame: BandFrame): Markish[] {
  const named = overlays.map(({ label, values_dB }) => ({
    label,
    values_dB,
    exit: exitAbove(values_dB, position, frame.range.high),
  }));
  return [
    ...lineEnds(
      named.filter(({ exit }) => exit === undefined),
      frame,
    ),
    ...named
      .filter(({ exit }) => exit !== undefined)
      .map(({ label, exit }, row) =>
        text([label], {
          x: [Math.max(exit!, frame.xDomain[0])],
          frameAnchor: 'top',
          textAnchor: 'start',
          lineAnchor: 'top',
          dx: 6,
          dy: 3 + row * ROW,
          fill: SOFT,
          ...HALO,
        }),
      ),
  ];
}

/** Position at which a line that ends above `high` leaves it for good; −∞ if it never lies below; undefined if it ends below. */
export function exitAbove(values_dB: readonly number[], position: readonly number[], high: number): number | undefined {
  const end = values_dB.findLastIndex(Number.isFinite);
  if (end < 0 || values_dB[end]! <= high) return undefined;
  const below = values_dB.findLastIndex((v) => v <= high);
  const above = values_dB.findIndex((v, i) => i > below && v > high);
  if (below < 0) return -Infinity;
  const share = (high - values_dB[below]!) / (values_dB[above]! - values_dB[below]!);
  return position[below]! + share * (position[above]! - position[below]!);
}

/** Names at the right ends of thin lines, moved apart where they would touch. */
function lineEnds(lines: readonly Pick<LineOverlay, 'label' | 'values_dB'>[], frame: BandFrame): Markish[] {
  if (lines.length === 0) return [];
  const { low, high } = frame.range;
  const perPixel = (high - low) / (frame.bottom - frame.top);
  const ends = lines.map(({ values_dB }) => {
    const last = values_dB.findLast((v) => Number.isFinite(v) && v >= low && v <= high);
    return Math.min(high, Math.max(low, last ?? low));
  });
  const places = spreadLabels(ends, { gap: 14 * perPixel, low, high });
  return [
    text(lines, {
      x: () => frame.xDomain[1],
      y: (_, i) => places[i],
      text: 'label',
      textAnchor: 'start',
      dx: 4,
      fill: SOFT,
    }),
  ];
}
