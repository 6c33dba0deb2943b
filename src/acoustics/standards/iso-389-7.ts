/**
 * ISO 389-7:2019, reference thresholds of hearing, table 1 (20 Hz as in the amendment of 2016; 78.5 dB in 2005).
 *
 * From memory, unverified. At 10 kHz two copies disagree for the diffuse field (9.8 and 8.4 dB; 8.4 dB is probably the
 * row of 9 kHz): 9.8 dB is used.
 */
import { thirdOctaves } from './table.ts';

export type SoundField = 'diffuse' | 'free';

/** Level that half of otologically normal young adults just hear, dB re 20 µPa. */
export const HEARING_THRESHOLD = {
  // biome-ignore format: table
  diffuse: thirdOctaves(20, [78.1, 68.7, 59.5, 51.1, 44, 37.5, 31.5, 26.5, 22.1, 17.9, 14.4, 11.4, 8.4, 5.8, 3.8, 2.1, 1, 0.8, 1.9, 0.5, -1.5, -3.1, -4, -3.8, -1.8, 2.5, 6.8, 9.8, 14.4, 43.7]),
  // biome-ignore format: table
  free: thirdOctaves(20, [78.1, 68.7, 59.5, 51.1, 44, 37.5, 31.5, 26.5, 22.1, 17.9, 14.4, 11.4, 8.6, 6.2, 4.4, 3, 2.2, 2.4, 3.5, 1.7, -1.3, -4.2, -6, -5.4, -1.5, 6, 12.6, 13.9, 12.3, 40.2]),
};
