import type { ScenarioMark } from './scenario-marks.ts';

const DASHES = ['3 2', '6 2', '1.5 2.5'] as const;
const MARKERS = ['diamond', 'square', 'triangle', 'circle'] as const;

/** The mark of measured bands at `index` in their list: ink, dash and a hollow marker; twelve that differ. */
export function measuredMark(index: number): ScenarioMark {
  const dash = DASHES[Math.floor(index / MARKERS.length) % DASHES.length]!;
  return { color: 'var(--ink)', dash, marker: MARKERS[index % MARKERS.length]! };
}
