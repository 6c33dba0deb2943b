import { findUnit, kindOfUnit, unitInOtherCase } from './find-unit.ts';
import { kindOf, type QuantityKind, shownUnit, symbolsOf, toSI, type Unit, type UnitSystem } from './kinds.ts';
import { readNumber } from './read-number.ts';

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  /** `at` counts characters of the text from 0. */
  | { readonly ok: false; readonly message: string; readonly at: number };

export interface QuantityOptions {
  /** Symbol of the unit that a bare number means and that is shown; absent: the kind's own in this system. */
  readonly unit?: string;
}

/** A length or mass may be a sum of terms, so that its units end where the next number may begin. */
const UNIT_OF_TERM = /^(?:''|′′|’’|["″”'′’]|[A-Za-z.]+)/;
const BETWEEN_TERMS = /^\s*[-,]?\s*/;

/**
 * Reads what a person typed into SI.
 *
 * Numbers: see `read-number.ts`. A bare number is in the unit shown. Units are forgiving of case, blanks and raised
 * exponents (`lb/ft^3`, `LB/FT3`, `lb per cu ft`), but never take milli for mega. Lengths and masses may be sums of ever
 * smaller units (`5 ft 6 1/2 in`, `5' 6"`, `1 m 20 cm`); a bare number after feet means inches.
 * @returns The SI value, or one sentence that says what was expected, what was found and where.
 */
export function parseQuantity(
  text: string,
  kind: QuantityKind,
  system: UnitSystem,
  options: QuantityOptions = {},
): ParsedQuantity {
  const { name, compound, example } = kindOf(kind);
  const bare = shownUnit(kind, system, options.unit);
  const start = text.length - text.trimStart().length;
  const end = text.trimEnd().length;
  const wrong = (expected: string, at: number, got = text.slice(at, end)): ParsedQuantity => ({
    ok: false,
    at,
    message: `Expected ${expected}, such as ${example[system]}; got ${
      got === '' ? 'nothing' : `"${shorten(got)}"`
    }${at > start && got !== '' ? ` at character ${at + 1}` : ''}.`,
  });
  if (start >= end) return wrong(article(name), 0, '');

  const sign = /^[-−–+]/.exec(text.slice(start))?.[0];
  let position = start + (sign === undefined ? 0 : 1);
  position += /^\s*/.exec(text.slice(position, end))![0].length;

  let total = 0;
  let previous: Unit | undefined;
  do {
    const number = readNumber(text.slice(position, end));
    if (!number.ok)
      return wrong(number.problem === 'a number' && !previous ? article(name) : number.problem, position + number.at);
    position += number.length;
    position += /^\s*/.exec(text.slice(position, end))![0].length;

    const rest = text.slice(position, end);
    const wholeRestIsOther = !previous && !findUnit(rest, kind) && kindOfUnit(rest) !== undefined;
    const unitText = compound && !wholeRestIsOther ? (UNIT_OF_TERM.exec(rest)?.[0] ?? rest) : rest;
    const unit = unitText === '' ? bareAfter(previous, bare, kind) : findUnit(unitText, kind);
    if (!unit) {
      const intended = unitInOtherCase(unitText, kind)?.symbol;
      const other = kindOfUnit(unitText);
      const hint = intended ? ` (${intended}?)` : other && other !== name ? ` (not ${article(other)})` : '';
      return wrong(
        `${unitText === '' ? 'a smaller unit' : `a unit of ${name}`}${unitsHint(kind)}${hint}`,
        position,
        unitText,
      );
    }
    if (previous && unit.factor >= previous.factor) {
      return wrong(`a unit smaller than ${previous.symbol}`, position, unitText);
    }
    total += toSI(number.value, unit);
    previous = unit;
    position += unitText.length;
    const gap = BETWEEN_TERMS.exec(text.slice(position, end))![0].length;
    if (gap > 0 && position + gap === end) return wrong('a number and a smaller unit, or nothing', end - 1);
    position += gap;
  } while (position < end);

  const value = sign === '-' || sign === '−' || sign === '–' ? 0 - total : total;
  return Number.isFinite(value) ? { ok: true, value } : wrong(`${article(name)} of ordinary size`, start);
}

function bareAfter(previous: Unit | undefined, bare: Unit, kind: QuantityKind): Unit | undefined {
  if (!previous) return bare;
  return previous.symbol === 'ft' ? findUnit('in', kind) : undefined;
}

function unitsHint(kind: QuantityKind): string {
  const symbols = symbolsOf(kind);
  return symbols === '' ? '' : ` (${symbols})`;
}

function article(name: string): string {
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}

function shorten(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
