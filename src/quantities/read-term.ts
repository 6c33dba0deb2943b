import { findUnit, kindOfUnit, unitInOtherCase } from './find-unit.ts';
import { kindOf, type QuantityKind, symbolsOf, toSI, type Unit } from './kinds.ts';
import { readNumber } from './read-number.ts';

/** A number with its unit at the start of a text, or what was expected where. */
export type TermReading =
  | { readonly ok: true; readonly value: number; readonly unit: Unit; readonly length: number }
  | {
      readonly ok: false;
      readonly expected: string;
      readonly at: number;
      readonly got?: string;
      /** Absent: the kind's own. */
      readonly example?: string | undefined;
    };

/** A length or mass may be a sum of terms, so that its units end where the next number may begin. */
const UNIT_OF_TERM = /^(?:''|′′|’’|["″”'′’]|[A-Za-z.]+)/;

/**
 * Reads one term.
 *
 * @param text Without blanks at either end.
 * @param bare The unit that a number without one has.
 * @param previous The unit of the term before it, which must be larger.
 */
export function readTerm(text: string, kind: QuantityKind, bare: Unit, previous: Unit | undefined): TermReading {
  const { name } = kindOf(kind);
  const number = readNumber(text);
  if (!number.ok) {
    const expected = number.problem === 'a number' && !previous ? withArticle(name) : number.problem;
    return { ok: false, expected, at: number.at, example: number.example };
  }
  const at = number.length + /^\s*/.exec(text.slice(number.length))![0].length;
  const got = unitText(text.slice(at), kind, previous);
  const unit = got === '' ? bareUnit(bare, previous, kind) : findUnit(got, kind);
  if (!unit) return { ok: false, expected: expectedUnit(got, kind), at, got };
  if (previous && unit.factor >= previous.factor) {
    return { ok: false, expected: `a unit smaller than ${previous.symbol}`, at, got };
  }
  return { ok: true, value: toSI(number.value, unit), unit, length: at + got.length };
}

export function withArticle(name: string): string {
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}

/** The part of the rest that is this term's unit. A unit of another kind is taken whole, so that it can be named. */
function unitText(rest: string, kind: QuantityKind, previous: Unit | undefined): string {
  const isOther = !previous && !findUnit(rest, kind) && kindOfUnit(rest) !== undefined;
  return kindOf(kind).compound && !isOther ? (UNIT_OF_TERM.exec(rest)?.[0] ?? rest) : rest;
}

/** The first number is in the unit shown; one after feet is in inches. */
function bareUnit(bare: Unit, previous: Unit | undefined, kind: QuantityKind): Unit | undefined {
  if (!previous) return bare;
  return previous.symbol === 'ft' ? findUnit('in', kind) : undefined;
}

function expectedUnit(got: string, kind: QuantityKind): string {
  const { name } = kindOf(kind);
  const symbols = symbolsOf(kind);
  const intended = unitInOtherCase(got, kind)?.symbol;
  const other = kindOfUnit(got);
  const hint = intended ? ` (${intended}?)` : other && other !== name ? ` (not ${withArticle(other)})` : '';
  return `${got === '' ? 'a smaller unit' : `a unit of ${name}`}${symbols === '' ? '' : ` (${symbols})`}${hint}`;
}
