import type { ModelConstants } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { QUICK_QUADRATURE } from '#src/acoustics/quadrature.ts';
import { type ContourRule, fitContour } from '#src/acoustics/ratings/contour-fit.ts';
import * as e413 from '#src/acoustics/standards/astm-e413.ts';
import * as e989 from '#src/acoustics/standards/astm-e989.ts';
import { REFERENCE_CONSTRUCTIONS, type ReferenceId } from '../../tests/published/reference-constructions.ts';
import { measuredOf, octaves_dB } from './accuracy-compare.ts';
import { minimise } from './nelder-mead.ts';

/** One constant that is fitted: where it is expected, how sure that is, and how far it may go. */
export interface FittedConstant {
  readonly key: keyof ModelConstants;
  readonly expected: number;
  /** Standard deviation of its natural logarithm. */
  readonly spread: number;
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

const START = 'starting value from earlier trials of this method';

/** What the fit may vary; the other constants stay at their sourced values. */
export const FITTED_CONSTANTS: readonly FittedConstant[] = [
  { key: 'bayLossFactor', expected: 0.25, spread: 0.5, least: 0.1, most: 0.6, source: START },
  { key: 'channelStiffness_N_m', expected: 4e5, spread: 0.5, least: 5e4, most: 3e6, source: START },
  { key: 'channelExponent', expected: 0.8, spread: 0.4, least: 0.2, most: 2, source: START },
  { key: 'clipStiffness_N_m', expected: 7e5, spread: 0.4, least: 1e5, most: 4e6, source: START },
  { key: 'studStiffness_N_m2', expected: 4e5, spread: 0.7, least: 5e4, most: 4e6, source: START },
  { key: 'studExponent', expected: 1.3, spread: 0.3, least: 0.5, most: 2.5, source: START },
  { key: 'nearFieldWeight', expected: 0.8, spread: 0.3, least: 0.05, most: 1, source: START },
  { key: 'reverberantWeight', expected: 0.6, spread: 0.4, least: 0.05, most: 1, source: START },
  {
    key: 'cavityAbsorption',
    expected: 0.1,
    spread: 0.5,
    least: 0.01,
    most: 0.4,
    source: 'boards and joists, by handbooks 0.05–0.2',
  },
  { key: 'deckImpactLossFactor', expected: 0.25, spread: 0.5, least: 0.02, most: 0.6, source: START },
  { key: 'joistInertiaLimit_Hz', expected: 140, spread: 0.3, least: 60, most: 400, source: START },
];

/** Errors that count as one: an octave band, a rating. */
const SCALE = { octave_dB: 4, STC: 2.2, IIC: 2.5 };

/** Sum of squared errors of `ids`, octave bands averaged per construction, and the distance from what was expected. */
export function misfit(
  constants: ModelConstants,
  ids: readonly ReferenceId[],
  fitted: readonly FittedConstant[] = FITTED_CONSTANTS,
): number {
  let sum = 0;
  for (const id of ids) sum += misfitOf(id, constants);
  for (const { key, expected, spread, least, most } of fitted) {
    const value = constants[key];
    sum += (Math.log(value / expected) / spread) ** 2;
    if (value < least || value > most) sum += 1e3 * (1 + Math.abs(Math.log(value / expected)));
  }
  return sum;
}

export function misfitOf(id: ReferenceId, constants: ModelConstants): number {
  const measured = measuredOf(id);
  const prediction = predict(REFERENCE_CONSTRUCTIONS[id], { constants, quadrature: QUICK_QUADRATURE });
  let sum = 0;
  if (measured.TL_dB) {
    const errors = octaves_dB(prediction).map((TL, i) => (TL - measured.TL_dB![i]!) / SCALE.octave_dB);
    sum += (2 * errors.reduce((s, e) => s + e * e, 0)) / errors.length;
  }
  if (measured.STC) sum += ((smoothSTC(prediction) - measured.STC) / SCALE.STC) ** 2;
  if (measured.IIC) sum += ((smoothIIC(prediction) - measured.IIC) / SCALE.IIC) ** 2;
  return sum;
}

/** A rating in tenths lies about half a step above the integer one. */
const HALF_STEP = 0.45;
const tenths = (v: number): number => Math.round(10 * v);

const STC_RULE: ContourRule = {
  contour: e413.CONTOUR,
  kind: 'insulation',
  sumMax_dB: e413.SUM_MAX_DB,
  singleMax_dB: e413.SINGLE_MAX_DB,
  step_dB: 0.1,
  toTenths: tenths,
};
const IIC_RULE: ContourRule = {
  contour: e989.CONTOUR,
  kind: 'level',
  sumMax_dB: e989.SUM_MAX_DB,
  singleMax_dB: e989.SINGLE_MAX_DB,
  step_dB: 0.1,
  toTenths: tenths,
};

function smoothSTC({ bands_Hz, R_dB }: Prediction): number {
  return fitContour({ bands_Hz, values_dB: R_dB }, STC_RULE).at500_dB - HALF_STEP;
}

function smoothIIC({ bands_Hz, Ln_dB }: Prediction): number {
  return e989.IIC_MINUEND_DB - fitContour({ bands_Hz, values_dB: Ln_dB }, IIC_RULE).at500_dB - HALF_STEP;
}

/** The constants that fit `ids` best, searched from `start` in the logarithms of the fitted ones. Deterministic. */
export function fitConstants(
  ids: readonly ReferenceId[],
  start: ModelConstants,
  fitted: readonly FittedConstant[] = FITTED_CONSTANTS,
): { readonly constants: ModelConstants; readonly misfit: number } {
  const constantsAt = (x: readonly number[]): ModelConstants => {
    const constants: Record<string, number> = { ...start };
    fitted.forEach(({ key }, i) => {
      constants[key] = Math.exp(x[i]!);
    });
    return constants as unknown as ModelConstants;
  };
  const found = minimise(
    (x) => misfit(constantsAt(x), ids, fitted),
    fitted.map(({ key }) => Math.log(start[key])),
    fitted.map(({ spread }) => spread / 2),
  );
  return { constants: constantsAt(found.x), misfit: found.value };
}
