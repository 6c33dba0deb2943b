import { OCTAVES_HZ } from '../standards/iec-61260.ts';

/** Band values. The order of bands is free; NaN, infinite and absent bands all mean "no value". */
export interface Spectrum {
  /** Nominal mid-band frequencies, Hz (IEC 61260-1). */
  readonly bands_Hz: readonly number[];
  /** One value per band, dB. */
  readonly values_dB: readonly number[];
}

export type BandWidth = 'third' | 'octave';

/**
 * Values at `wanted_Hz`, in that order; NaN where the spectrum has none.
 *
 * @throws RangeError if the spectrum's arrays differ in length.
 */
export function valuesAt({ bands_Hz, values_dB }: Spectrum, wanted_Hz: readonly number[]): number[] {
  if (bands_Hz.length !== values_dB.length) {
    throw new RangeError(`values_dB must have length ${bands_Hz.length} like bands_Hz, got ${values_dB.length}`);
  }
  return wanted_Hz.map((band_Hz) => {
    const value = values_dB[bands_Hz.indexOf(band_Hz)];
    return value !== undefined && Number.isFinite(value) ? value : NaN;
  });
}

/** The wanted bands that have no value. */
export function missingBands(wanted_Hz: readonly number[], values_dB: readonly number[]): number[] {
  return wanted_Hz.filter((_, i) => Number.isNaN(values_dB[i]));
}

/** 'octave' if every band is an octave band and there are at least two, 'third' otherwise. */
export function bandWidthOf(bands_Hz: readonly number[]): BandWidth {
  return bands_Hz.length > 1 && bands_Hz.every((f) => OCTAVES_HZ.includes(f)) ? 'octave' : 'third';
}
