/**
 * ISO 717-1, airborne sound insulation: the tables. Same numbers in the editions of 1996, 2013 and 2020.
 *
 * Reference values: clause 4.2, table 3 (two published copies agree). Spectra: table 4 and Annex B, table B.1 (seen in a
 * published copy). Each spectrum is a level spectrum whose energy sum is 0 dB.
 */
import { type BandTable, octaves, rowsBetween, thirdOctaves } from './table.ts';

/** Table 3, one-third octaves, dB. The rating is the value at 500 Hz after shifting. */
export const REFERENCE_THIRD = thirdOctaves(100, [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56]);

/** Table 3, octaves, dB. */
export const REFERENCE_OCTAVE = octaves(125, [36, 45, 52, 55, 56]);

/** Greatest sum of unfavourable deviations, dB, inclusive: clause 4.4. No limit for a single band since 1996. */
export const SUM_MAX_THIRD_DB = 32;
export const SUM_MAX_OCTAVE_DB = 10;

/** Names of the adaptation terms: range of frequency and spectrum (pink noise, or urban road traffic 'tr'). */
export const ADAPTATION_TERMS = [
  'C',
  'C50_3150',
  'C50_5000',
  'C100_5000',
  'Ctr',
  'Ctr50_3150',
  'Ctr50_5000',
  'Ctr100_5000',
] as const;
export type AdaptationTerm = (typeof ADAPTATION_TERMS)[number];

/** Pink noise, A-weighted, 50–3150 Hz (spectrum no. 1); the range up to 5000 Hz has one of its own. */
const PINK = thirdOctaves(
  50,
  [-40, -36, -33, -29, -26, -23, -21, -19, -17, -15, -13, -12, -11, -10, -9, -9, -9, -9, -9],
);
const PINK_TO_5000 = thirdOctaves(
  50,
  [-41, -37, -34, -30, -27, -24, -22, -20, -18, -16, -14, -13, -12, -11, -10, -10, -10, -10, -10, -10, -10],
);
/** Urban traffic, A-weighted, 50–5000 Hz (spectrum no. 2). */
const TRAFFIC = thirdOctaves(
  50,
  [-25, -23, -21, -20, -20, -18, -16, -15, -14, -13, -12, -11, -9, -8, -9, -10, -11, -13, -15, -16, -18],
);

const PINK_OCTAVE = octaves(63, [-31, -21, -14, -8, -5, -4]);
const PINK_OCTAVE_TO_5000 = octaves(63, [-32, -22, -15, -9, -6, -5, -5]);
const TRAFFIC_OCTAVE = octaves(63, [-18, -14, -10, -7, -4, -6, -11]);

export const SPECTRA_THIRD: Readonly<Record<AdaptationTerm, BandTable>> = {
  C: rowsBetween(PINK, 100, 3150),
  C50_3150: PINK,
  C50_5000: PINK_TO_5000,
  C100_5000: rowsBetween(PINK_TO_5000, 100, 5000),
  Ctr: rowsBetween(TRAFFIC, 100, 3150),
  Ctr50_3150: rowsBetween(TRAFFIC, 50, 3150),
  Ctr50_5000: TRAFFIC,
  Ctr100_5000: rowsBetween(TRAFFIC, 100, 5000),
};

/** Octave data keep the labels of the one-third-octave ranges: Annex B. */
export const SPECTRA_OCTAVE: Readonly<Record<AdaptationTerm, BandTable>> = {
  C: rowsBetween(PINK_OCTAVE, 125, 2000),
  C50_3150: PINK_OCTAVE,
  C50_5000: PINK_OCTAVE_TO_5000,
  C100_5000: rowsBetween(PINK_OCTAVE_TO_5000, 125, 4000),
  Ctr: rowsBetween(TRAFFIC_OCTAVE, 125, 2000),
  Ctr50_3150: rowsBetween(TRAFFIC_OCTAVE, 63, 2000),
  Ctr50_5000: TRAFFIC_OCTAVE,
  Ctr100_5000: rowsBetween(TRAFFIC_OCTAVE, 125, 4000),
};
