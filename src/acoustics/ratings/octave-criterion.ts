import { missingBands, type Spectrum, valuesAt } from './spectrum.ts';

/** Without these octaves a noise criterion says nothing; those outside are judged where they are given, Hz. */
const NEEDED_HZ = [63, 125, 250, 500, 1000, 2000, 4000];

export interface JudgedBand {
  readonly band_Hz: number;
  /** Number of the criterion curve that this band alone touches. */
  readonly rating: number;
}

export interface CriterionBands {
  /** The bands that have a level; empty where a needed one has none. */
  readonly judged: readonly JudgedBand[];
  readonly missing_Hz: readonly number[];
}

/** Rates each octave by itself. `rate(level_dB, i)` belongs to `bands_Hz[i]`. */
export function judgeBands(
  levels: Spectrum,
  bands_Hz: readonly number[],
  rate: (level_dB: number, i: number) => number,
): CriterionBands {
  const given = valuesAt(levels, bands_Hz);
  const missing_Hz = missingBands(bands_Hz, given);
  if (missing_Hz.some((f) => NEEDED_HZ.includes(f))) return { judged: [], missing_Hz };
  const judged = bands_Hz.flatMap((band_Hz, i) => {
    const level_dB = given[i]!;
    return Number.isNaN(level_dB) ? [] : [{ band_Hz, rating: rate(level_dB, i) }];
  });
  return { judged, missing_Hz };
}

/** The band with the highest rating, the lowest of equals. */
export function governingBand(judged: readonly JudgedBand[]): JudgedBand {
  return judged.reduce((worst, b) => (b.rating > worst.rating ? b : worst), judged[0] ?? { band_Hz: NaN, rating: NaN });
}
