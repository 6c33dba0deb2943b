import { CONTOUR, IIC_MINUEND_DB, SINGLE_MAX_DB, SUM_MAX_DB } from '../standards/astm-e989.ts';
import { type AstmRounding, astmTenths } from './astm-rounding.ts';
import { type ContourFit, fitContour } from './contour-fit.ts';
import type { Spectrum } from './spectrum.ts';

export interface Iic {
  /** Integer; NaN where a band is missing. */
  readonly IIC: number;
  readonly fit: ContourFit;
}

/**
 * Impact insulation class of normalised impact sound levels in one-third octaves 100–3150 Hz.
 *
 * Source: ASTM E989-21, clause 5. The limit of 8 dB for a single band holds here; ISO 717-2 has none.
 * @param impactLevel One-third octaves, dB; further bands are ignored. Octave bands do not suffice: NaN.
 */
export function iic(impactLevel: Spectrum, rounding: AstmRounding = {}): Iic {
  const fit = fitContour(impactLevel, {
    contour: CONTOUR,
    kind: 'level',
    sumMax_dB: SUM_MAX_DB,
    singleMax_dB: SINGLE_MAX_DB,
    step_dB: 1,
    toTenths: astmTenths(rounding),
  });
  return { IIC: IIC_MINUEND_DB - fit.at500_dB, fit };
}
