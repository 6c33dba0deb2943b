import { INCH_M } from './conversion-factors.ts';
import { fromSI, kindOf, type QuantityKind, shownUnit, toSI, type UnitSystem } from './kinds.ts';
import type { QuantityOptions } from './parse-quantity.ts';

/** What stands for "no value". */
export const NO_VALUE = '–';

/** An inch is shown as a fraction where the value lies this close to a sixteenth: both limits must hold. */
const FRACTION_TOLERANCE_IN = 0.005;
const FRACTION_TOLERANCE_RELATIVE = 0.005;

/** Enough for the thinnest length in metres. */
const DECIMALS_OF_TINY = 9;

/** Symbol of the unit that is shown; empty for plain numbers. */
export function unitOf(kind: QuantityKind, system: UnitSystem): string {
  return kindOf(kind).shown[system];
}

/** SI value → number in the unit shown. Not rounded. */
export function displayValue(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  options: QuantityOptions = {},
): number {
  return fromSI(value, shownUnit(kind, system, options.unit));
}

/** Number in the unit shown → SI value. */
export function fromDisplayValue(
  shown: number,
  kind: QuantityKind,
  system: UnitSystem,
  options: QuantityOptions = {},
): number {
  return toSI(shown, shownUnit(kind, system, options.unit));
}

/**
 * Number and unit for people: `38 mm`, `1 1/2 in`, `13 ft 9 in`, `110 lb/ft³`.
 *
 * Digits: as many as the kind of quantity deserves. The text is rounded: a field that was not edited must keep its value
 * instead of reading its own text back. NaN gives a dash.
 */
export function formatQuantity(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  options: QuantityOptions = {},
): string {
  if (Number.isNaN(value)) return NO_VALUE;
  const { symbol } = shownUnit(kind, system, options.unit);
  if (symbol === 'ft' && Number.isFinite(value)) return feetAndInches(value);
  const number = formatValue(value, kind, system, options);
  return symbol === '' ? number : `${number} ${symbol}`;
}

/** The number alone, for columns whose head carries the unit. */
export function formatValue(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  options: QuantityOptions = {},
): string {
  if (Number.isNaN(value)) return NO_VALUE;
  const { symbol } = shownUnit(kind, system, options.unit);
  const shown = displayValue(value, kind, system, options);
  const { significantDigits, decimalsMax, zeroIsAbsent } = kindOf(kind);
  const inFull = (number: number) =>
    symbol === 'in' ? inches(number) : decimal(number, significantDigits, decimalsMax);
  const text = inFull(shown);
  if (text !== '0' || !zeroIsAbsent || isRoundingError(value)) return text;
  const rounded = Number(shown.toPrecision(1));
  const step = 10 ** magnitudeOf(shown);
  // 0.045 mm would be 0.05 mm, which read back is 0.1 mm: cut off instead.
  const tiny = inFull(rounded) === '0' ? rounded : Math.trunc(shown / step) * step;
  return decimal(tiny, 1, DECIMALS_OF_TINY);
}

/** Thinner than anything laid in a floor: what is left of equal lengths that were computed in two ways. */
function isRoundingError(value_m: number): boolean {
  return Math.abs(value_m) < 1e-7;
}

/** The smallest step, in the unit shown, that changes the text of a value of this size; inches step by fractions. */
export function smallestStepShown(value: number, kind: QuantityKind, system: UnitSystem): number {
  const shown = Math.abs(displayValue(value, kind, system));
  const { significantDigits, decimalsMax } = kindOf(kind);
  return 10 ** -decimalsOf(shown, significantDigits, decimalsMax);
}

function feetAndInches(value_m: number): string {
  const sign = value_m < 0 ? '−' : '';
  // Whole sixteenths first, so that 12 inches never remain.
  const sixteenths = Math.round((16 * Math.abs(value_m)) / INCH_M);
  const feet = Math.floor(sixteenths / 192);
  const rest = sixteenths - 192 * feet;
  if (sixteenths === 0 && !isRoundingError(value_m))
    return `${sign}${decimal(Math.abs(value_m) / INCH_M, 1, DECIMALS_OF_TINY)} in`;
  if (feet === 0) return `${rest === 0 ? '' : sign}${sixteenthsOfInch(rest)} in`;
  return `${sign}${feet} ft${rest === 0 ? '' : ` ${sixteenthsOfInch(rest)} in`}`;
}

function inches(value_in: number): string {
  const size = Math.abs(value_in);
  // Hundredths of an inch are a quarter of a millimetre: more says nothing of a build-up; thin sheets get thousandths.
  const text = decimal(size, 4, size < 1 ? 3 : 2);
  // The decimal text counts too, so that it would not turn into a fraction once it is read back.
  const sixteenths = wholeSixteenths(size) ?? wholeSixteenths(Number(text));
  const shown = sixteenths === undefined ? text : sixteenthsOfInch(sixteenths);
  return value_in < 0 && shown !== '0' ? `−${shown}` : shown;
}

/** The sixteenths that a size stands for, if it lies close enough to any. */
function wholeSixteenths(size_in: number): number | undefined {
  const sixteenths = Math.round(16 * size_in);
  const error = Math.abs(sixteenths / 16 - size_in);
  const isClose = error <= FRACTION_TOLERANCE_IN && error <= FRACTION_TOLERANCE_RELATIVE * size_in;
  return isClose && Number.isSafeInteger(sixteenths) ? sixteenths : undefined;
}

function sixteenthsOfInch(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  let numerator = sixteenths % 16;
  let denominator = 16;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  if (numerator === 0) return String(whole);
  return `${whole === 0 ? '' : `${whole} `}${numerator}/${denominator}`;
}

/**
 * `significantDigits` of them, but whole numbers in full and no more than `decimalsMax` decimals; no trailing zeros. NaN gives
 * a dash.
 */
export function decimal(value: number, significantDigits: number, decimalsMax: number): string {
  if (Number.isNaN(value)) return NO_VALUE;
  if (!Number.isFinite(value)) return value < 0 ? '−∞' : '∞';
  const magnitude = magnitudeOf(value);
  const decimals = decimalsOf(value, significantDigits, decimalsMax);
  // Past the digits of a double, fixed notation would print digits that mean nothing.
  if (magnitude >= 15) return value.toExponential(significantDigits - 1).replace('-', '−');
  const text = value
    .toFixed(decimals)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  return text === '-0' ? '0' : text.replace('-', '−');
}

function decimalsOf(value: number, significantDigits: number, decimalsMax: number): number {
  return Math.min(Math.max(significantDigits - 1 - magnitudeOf(value), 0), decimalsMax);
}

function magnitudeOf(value: number): number {
  return value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
}
