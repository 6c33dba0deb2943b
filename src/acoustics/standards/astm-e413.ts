/**
 * ASTM E413-22, classification for rating sound insulation (STC): contour of table 1 and limits of clause 5, unchanged
 * since 1987. Partly seen in a published copy, the rest from memory.
 */
import { thirdOctaves } from './table.ts';

/** Contour relative to its value at 500 Hz, dB. */
export const CONTOUR = thirdOctaves(125, [-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4]);

/** Greatest sum of deficiencies and greatest single one, dB, both inclusive. */
export const SUM_MAX_DB = 32;
export const SINGLE_MAX_DB = 8;
