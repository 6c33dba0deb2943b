import type { Construction } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { PredictOptions } from '#src/acoustics/prediction.ts';
import { combinedUncertainty_dB } from '#src/acoustics/ratings/uncertainty.ts';
import { SINGLE_NUMBER_UNCERTAINTY_DB } from '#src/acoustics/standards/iso-12999-1.ts';
import { propagatedUncertainty } from '#src/acoustics/tolerances.ts';
import { type BandUncertainty, predictionUncertainty } from '#src/acoustics/uncertainty.ts';
import { assumedTolerance } from './assumed-tolerances.ts';
import type { NamedNumber, NumberedConstruction } from './named-number.ts';

/** How far a laboratory may find something else, per band. */
export interface StackUncertainty {
  /** Of R: ISO 12999-1, situation A, and the model's residuals together; 95 % two-sided. */
  readonly R: BandUncertainty;
  /** Of the single numbers between laboratories alone, without the model: ISO 12999-1, situation A, standard uncertainty. */
  readonly betweenLaboratories: { readonly Rw: number; readonly Lnw: number };
  /**
   * What not knowing the construction's numbers exactly does, from assumed tolerances. Measured specimens scatter by them
   * too, so the model's residuals hold a part of it: not to be added to `R`.
   */
  readonly tolerances: ToleranceEffects;
}

export interface ToleranceEffects {
  readonly basis: 'assumed, no source';
  /** All numbers together, as independent. */
  readonly R_dB: readonly number[];
  readonly Ln_dB: readonly number[];
  readonly contributions: readonly Contribution[];
}

/** One standard uncertainty of one number and what it does; null with a reason where it cannot be said. */
export interface Contribution extends NamedNumber {
  readonly standardUncertainty: number;
  readonly R_dB: readonly number[] | null;
  readonly Ln_dB: readonly number[] | null;
  readonly reason?: string;
}

export function stackUncertainty(
  numbers: NumberedConstruction,
  bands_Hz: readonly number[],
  options: PredictOptions,
): StackUncertainty {
  const { Rw, Lnw } = SINGLE_NUMBER_UNCERTAINTY_DB;
  return {
    R: predictionUncertainty(bands_Hz),
    betweenLaboratories: { Rw: Rw.A, Lnw: Lnw.A },
    tolerances: toleranceEffects(numbers, bands_Hz.length, options),
  };
}

function toleranceEffects(
  { construction, numbers }: NumberedConstruction,
  bands: number,
  options: PredictOptions,
): ToleranceEffects {
  const contributions = numbers.flatMap((number) => {
    const share = assumedTolerance(number.path);
    return share === undefined ? [] : [contribution(construction, number, share * number.value, options)];
  });
  const together = (values: 'R_dB' | 'Ln_dB') =>
    Array.from({ length: bands }, (_, i) => combinedUncertainty_dB(...contributions.map((c) => c[values]?.[i] ?? 0)));
  return { basis: 'assumed, no source', R_dB: together('R_dB'), Ln_dB: together('Ln_dB'), contributions };
}

/** R and Ln from the same two predictions. */
function contribution(
  construction: Construction,
  number: NamedNumber,
  standardUncertainty: number,
  options: PredictOptions,
): Contribution {
  const both = (varied: Construction) => {
    const { R_dB, Ln_dB } = predict(varied, options);
    return [...R_dB, ...Ln_dB];
  };
  try {
    const tolerance = { name: number.path, path: number.path, standardUncertainty };
    const { standard_dB } = propagatedUncertainty(construction, [tolerance], both);
    const half = standard_dB.length / 2;
    return { ...number, standardUncertainty, R_dB: standard_dB.slice(0, half), Ln_dB: standard_dB.slice(half) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ...number, standardUncertainty, R_dB: null, Ln_dB: null, reason: error.message };
  }
}
