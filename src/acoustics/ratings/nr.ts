import { NOISE_RATING } from '../standards/noise-rating.ts';
import { governingBand, type JudgedBand, judgeBands } from './octave-criterion.ts';
import { roundHalfUp } from './rounding.ts';
import type { Spectrum } from './spectrum.ts';

export interface Nr {
  /** Highest of (L − a)/b; NaN: bands missing. */
  readonly nr: number;
  readonly nrRounded: number;
  readonly governing_Hz: number;
  readonly judged: readonly JudgedBand[];
  readonly missing_Hz: readonly number[];
}

/**
 * Noise rating number of octave-band levels.
 *
 * Source: ISO/R 1996:1971, Appendix (from memory, unverified).
 * @param levels Octaves, dB re 20 µPa: 63–4000 Hz at least; 31.5 and 8000 Hz are judged where they are given.
 */
export function nr(levels: Spectrum): Nr {
  const bands_Hz = NOISE_RATING.map((row) => row.band_Hz);
  const { judged, missing_Hz } = judgeBands(levels, bands_Hz, (level_dB, i) => {
    const { a_dB, b } = NOISE_RATING[i]!;
    return (level_dB - a_dB) / b;
  });
  const { rating, band_Hz } = governingBand(judged);
  return { nr: rating, nrRounded: roundHalfUp(rating), governing_Hz: band_Hz, judged, missing_Hz };
}
