import { THIRD_OCTAVES_HZ } from './standards/iec-61260.ts';

const LOWEST_HZ = 20;
const HIGHEST_HZ = 5000;

/** Nominal mid-band frequencies of the one-third octaves that the engine computes, 20 Hz to 5 kHz. */
const NOMINAL_BANDS_Hz: readonly number[] = THIRD_OCTAVES_HZ.filter((f) => f >= LOWEST_HZ && f <= HIGHEST_HZ);

/** Nominal bands from `lowest_Hz` up to 5 kHz. @throws RangeError if it is not a nominal band. */
export function nominalBandsFrom(lowest_Hz: number): readonly number[] {
  const start = NOMINAL_BANDS_Hz.indexOf(lowest_Hz);
  if (start < 0) throw new RangeError(`lowestBand_Hz must be a nominal third-octave band from 20 Hz, got ${lowest_Hz}`);
  return NOMINAL_BANDS_Hz.slice(start);
}
