import { HEARING_THRESHOLD, type SoundField } from '../standards/iso-389-7.ts';
import { bandsOf, valuesOf } from '../standards/table.ts';
import { valuesAt } from './spectrum.ts';

/** Threshold of hearing at these bands, dB re 20 µPa; NaN outside 20 Hz–16 kHz. ISO 389-7:2019, table 1. */
export function hearingThreshold_dB(bands_Hz: readonly number[], field: SoundField = 'diffuse'): number[] {
  const table = HEARING_THRESHOLD[field];
  return valuesAt({ bands_Hz: bandsOf(table), values_dB: valuesOf(table) }, bands_Hz);
}

/** Why a band is not heard: under the threshold, or under the background; undefined: heard. */
export type Inaudible = 'threshold' | 'background';

export interface BandAudibility {
  readonly band_Hz: number;
  /** Level over the higher of threshold and background, dB; NaN where a value is missing. */
  readonly excess_dB: number;
  readonly hiddenBy: Inaudible | undefined;
}

/**
 * Band by band, how far a sound stands out from what a listener with normal hearing has anyway.
 *
 * A steady band is counted as heard where its level exceeds both the threshold of hearing (ISO 389-7) and the background's
 * level in the same one-third octave: about one critical band (common practice, no source). Music and blows are heard
 * earlier than steady noise: an excess below 0 dB is no promise.
 * @param background_dB Absent: silence.
 */
export function audibility(
  bands_Hz: readonly number[],
  level_dB: readonly number[],
  background_dB?: readonly number[],
): BandAudibility[] {
  const thresholds = hearingThreshold_dB(bands_Hz);
  return bands_Hz.map((band_Hz, i) => {
    const background = background_dB ? (background_dB[i] ?? NaN) : Number.NEGATIVE_INFINITY;
    const floor = Math.max(thresholds[i]!, background);
    const excess_dB = (level_dB[i] ?? NaN) - floor;
    const by: Inaudible = background > thresholds[i]! ? 'background' : 'threshold';
    return { band_Hz, excess_dB, hiddenBy: excess_dB <= 0 ? by : undefined };
  });
}
