import type { Ratings } from '../prediction.ts';
import { iic } from './iic.ts';
import { lnw } from './lnw.ts';
import { oitc } from './oitc.ts';
import { rw } from './rw.ts';
import { stc } from './stc.ts';

export interface RatedBands {
  /** Nominal mid-band frequencies, Hz, in any order: one-third octaves, or octaves. */
  readonly bands_Hz: readonly number[];
  /** Transmission loss, dB; NaN: no value. Absent: the airborne ratings are NaN. */
  readonly R_dB?: readonly number[];
  /** Normalised impact sound level, dB; NaN: no value. Absent: the impact ratings are NaN. */
  readonly Ln_dB?: readonly number[];
}

/** Every single number of a spectrum; NaN where the bands do not suffice. Details: the function of each rating. */
export function rateBands({ bands_Hz, R_dB, Ln_dB }: RatedBands): Ratings {
  const gaps = bands_Hz.map(() => NaN);
  const reduction = { bands_Hz, values_dB: R_dB ?? gaps };
  const impact = { bands_Hz, values_dB: Ln_dB ?? gaps };
  const airborne = rw(reduction);
  const term = airborne.adaptation;
  const impactRating = lnw(impact);
  return {
    STC: stc(reduction).STC,
    OITC: oitc(reduction).OITC,
    Rw: airborne.Rw,
    C: term.C.term_dB,
    Ctr: term.Ctr.term_dB,
    C50_3150: term.C50_3150.term_dB,
    Ctr50_3150: term.Ctr50_3150.term_dB,
    C50_5000: term.C50_5000.term_dB,
    Ctr50_5000: term.Ctr50_5000.term_dB,
    C100_5000: term.C100_5000.term_dB,
    Ctr100_5000: term.Ctr100_5000.term_dB,
    IIC: iic(impact).IIC,
    Lnw: impactRating.Lnw,
    CI: impactRating.CI.term_dB,
    CI50_2500: impactRating.CI50_2500.term_dB,
  };
}
