import { type BandTable, bandsOf } from '../standards/table.ts';
import { missingBands, type Spectrum, valuesAt } from './spectrum.ts';

/** How a standard fits its contour to measured bands. */
export interface ContourRule {
  /** The contour, dB; only its shape and its value at 500 Hz matter. */
  readonly contour: BandTable;
  /** 'insulation': short of the contour is a deficiency; 'level': above it is one. */
  readonly kind: 'insulation' | 'level';
  /** Greatest allowed sum of deficiencies, dB, inclusive. */
  readonly sumMax_dB: number;
  /** Greatest allowed single deficiency, dB, inclusive. Absent: no limit. */
  readonly singleMax_dB?: number;
  /** Step of the shift, dB: 1, or 0.1 for statements of uncertainty (ISO 717-1:2020, clause 4.4). */
  readonly step_dB: 1 | 0.1;
  /** Band value, dB → whole tenths of a decibel. */
  readonly toTenths: (value_dB: number) => number;
}

/** The fitted contour and how it came about. Arrays belong to `bands_Hz`; all of them NaN where there is no fit. */
export interface ContourFit {
  readonly bands_Hz: readonly number[];
  /** Band values as rated, that is after the rounding that the standard asks for, dB. */
  readonly values_dB: readonly number[];
  readonly contour_dB: readonly number[];
  readonly deficiencies_dB: readonly number[];
  readonly sum_dB: number;
  readonly largest_dB: number;
  /** Band of the largest deficiency, the lowest of equals, Hz; NaN where nothing is deficient. */
  readonly largestBand_Hz: number;
  /** Which limit forbids the next step; 'none' where there is no fit. */
  readonly governs: 'sum' | 'single' | 'both' | 'none';
  /** Contour value at 500 Hz, dB. */
  readonly at500_dB: number;
  readonly missing_Hz: readonly number[];
}

/**
 * Moves the contour towards the better rating as far as the limits allow, by halving the range in which the last
 * allowed step must lie.
 *
 * All sums are of whole tenths of a decibel, so that the inclusive limits are compared exactly.
 */
export function fitContour(spectrum: Spectrum, rule: ContourRule): ContourFit {
  const { bands_Hz, tenths } = readyContour(rule.contour);
  const given_dB = valuesAt(spectrum, bands_Hz);
  const missing_Hz = missingBands(bands_Hz, given_dB);
  if (missing_Hz.length > 0) return noFit(bands_Hz, given_dB, missing_Hz);

  // A level contour is an insulation contour seen from below: both are turned so that more is better.
  const sign = rule.kind === 'insulation' ? 1 : -1;
  const values = given_dB.map((v) => sign * rule.toTenths(v));
  const contour = tenths.map((v) => sign * v);
  const step = Math.round(10 * rule.step_dB);
  const sumMax = Math.round(10 * rule.sumMax_dB);
  const singleMax = Math.round(10 * (rule.singleMax_dB ?? Number.POSITIVE_INFINITY));

  // Short of the contour by this much where the shift is 0; deficient where short + shift > 0.
  const short = contour.map((c, i) => c - values[i]!);
  const shortest = short.reduce((most, s) => Math.max(most, s), -Infinity);
  const allowed = (shift: number) => sumOver(short, shift) <= sumMax && shortest + shift <= singleMax;
  // Without any deficiency every limit holds; one that fills the sum by itself exceeds it a step later.
  let good = step * Math.floor(-shortest / step);
  let bad = good + step * (Math.floor(sumMax / step) + 2);
  let middle = halfway(good, bad, step);
  while (middle > good) {
    if (allowed(middle)) good = middle;
    else bad = middle;
    middle = halfway(good, bad, step);
  }
  const overSum = sumOver(short, good + step) > sumMax;
  const overSingle = shortest + good + step > singleMax;
  const deficiencies = short.map((s) => Math.max(0, s + good));

  const contour_dB = contour.map((c) => (sign * (c + good)) / 10);
  const largest = Math.max(0, shortest + good);
  return {
    bands_Hz,
    values_dB: values.map((v) => (sign * v) / 10),
    contour_dB,
    deficiencies_dB: deficiencies.map((d) => d / 10),
    sum_dB: sumOver(short, good) / 10,
    largest_dB: largest / 10,
    largestBand_Hz: largest > 0 ? bands_Hz[deficiencies.indexOf(largest)]! : NaN,
    governs: overSum && overSingle ? 'both' : overSingle ? 'single' : 'sum',
    at500_dB: contour_dB[bands_Hz.indexOf(500)]!,
    missing_Hz,
  };
}

/** Contours are few, and the same fit comes again and again. */
const contours = new WeakMap<BandTable, { readonly bands_Hz: readonly number[]; readonly tenths: readonly number[] }>();

function readyContour(contour: BandTable): {
  readonly bands_Hz: readonly number[];
  readonly tenths: readonly number[];
} {
  let ready = contours.get(contour);
  if (!ready) {
    ready = { bands_Hz: bandsOf(contour), tenths: contour.map(([, v]) => Math.round(10 * v)) };
    contours.set(contour, ready);
  }
  return ready;
}

/** Between the two, a whole number of steps above `good`; `good` itself when there is nothing between. */
function halfway(good: number, bad: number, step: number): number {
  return good + step * Math.floor((bad - good) / step / 2);
}

function sumOver(short: readonly number[], shift: number): number {
  let sum = 0;
  for (let i = 0; i < short.length; i++) sum += Math.max(short[i]! + shift, 0);
  return sum;
}

function noFit(bands_Hz: readonly number[], values_dB: number[], missing_Hz: number[]): ContourFit {
  const gaps = bands_Hz.map(() => NaN);
  return {
    bands_Hz,
    values_dB,
    contour_dB: gaps,
    deficiencies_dB: gaps,
    sum_dB: NaN,
    largest_dB: NaN,
    largestBand_Hz: NaN,
    governs: 'none',
    at500_dB: NaN,
    missing_Hz,
  };
}
