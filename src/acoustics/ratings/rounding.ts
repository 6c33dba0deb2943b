/**
 * Rounding as the rating standards ask for it, in whole numbers of tenths of a decibel.
 *
 * A decimal such as 20.45 has no exact binary form; a margin of a billionth keeps it on the side on which it was written.
 */
const MARGIN = 1e-9;

/** How a value that lies exactly between two steps is settled: upwards, or to the even one (ASTM E29). */
export type Tie = 'half-up' | 'half-even';

export function roundHalfUp(x: number): number {
  return Math.floor(x + 0.5 + MARGIN);
}

export function roundHalfEven(x: number): number {
  const below = Math.floor(x + MARGIN);
  const isTie = Math.abs(x - below - 0.5) <= MARGIN;
  return isTie ? below + (Math.abs(below) % 2) : roundHalfUp(x);
}

export function round(x: number, tie: Tie): number {
  return tie === 'half-even' ? roundHalfEven(x) : roundHalfUp(x);
}

/** Band value in tenths of a decibel, rounded half up to 0.1 dB (ISO 717-1:2013, clause 4.4, footnote). */
export function toTenths(value_dB: number): number {
  return roundHalfUp(10 * value_dB);
}
