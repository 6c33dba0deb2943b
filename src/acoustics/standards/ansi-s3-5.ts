/**
 * Speech 1 m in front of the talker in a free field: ANSI S3.5-1997 (R2017), table 3, spectrum levels for one-third
 * octaves 160–8000 Hz, dB re 20 µPa in 1 Hz. Several copies agree but for "loud" at 400 Hz (43.30 here, 43.40 in one).
 */
import { type BandTable, thirdOctaves } from './table.ts';

export type VocalEffort = 'normal' | 'raised' | 'loud' | 'shout';

// biome-ignore format: table
export const SPEECH_SPECTRUM_LEVEL: Readonly<Record<VocalEffort, BandTable>> = {
  normal: thirdOctaves(160, [
    32.41, 34.48, 34.75, 33.98, 34.59, 34.27, 32.06, 28.3, 25.01, 23, 20.15, 17.32, 13.18, 11.55, 9.33, 5.31, 2.59, 1.13,
  ]),
  raised: thirdOctaves(160, [
    33.81, 33.92, 38.98, 38.57, 39.11, 40.15, 38.78, 36.37, 33.86, 31.89, 28.58, 25.32, 22.35, 20.15, 16.78, 11.47, 7.67, 5.07,
  ]),
  loud: thirdOctaves(160, [
    35.29, 37.76, 41.55, 43.78, 43.3, 44.85, 45.55, 44.05, 42.16, 40.53, 37.7, 34.39, 30.98, 28.21, 25.41, 18.35, 13.87, 11.39,
  ]),
  shout: thirdOctaves(160, [
    30.77, 36.65, 42.5, 46.51, 47.4, 49.24, 51.21, 51.44, 51.31, 49.63, 47.65, 44.32, 40.8, 38.13, 34.41, 28.24, 23.45, 20.72,
  ]),
};

/** Width of a one-third octave relative to its middle, base two as in the source: 2^(1/6) − 2^(−1/6). */
const RELATIVE_BANDWIDTH = 0.2316;

/** Band levels, dB re 20 µPa: spectrum level plus ten times the logarithm of the bandwidth. */
export function speechBandLevels(effort: VocalEffort): BandTable {
  return SPEECH_SPECTRUM_LEVEL[effort].map(([band_Hz, level_dB]) => [
    band_Hz,
    level_dB + 10 * Math.log10(RELATIVE_BANDWIDTH * band_Hz),
  ]);
}
