import type { Construction } from './construction.ts';
import { joinedStudy } from './joined-study.ts';
import { type NumberPath, withNumber } from './number-path.ts';
import { predict } from './predict.ts';
import type { PredictOptions } from './prediction.ts';
import { withSameQuadrature } from './same-quadrature.ts';
import { type Sensitivity, sensitivities } from './sensitivities.ts';
import { propagatedUncertainty } from './tolerances.ts';

/** A positive number to be studied. It may be one that the construction leaves out: then the value is what is usual. */
export interface StudiedNumber {
  readonly path: NumberPath;
  readonly value: number;
  /** Half the width of the range that the number does not leave, as a share of the value, > 0. */
  readonly tolerance: number;
}

export interface NumberEffects extends StudiedNumber, Sensitivity {
  /** That its tolerance stands for, in the number's own unit. */
  readonly standardUncertainty: number;
  /** What one of them does, dB per band. */
  readonly standardR_dB: readonly number[];
  readonly standardLn_dB: readonly number[];
}

/** So close to what the engine accepts that no step fits: it has no slope and counts as certain. */
export interface NumberAtTheEdge extends StudiedNumber {
  /** What the engine has against the step. */
  readonly reason: string;
}

export type NumberOutcome = NumberEffects | NumberAtTheEdge;

export interface NumberStudy {
  readonly bands_Hz: readonly number[];
  readonly numbers: readonly NumberEffects[];
  /** Standard uncertainty that all tolerances together give, taken as independent, dB per band. */
  readonly standardR_dB: readonly number[];
  readonly standardLn_dB: readonly number[];
  readonly atTheEdge: readonly NumberAtTheEdge[];
}

/**
 * What every one of some numbers does to R and Ln: the slope around its present value, and what its tolerance adds to the
 * uncertainty. A range that is not left, of half width a, stands for a standard uncertainty of a/√3
 * (ISO/IEC Guide 98-3:2008, 4.3.7).
 *
 * @throws TypeError and RangeError as `predict`, for the construction as it is.
 */
export function studyNumbers(
  construction: Construction,
  studied: readonly StudiedNumber[],
  options: PredictOptions = {},
): NumberStudy {
  const same = withSameQuadrature(construction, options);
  // What the engine has against the construction itself is not taken for an edge of its numbers.
  predict(construction, same);
  return joinedStudy(
    studied.map((number) => studyNumber(construction, number, same)),
    options,
  );
}

/**
 * The part of `studyNumbers` that one number has: four predictions.
 *
 * @throws TypeError and RangeError as `floorModel`, for the construction as it is.
 */
export function studyNumber(
  construction: Construction,
  number: StudiedNumber,
  options: PredictOptions = {},
): NumberOutcome {
  const same = withSameQuadrature(construction, options);
  try {
    return effectsOf(construction, number, same);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ...number, reason: error.message };
  }
}

function effectsOf(construction: Construction, number: StudiedNumber, options: PredictOptions): NumberEffects {
  const { path, value, tolerance } = number;
  const stated = withNumber(construction, path, value);
  const standardUncertainty = (tolerance * value) / Math.sqrt(3);
  const [slopes] = sensitivities(stated, [path], options).parameters;
  // R, then Ln: one prediction answers for both.
  const bothSpectra = (varied: Construction) => {
    const { R_dB, Ln_dB } = predict(varied, options);
    return [...R_dB, ...Ln_dB];
  };
  const { standard_dB } = propagatedUncertainty(stated, [{ name: path, path, standardUncertainty }], bothSpectra);
  const half = standard_dB.length / 2;
  return {
    ...number,
    ...slopes!,
    standardUncertainty,
    standardR_dB: standard_dB.slice(0, half),
    standardLn_dB: standard_dB.slice(half),
  };
}
