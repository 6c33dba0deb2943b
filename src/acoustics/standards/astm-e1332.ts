/**
 * ASTM E1332, outdoor–indoor transmission class: source spectrum and A-weighting of table 1. Partly seen in a published
 * copy, the rest from memory.
 */
import { thirdOctaves } from './table.ts';

/** Outdoor noise (aircraft, road, rail together), dB. */
export const SOURCE = thirdOctaves(80, [103, 102, 101, 98, 97, 95, 94, 93, 93, 91, 90, 89, 89, 88, 88, 87, 85, 84]);

export const A_WEIGHTING = thirdOctaves(
  80,
  [-22.5, -19.1, -16.1, -13.4, -10.9, -8.6, -6.6, -4.8, -3.2, -1.9, -0.8, 0, 0.6, 1, 1.2, 1.3, 1.2, 1],
);

/** A-weighted level of the source without a wall, dB: the constant of the formula. */
export const SOURCE_LEVEL_DBA = 100.13;
