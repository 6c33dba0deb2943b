import type { PathName } from '#src/acoustics/prediction.ts';

/** What a chart of shares is given: how the sound of every band splits into paths. */
export interface ShareChartData {
  readonly bands_Hz: readonly number[];
  readonly paths: readonly PathShares[];
  readonly regions: readonly ShareRegion[];
}

export interface PathShares {
  readonly path: PathName;
  /** 0–1, one per band; NaN: no value. All paths of a band add up to 1. */
  readonly shares: readonly number[];
}

/** Consecutive bands that one thing rules, as indices, both inclusive. */
export interface ShareRegion {
  readonly first: number;
  readonly last: number;
}

/** A share as the reader sees it: whole per cent, and the ends told from nothing and all. */
export function shareText(share: number | undefined): string {
  if (share === undefined || !Number.isFinite(share)) return '–';
  if (share > 0 && share < 0.005) return '< 1 %';
  if (share < 1 && share > 0.995) return '> 99 %';
  return `${Math.round(100 * share)} %`;
}
