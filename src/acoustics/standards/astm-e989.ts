/**
 * ASTM E989-21, classification for impact insulation (IIC): contour of table 1 and limits of clause 5. Partly seen in a
 * published copy, the rest from memory.
 */
import { thirdOctaves } from './table.ts';

/** Contour relative to its value at 500 Hz, dB. */
export const CONTOUR = thirdOctaves(100, [2, 2, 2, 2, 2, 2, 1, 0, -1, -2, -3, -6, -9, -12, -15, -18]);

/** Greatest sum of deficiencies and greatest single one, dB, both inclusive. */
export const SUM_MAX_DB = 32;
export const SINGLE_MAX_DB = 8;

/** IIC = 110 − contour value at 500 Hz. */
export const IIC_MINUEND_DB = 110;
