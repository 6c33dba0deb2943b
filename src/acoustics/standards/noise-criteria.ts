/**
 * NC curves in octave bands: ANSI/ASA S12.2-2019, table 1, and the classic ones (Beranek 1957, as in the ASHRAE
 * handbooks). They differ by 1 dB in single bands of NC-15 to NC-40. Partly seen in a published copy, the rest from memory.
 */
export type NcTableName = 'S12.2' | 'Beranek';

export interface NcTable {
  readonly lowestBand_Hz: number;
  /** Curve number → levels in consecutive octaves, dB. */
  readonly curves: Readonly<Record<number, readonly number[]>>;
}

// biome-ignore format: table
const S12_2: Readonly<Record<number, readonly number[]>> = {
  15: [78, 61, 47, 36, 28, 22, 18, 14, 12, 11],
  20: [79, 63, 50, 40, 33, 26, 22, 20, 17, 16],
  25: [80, 65, 54, 44, 37, 31, 27, 24, 22, 22],
  30: [81, 68, 57, 48, 41, 35, 32, 29, 28, 27],
  35: [82, 71, 60, 52, 45, 40, 36, 34, 33, 32],
  40: [84, 74, 64, 56, 50, 44, 41, 39, 38, 37],
  45: [85, 76, 67, 60, 54, 49, 46, 44, 43, 42],
  50: [87, 79, 71, 64, 58, 54, 51, 49, 48, 47],
  55: [89, 82, 74, 67, 62, 58, 56, 54, 53, 52],
  60: [90, 85, 77, 71, 66, 63, 60, 59, 58, 57],
  65: [90, 88, 80, 75, 71, 68, 65, 64, 63, 62],
  70: [90, 90, 84, 79, 75, 72, 71, 70, 68, 68],
};

// biome-ignore format: table
const BERANEK: Readonly<Record<number, readonly number[]>> = {
  15: [47, 36, 29, 22, 17, 14, 12, 11],
  20: [51, 40, 33, 26, 22, 19, 17, 16],
  25: [54, 44, 37, 31, 27, 24, 22, 21],
  30: [57, 48, 41, 35, 31, 29, 28, 27],
  35: [60, 52, 45, 40, 36, 34, 33, 32],
  40: [64, 56, 50, 45, 41, 39, 38, 37],
  45: [67, 60, 54, 49, 46, 44, 43, 42],
  50: [71, 64, 58, 54, 51, 49, 48, 47],
  55: [74, 67, 62, 58, 56, 54, 53, 52],
  60: [77, 71, 67, 63, 61, 59, 58, 57],
  65: [80, 75, 71, 68, 66, 64, 63, 62],
};

export const NC_TABLES: Readonly<Record<NcTableName, NcTable>> = {
  'S12.2': { lowestBand_Hz: 16, curves: S12_2 },
  Beranek: { lowestBand_Hz: 63, curves: BERANEK },
};
