import { OCTAVES_HZ, THIRD_OCTAVES_HZ } from './iec-61260.ts';

/** A published table over frequency: nominal mid-band frequency in Hz, then the value as printed. Ascending. */
export type BandTable = readonly (readonly [band_Hz: number, value: number])[];

export function bandsOf(table: BandTable): number[] {
  return table.map(([band_Hz]) => band_Hz);
}

export function valuesOf(table: BandTable): number[] {
  return table.map(([, value]) => value);
}

/** The rows from `lowest_Hz` to `highest_Hz`, both included. */
export function rowsBetween(table: BandTable, lowest_Hz: number, highest_Hz: number): BandTable {
  return table.filter(([band_Hz]) => band_Hz >= lowest_Hz && band_Hz <= highest_Hz);
}

/** Values that belong to consecutive one-third-octave bands, the first of which is given. */
export function thirdOctaves(lowest_Hz: number, values: readonly number[]): BandTable {
  const first = THIRD_OCTAVES_HZ.indexOf(lowest_Hz);
  return values.map((value, i) => [THIRD_OCTAVES_HZ[first + i]!, value]);
}

/** Values that belong to consecutive octave bands, the first of which is given. */
export function octaves(lowest_Hz: number, values: readonly number[]): BandTable {
  const first = OCTAVES_HZ.indexOf(lowest_Hz);
  return values.map((value, i) => [OCTAVES_HZ[first + i]!, value]);
}
