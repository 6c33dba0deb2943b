import { kindOf, type QuantityKind, shownUnit, type Unit, type UnitSystem } from './kinds.ts';
import { readTerm, withArticle } from './read-term.ts';

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  /** `at` counts characters of the text from 0. */
  | { readonly ok: false; readonly message: string; readonly at: number };

export interface QuantityOptions {
  /** Symbol of the unit that a bare number means and that is shown; absent: the kind's own in this system. */
  readonly unit?: string;
}

export const SIGN = /^(?:([-−–])|\+)?\s*/;
const BETWEEN_TERMS = /^\s*[-,]?\s*/;

/**
 * Reads what a person typed into SI.
 *
 * Numbers: see `read-number.ts`. A bare number is in the unit shown. Units are forgiving of case, blanks and raised
 * exponents (`lb/ft^3`, `LB/FT3`, `lb per cu ft`), but never take milli for mega. Lengths and masses may be sums of ever
 * smaller units (`5 ft 6 1/2 in`, `5' 6"`, `1 m 20 cm`); a bare number after feet means inches.
 * @returns The SI value, or one sentence that says what was expected, what was found and where.
 * @throws RangeError if `options.unit` is not a unit of the kind.
 */
export function parseQuantity(
  text: string,
  kind: QuantityKind,
  system: UnitSystem,
  options: QuantityOptions = {},
): ParsedQuantity {
  const { name, example } = kindOf(kind);
  const bare = shownUnit(kind, system, options.unit);
  const start = text.length - text.trimStart().length;
  const end = text.trimEnd().length;
  const wrong = (expected: string, at: number, got = text.slice(at, end), such = example[system]): ParsedQuantity => {
    const place = at > start && got !== '' ? ` at character ${at + 1}` : '';
    return { ok: false, at, message: `Expected ${expected}, such as ${such}; got ${quoted(got)}${place}.` };
  };
  if (start >= end) return wrong(withArticle(name), 0, '');

  const [signed, minus] = SIGN.exec(text.slice(start, end))!;
  let position = start + signed.length;
  let total = 0;
  let previous: Unit | undefined;
  do {
    const term = readTerm(text.slice(position, end), kind, bare, previous);
    if (!term.ok) return wrong(term.expected, position + term.at, term.got, term.example);
    total += term.value;
    previous = term.unit;
    position += term.length;
    const gap = BETWEEN_TERMS.exec(text.slice(position, end))![0].length;
    if (gap > 0 && position + gap === end) return wrong('a number and a smaller unit, or nothing', end - 1);
    position += gap;
  } while (position < end);

  // 0 − total, so that "-0" is 0.
  const value = minus === undefined ? total : 0 - total;
  return Number.isFinite(value) ? { ok: true, value } : wrong(`${withArticle(name)} of ordinary size`, start);
}

function quoted(got: string): string {
  return got === '' ? 'nothing' : `"${got.length > 40 ? `${got.slice(0, 39)}…` : got}"`;
}
