import type { NumberAtTheEdge, NumberEffects, NumberOutcome, NumberStudy } from './number-study.ts';
import type { PredictOptions } from './prediction.ts';
import { nominalBandsFrom } from './third-octave-bands.ts';

/**
 * A study of the numbers that have been studied so far, each by the same options. Apart from the engine, so that who
 * only joins need not load it.
 */
export function joinedStudy(
  outcomes: readonly NumberOutcome[],
  { lowestBand_Hz = 50 }: Pick<PredictOptions, 'lowestBand_Hz'> = {},
): NumberStudy {
  const bands_Hz = nominalBandsFrom(lowestBand_Hz);
  const numbers = outcomes.filter((o): o is NumberEffects => !('reason' in o));
  const together = (of: (number: NumberEffects) => readonly number[]) =>
    bands_Hz.map((_, i) => Math.hypot(...numbers.map((number) => of(number)[i]!)));
  return {
    bands_Hz,
    numbers,
    standardR_dB: together((number) => number.standardR_dB),
    standardLn_dB: together((number) => number.standardLn_dB),
    atTheEdge: outcomes.filter((o): o is NumberAtTheEdge => 'reason' in o),
  };
}
