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

/** Nominal mid-band frequencies, IEC 61260-1:2014, Annex E. */
// biome-ignore format: table
export const THIRD_OCTAVES_HZ: readonly number[] = [
  10, 12.5, 16, 20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800,
  1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000, 10000, 12500, 16000, 20000,
];

/** Nominal octave mid-band frequencies, IEC 61260-1:2014, Annex E. */
export const OCTAVES_HZ: readonly number[] = [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000];
