/** A value range that does not jump while something is dragged: it grows at once and shrinks only when allowed. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** The smallest range of whole steps around the values that is at least `least` wide. Not finite values are skipped. */
export function wantedRange(values: Iterable<number>, { step, least }: { step: number; least: number }): Range {
  let min = Number.POSITIVE_INFINITY;
  let max = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    if (value < min) min = value;
    if (value > max) max = value;
  }
  if (min > max) return { low: 0, high: Math.ceil(least / step) * step };
  const low = Math.floor(min / step) * step;
  let high = Math.ceil(max / step) * step;
  if (high - low < least) high = low + Math.ceil(least / step) * step;
  return { low, high };
}

export function steadyRange(held: Range | undefined, wanted: Range, mayShrink: boolean): Range {
  if (!held || mayShrink) return wanted;
  if (wanted.low >= held.low && wanted.high <= held.high) return held;
  return { low: Math.min(held.low, wanted.low), high: Math.max(held.high, wanted.high) };
}

export function sameRange(a: Range | undefined, b: Range): boolean {
  return a?.low === b.low && a.high === b.high;
}
