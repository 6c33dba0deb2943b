/** A band that lies lower than the bands beside it, or than something else, would lead one to expect. */
export interface Dip {
  /** How much it lacks, dB. */
  readonly depth_dB: number;
  /** Index of the band of the same dip that lacks most. */
  readonly bottom: number;
}

/** Less is no dip: our own, of the order of what a listener and a laboratory can tell. */
const LEAST_DIP_dB = 1;

/** The trend is taken from bands up to an octave away. */
const REACH_BANDS = 3;

/** A trend rises by at most as much, dB a band: 18 dB per octave, as two leaves with air between do. */
const STEEPEST_dB = 6;

/**
 * Dips of a curve over one-third octaves, band by band; undefined where there is none. Our own.
 *
 * What a band lacks is the less of two: to the level of a lower band, and to the straight line from there to a higher one,
 * which goes on level beyond the highest. Where the curve rises all the same, a band between its neighbours lacks the less of
 * what the straight line between them and what the rise before would bring. So a curve that rises faster and faster, or slower
 * and slower, has no dip, however sharp its bend; and a band that is above all before a dip, and rises as before, has
 * left it. Of all bands within an octave those count that show most.
 *
 * @param levels_dB One-third octaves without gaps. NaN and infinite values make no dip.
 * @param least_dB A second curve below which a band also lacks what it is short of; NaN where there is none.
 */
export function dips(levels_dB: readonly number[], least_dB?: readonly number[]): (Dip | undefined)[] {
  const depths_dB = levels_dB.map((level_dB, i) =>
    more(lack_dB(levels_dB, i), (least_dB?.[i] ?? Number.NaN) - level_dB),
  );
  return depths_dB.map((depth_dB, i) =>
    depth_dB < LEAST_DIP_dB ? undefined : { depth_dB, bottom: bottomFrom(depths_dB, i) },
  );
}

function lack_dB(levels_dB: readonly number[], i: number): number {
  const level_dB = levels_dB[i]!;
  let most_dB = 0;
  if (i > 0 && i + 1 < levels_dB.length) {
    const goneOn_dB = levels_dB[i - 1]! + rise_dB(levels_dB, i - 1);
    most_dB = more(most_dB, Math.min(goneOn_dB, (levels_dB[i - 1]! + levels_dB[i + 1]!) / 2) - level_dB);
  }
  for (let before = 1; before <= Math.min(REACH_BANDS, i); before++) {
    const from_dB = levels_dB[i - before]!;
    if (!(from_dB > level_dB)) continue;
    for (let after = 1; after <= REACH_BANDS; after++) {
      const to_dB = levels_dB[i + after] ?? from_dB;
      const line_dB = from_dB + ((to_dB - from_dB) * before) / (before + after);
      most_dB = more(most_dB, Math.min(from_dB, line_dB) - level_dB);
    }
  }
  return most_dB;
}

/** How fast the curve comes to band `i` from below, dB a band. */
function rise_dB(levels_dB: readonly number[], i: number): number {
  const back = Math.min(2, i);
  if (back === 0) return 0;
  return Math.min(more(0, levels_dB[i]! - levels_dB[i - back]!) / back, STEEPEST_dB);
}

/** Upwards in depth, from band to band. */
function bottomFrom(depths_dB: readonly number[], i: number): number {
  const next = (depths_dB[i + 1] ?? 0) > (depths_dB[i - 1] ?? 0) ? i + 1 : i - 1;
  return (depths_dB[next] ?? 0) > depths_dB[i]! ? bottomFrom(depths_dB, next) : i;
}

/** The larger one; what is no finite number is not larger. */
function more(most: number, value: number): number {
  return Number.isFinite(value) && value > most ? value : most;
}
