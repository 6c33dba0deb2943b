import { OCTAVES_HZ } from '../standards/iec-61260.ts';
import { NC_TABLES, type NcTableName } from '../standards/noise-criteria.ts';
import { governingBand, type JudgedBand, judgeBands } from './octave-criterion.ts';
import { roundHalfUp } from './rounding.ts';
import { type Spectrum, valuesAt } from './spectrum.ts';

/** The octaves of the speech interference level, ANSI/ASA S12.2. */
export const SIL_BANDS_HZ = [500, 1000, 2000, 4000];

export interface Nc {
  /** Tangency: the lowest curve, interpolated between those printed, that no band exceeds. NaN: bands missing. */
  readonly nc: number;
  readonly ncRounded: number;
  /** The lowest printed curve that no band exceeds; NaN above the highest. */
  readonly curve: number;
  readonly governing_Hz: number;
  /** Every band lies under the lowest curve: "below NC-15". */
  readonly below: boolean;
  /** A band lies over the highest curve; `nc` is that curve. */
  readonly above: boolean;
  /** Speech interference level: mean of `SIL_BANDS_HZ`, dB; NaN where one is missing. */
  readonly SIL_dB: number;
  /** Whether tangency rates the noise higher than its SIL does; if not, S12.2 designates it NC-(SIL). */
  readonly exceedsSIL: boolean;
  readonly judged: readonly JudgedBand[];
  readonly missing_Hz: readonly number[];
}

/**
 * Noise criterion of octave-band levels by the tangency method.
 *
 * Source: ANSI/ASA S12.2-2019, table 1; or the classic curves ('Beranek').
 * @param levels Octaves, dB re 20 µPa: 63–4000 Hz at least; 16, 31.5 and 8000 Hz are judged where they are given.
 */
export function nc(levels: Spectrum, table: NcTableName = 'S12.2'): Nc {
  const { lowestBand_Hz, curves } = NC_TABLES[table];
  const numbers = Object.keys(curves).map(Number);
  const lowest = numbers[0]!;
  const highest = numbers.at(-1)!;
  const first = OCTAVES_HZ.indexOf(lowestBand_Hz);
  const bands_Hz = OCTAVES_HZ.slice(first, first + curves[lowest]!.length);
  const level = (number: number, i: number) => curves[number]![i]!;

  const { judged, missing_Hz } = judgeBands(levels, bands_Hz, (level_dB, i) => {
    const upper = numbers.find((n) => level(n, i) >= level_dB);
    if (upper === undefined) return Number.POSITIVE_INFINITY;
    const lower = numbers[numbers.indexOf(upper) - 1];
    if (lower === undefined) return level(upper, i) === level_dB ? lowest : Number.NEGATIVE_INFINITY;
    const share = (level_dB - level(lower, i)) / (level(upper, i) - level(lower, i));
    return lower + share * (upper - lower);
  });

  const worst = governingBand(judged);
  const number = Math.min(Math.max(worst.rating, lowest), highest);
  const above = worst.rating > highest;
  const SIL_dB = mean(valuesAt(levels, SIL_BANDS_HZ));
  return {
    nc: number,
    ncRounded: roundHalfUp(number),
    curve: above ? NaN : (numbers.find((n) => n >= number - 1e-9) ?? NaN),
    governing_Hz: worst.band_Hz,
    below: worst.rating < lowest,
    above,
    SIL_dB,
    exceedsSIL: number > SIL_dB,
    judged,
    missing_Hz,
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length;
}
