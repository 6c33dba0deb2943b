import { CONTOUR, SINGLE_MAX_DB, SUM_MAX_DB } from '../standards/astm-e413.ts';
import { type AstmRounding, astmTenths } from './astm-rounding.ts';
import { type ContourFit, fitContour } from './contour-fit.ts';
import type { Spectrum } from './spectrum.ts';

export interface Stc {
  /** Integer; NaN where a band is missing. */
  readonly STC: number;
  readonly fit: ContourFit;
}

/**
 * Sound transmission class of a transmission loss in one-third octaves 125–4000 Hz. The same classification of a noise
 * reduction is NIC, of a normalised one NNIC, of an apparent transmission loss ASTC (ASTM E336).
 *
 * Source: ASTM E413-22, clause 5.
 * @param transmissionLoss One-third octaves, dB; further bands are ignored. Octave bands do not suffice: NaN.
 */
export function stc(transmissionLoss: Spectrum, rounding: AstmRounding = {}): Stc {
  const fit = fitContour(transmissionLoss, {
    contour: CONTOUR,
    kind: 'insulation',
    sumMax_dB: SUM_MAX_DB,
    singleMax_dB: SINGLE_MAX_DB,
    step_dB: 1,
    toTenths: astmTenths(rounding),
  });
  return { STC: fit.at500_dB, fit };
}
