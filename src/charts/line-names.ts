/** The names of thin lines over the curves, each where its line leaves the picture. */
import { type Markish, text } from '@observablehq/plot';
import type { LineOverlay } from './band-data.ts';
import type { BandFrame } from './band-frame.ts';
import { HALO } from './framed-plot.ts';
import { labelRows, spreadLabels } from './place-labels.ts';

const SOFT = 'var(--ink-soft)';
const ROW = 15;
/** Between a line that leaves the picture and its name, px. */
const BESIDE = 6;

/** About: names are placed before anything is measured. */
export const nameWidth_px = (label: string): number => 6.5 * label.length;

type Named = Pick<LineOverlay, 'label' | 'values_dB'>;

export interface NamePlaces {
  /** In the margin beside the picture, at these values, dB. */
  readonly ends: readonly { readonly label: string; readonly value_dB: number }[];
  /** At the upper edge: where the name begins, px, and in which row from the edge down. */
  readonly exits: readonly { readonly label: string; readonly x: number; readonly row: number }[];
}

export function lineNames(overlays: readonly LineOverlay[], position: readonly number[], frame: BandFrame): Markish[] {
  const { ends, exits } = namePlaces(overlays, position, frame);
  return [
    text(ends, {
      x: () => frame.xDomain[1],
      y: 'value_dB',
      text: 'label',
      textAnchor: 'start',
      dx: 4,
      fill: SOFT,
    }),
    ...exits.map(({ label, x, row }) =>
      text([label], {
        frameAnchor: 'top-left',
        textAnchor: 'start',
        lineAnchor: 'top',
        dx: x - frame.left,
        dy: 3 + row * ROW,
        fill: SOFT,
        ...HALO,
      }),
    ),
  ];
}

/**
 * Where the names of lines stand without touching each other: at their right ends, or where one leaves the picture
 * upwards, beside that place as long as the name ends within the picture.
 */
export function namePlaces(overlays: readonly Named[], position: readonly number[], frame: BandFrame): NamePlaces {
  const { range, right, xDomain } = frame;
  const perPosition = (right - frame.left) / (xDomain[1] - xDomain[0]);
  const named = overlays.map(({ label, values_dB }) => {
    const exit = exitAbove(values_dB, position, range.high);
    const at = Math.max(exit ?? Infinity, xDomain[0]);
    const x = frame.left + (at - xDomain[0]) * perPosition + BESIDE;
    return { label, values_dB, x, inside: x + nameWidth_px(label) <= right };
  });
  const inside = named.filter((l) => l.inside);
  const rows = labelRows(
    inside.map(({ x, label }) => ({ left: x, width: nameWidth_px(label) })),
    BESIDE,
  );
  return {
    // Where several leave by the same corner, the steepest is named highest.
    ends: spreadEnds(
      named.filter((l) => !l.inside).toSorted((a, b) => b.x - a.x),
      frame,
    ),
    exits: inside.map(({ label, x }, i) => ({ label, x, row: rows[i]! })),
  };
}

/**
 * Position at which a line that ends above `high` leaves it for good; −∞ if it never lies below; undefined if it ends
 * below.
 */
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
function spreadEnds(lines: readonly Named[], { range: { low, high }, top, bottom }: BandFrame): NamePlaces['ends'] {
  const perPixel = (high - low) / (bottom - top);
  const ends = lines.map(({ values_dB }) => Math.min(high, Math.max(low, values_dB.findLast(Number.isFinite) ?? low)));
  const places = spreadLabels(ends, { gap: 14 * perPixel, low, high });
  return lines.map(({ label }, i) => ({ label, value_dB: places[i]! }));
}
