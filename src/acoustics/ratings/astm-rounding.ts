import { round, type Tie } from './rounding.ts';

/**
 * How band values enter an ASTM classification: E90 and E492 report to the nearest decibel and E413 and E989 were written
 * for such data ('whole', the default); laboratories that carry one decimal through use 'tenth'. Ties go up by default;
 * ASTM E29 sends them to the even digit.
 */
export interface AstmRounding {
  readonly rounding?: 'whole' | 'tenth';
  readonly tie?: Tie;
}

/** Band value, dB → whole tenths of a decibel. */
export function astmTenths({ rounding = 'whole', tie = 'half-up' }: AstmRounding): (value_dB: number) => number {
  return rounding === 'whole' ? (v) => 10 * round(v, tie) : (v) => round(10 * v, tie);
}
