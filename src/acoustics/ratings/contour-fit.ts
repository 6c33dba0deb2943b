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
 * Moves the contour towards the better rating, step by step, as far as the limits allow.
 *
 * All sums are of whole tenths of a decibel, so that the inclusive limits are compared exactly.
 */
export function fitContour(spectrum: Spectrum, rule: ContourRule): ContourFit {
  const bands_Hz = bandsOf(rule.contour);
  const given_dB = valuesAt(spectrum, bands_Hz);
  const missing_Hz = missingBands(bands_Hz, given_dB);
  if (missing_Hz.length > 0) return noFit(bands_Hz, given_dB, missing_Hz);

  // A level contour is an insulation contour seen from below: both are turned so that more is better.
  const sign = rule.kind === 'insulation' ? 1 : -1;
  const values = given_dB.map((v) => sign * rule.toTenths(v));
  const contour = rule.contour.map(([, v]) => sign * Math.round(10 * v));
  const step = Math.round(10 * rule.step_dB);
  const sumMax = Math.round(10 * rule.sumMax_dB);
  const singleMax = Math.round(10 * (rule.singleMax_dB ?? Number.POSITIVE_INFINITY));

  const deficienciesAt = (shift: number) => values.map((v, i) => Math.max(0, contour[i]! + shift - v));
  let shift = step * Math.floor(Math.min(...values.map((v, i) => v - contour[i]!)) / step);
  let deficiencies = deficienciesAt(shift);
  let overSum = false;
  let overSingle = false;
  // The lowest band grows by a whole step each time, so the sum limit ends the search after sumMax / step of them.
  for (let n = 0; n <= sumMax / step; n++) {
    const next = deficienciesAt(shift + step);
    overSum = total(next) > sumMax;
    overSingle = Math.max(...next) > singleMax;
    if (overSum || overSingle) break;
    shift += step;
    deficiencies = next;
  }

  const contour_dB = contour.map((c) => (sign * (c + shift)) / 10);
  const largest = Math.max(...deficiencies);
  return {
    bands_Hz,
    values_dB: values.map((v) => (sign * v) / 10),
    contour_dB,
    deficiencies_dB: deficiencies.map((d) => d / 10),
    sum_dB: total(deficiencies) / 10,
    largest_dB: largest / 10,
    largestBand_Hz: largest > 0 ? bands_Hz[deficiencies.indexOf(largest)]! : NaN,
    governs: overSum && overSingle ? 'both' : overSingle ? 'single' : 'sum',
    at500_dB: contour_dB[bands_Hz.indexOf(500)]!,
    missing_Hz,
  };
}

function total(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0);
}

function noFit(bands_Hz: number[], values_dB: number[], missing_Hz: number[]): ContourFit {
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
