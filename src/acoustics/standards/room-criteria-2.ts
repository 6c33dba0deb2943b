/**
 * RC Mark II: Blazier, Noise Control Eng. J. 45(6), 1997, and the ASHRAE handbook (partly seen in a published copy, the
 * rest from memory).
 */
import { octaves } from './table.ts';

/** RC curve relative to its number: −5 dB per octave, 16 Hz like 31.5 Hz, dB. */
export const RC_CURVE = octaves(16, [25, 25, 20, 15, 10, 5, 0, -5, -10]);

/** Octave bands of the three regions, Hz. */
export const RC_REGIONS_HZ = { LF: [16, 31.5, 63], MF: [125, 250, 500], HF: [1000, 2000, 4000] } as const;
export type RcRegion = keyof typeof RC_REGIONS_HZ;

/** Quality assessment index, dB: up to the first neutral, up to the second marginal, above it objectionable. */
export const QAI_NEUTRAL_MAX_DB = 5;
export const QAI_MARGINAL_MAX_DB = 10;

/**
 * Levels at 16, 31.5 and 63 Hz from which light structures may be felt to vibrate: A clearly, B moderately. Published
 * only as areas of a chart ("about 75–85" and "65–75"), read here as straight lines.
 */
export const VIBRATION_A_DB = octaves(16, [75, 80, 85]);
export const VIBRATION_B_DB = octaves(16, [65, 70, 75]);
