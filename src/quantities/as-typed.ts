import { type QuantityKind, shownUnit, type UnitSystem } from './kinds.ts';
import { type QuantityOptions, SIGN } from './parse-quantity.ts';
import { readNumber } from './read-number.ts';

/** What someone typed may be a page long. */
const LONGEST = 40;

/**
 * A quantity as it was typed, for a sentence that refuses it: to the last digit, since a rounded one is another number
 * (1e-9 m reads 0 m). A bare number gets the unit that it was read in.
 *
 * @param text What `parseQuantity` could read.
 */
export function asTyped(text: string, kind: QuantityKind, system: UnitSystem, options: QuantityOptions = {}): string {
  const typed = text.trim();
  const unsigned = typed.replace(SIGN, '');
  const number = readNumber(unsigned);
  const { symbol } = shownUnit(kind, system, options.unit);
  const isBare = number.ok && number.length === unsigned.length && symbol !== '';
  const short = typed.length > LONGEST ? `${typed.slice(0, LONGEST - 1)}…` : typed;
  return isBare ? `${short} ${symbol}` : short;
}
