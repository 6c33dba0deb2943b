import { A_WEIGHTING, SOURCE, SOURCE_LEVEL_DBA } from '../standards/astm-e1332.ts';
import { bandsOf } from '../standards/table.ts';
import { energySum_dB } from './energy.ts';
import { roundHalfUp } from './rounding.ts';
import { missingBands, type Spectrum, valuesAt } from './spectrum.ts';

export interface Oitc {
  /** Integer; NaN where a band is missing. */
  readonly OITC: number;
  /** Before rounding, dB. */
  readonly unrounded_dB: number;
  readonly bands_Hz: readonly number[];
  /** A-weighted level that comes through in each band, dB. */
  readonly transmitted_dB: readonly number[];
  readonly missing_Hz: readonly number[];
}

/**
 * Outdoor–indoor transmission class of a transmission loss in one-third octaves 80–4000 Hz.
 *
 * Source: ASTM E1332. Band values enter unrounded; the result is rounded half up.
 * @param transmissionLoss One-third octaves, dB; further bands are ignored. Octave bands do not suffice: NaN.
 */
export function oitc(transmissionLoss: Spectrum): Oitc {
  const bands_Hz = bandsOf(SOURCE);
  const values = valuesAt(transmissionLoss, bands_Hz);
  const transmitted_dB = values.map((value, i) => SOURCE[i]![1] + A_WEIGHTING[i]![1] - value);
  const unrounded_dB = SOURCE_LEVEL_DBA - energySum_dB(transmitted_dB);
  return {
    OITC: roundHalfUp(unrounded_dB),
    unrounded_dB,
    bands_Hz,
    transmitted_dB,
    missing_Hz: missingBands(bands_Hz, values),
  };
}
