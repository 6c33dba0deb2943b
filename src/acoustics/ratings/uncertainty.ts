import { AIRBORNE_UNCERTAINTY, COVERAGE_FACTORS, type MeasurementSituation } from '../standards/iso-12999-1.ts';
import { bandsOf, valuesOf } from '../standards/table.ts';
import { valuesAt } from './spectrum.ts';

/** Standard uncertainty of measured airborne insulation at these bands, dB; NaN outside 50–5000 Hz. ISO 12999-1, table 2. */
export function airborneUncertainty_dB(bands_Hz: readonly number[], situation: MeasurementSituation): number[] {
  const table = AIRBORNE_UNCERTAINTY[situation];
  return valuesAt({ bands_Hz: bandsOf(table), values_dB: valuesOf(table) }, bands_Hz);
}

/** Independent uncertainties together: the root of the sum of squares, dB. */
export function combinedUncertainty_dB(...uncertainties_dB: readonly number[]): number {
  return Math.hypot(...uncertainties_dB);
}

/**
 * Coverage factor k of ISO 12999-1, clause 8: the smallest tabulated one that covers `confidence`.
 *
 * @param confidence Fraction, one of the tabulated or below: up to 0.999 two-sided, 0.9995 one-sided.
 * @throws RangeError above that, and unless it is > 0.
 */
export function coverageFactor(confidence: number, sides: 'twoSided' | 'oneSided'): number {
  const row = COVERAGE_FACTORS.find((r) => r[sides] >= confidence);
  if (!row || !(confidence > 0)) {
    throw new RangeError(`confidence must be > 0 and at most ${COVERAGE_FACTORS.at(-1)![sides]}, got ${confidence}`);
  }
  return row.factor;
}
