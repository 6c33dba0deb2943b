/** One-third-octave bands by IEC 61260-1:2014: nominal mid-band frequencies beside the exact base-ten ones. */

const FIRST_INDEX = -17;

/** Nominal mid-band frequencies from 20 Hz to 5 kHz, Hz. IEC 61260-1:2014, Annex E. */
export const NOMINAL_BANDS_Hz: readonly number[] = [
  20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150,
  4000, 5000,
];

export interface BandEdges {
  readonly lower_Hz: number;
  readonly middle_Hz: number;
  readonly upper_Hz: number;
}

/** Nominal bands from `lowest_Hz` up to 5 kHz. @throws RangeError if it is not a nominal band. */
export function nominalBandsFrom(lowest_Hz: number): readonly number[] {
  const start = NOMINAL_BANDS_Hz.indexOf(lowest_Hz);
  if (start < 0) throw new RangeError(`lowestBand_Hz must be a nominal third-octave band from 20 Hz, got ${lowest_Hz}`);
  return NOMINAL_BANDS_Hz.slice(start);
}

/** Exact edges and middle of a nominal band: G = 10^0.3, f_m = 1000 G^(x/3), edges half a step away. */
export function exactBand(nominal_Hz: number): BandEdges {
  const index = NOMINAL_BANDS_Hz.indexOf(nominal_Hz);
  if (index < 0) throw new RangeError(`a nominal third-octave band from 20 to 5000 Hz is needed, got ${nominal_Hz}`);
  const step = FIRST_INDEX + index;
  return {
    lower_Hz: 1000 * 10 ** ((step - 0.5) / 10),
    middle_Hz: 1000 * 10 ** (step / 10),
    upper_Hz: 1000 * 10 ** ((step + 0.5) / 10),
  };
}
