/**
 * ISO 717-2, impact sound insulation: reference values and limits. Same numbers in the editions of 1996, 2013 and 2020.
 *
 * Reference values: clause 4.2, table 3 (two published copies agree; the octave column as printed, with 62 at 1000 Hz).
 * Reference floors and coverings stand in `iso-717-2-reference-floors.ts`.
 */
import { octaves, thirdOctaves } from './table.ts';

/** Table 3, one-third octaves, dB. The rating is the value at 500 Hz after shifting. */
export const REFERENCE_THIRD = thirdOctaves(100, [62, 62, 62, 62, 62, 62, 61, 60, 59, 58, 57, 54, 51, 48, 45, 42]);

/** Table 3, octaves, dB. The rating is the value at 500 Hz after shifting, less 5 dB. */
export const REFERENCE_OCTAVE = octaves(125, [67, 67, 65, 62, 49]);
export const OCTAVE_REDUCTION_DB = 5;

/** Greatest sum of unfavourable deviations, dB, inclusive: clause 4.3. */
export const SUM_MAX_THIRD_DB = 32;
export const SUM_MAX_OCTAVE_DB = 10;

/** Ranges of the energy sum behind C_I, lowest and highest nominal band, Hz: Annex A.2. */
export const CI_RANGE_THIRD_HZ = { CI: [100, 2500], CI50_2500: [50, 2500] } as const;
export const CI_RANGE_OCTAVE_HZ = { CI: [125, 2000], CI50_2500: [63, 2000] } as const;

/** C_I = L_n,sum − 15 − L_n,w: Annex A.2. */
export const CI_CONSTANT_DB = 15;
