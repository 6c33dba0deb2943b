import type { Construction } from './construction.ts';
import { type NumberPath, withNumber } from './number-path.ts';
import { predict } from './predict.ts';
import { type Sensitivity, sensitivities } from './sensitivities.ts';
import { propagatedUncertainty } from './tolerances.ts';

/** A positive number to be studied. It may be one that the construction leaves out: then the value is what is usual. */
export interface StudiedNumber {
  readonly path: NumberPath;
  readonly value: number;
  /** Half the width of the range that the number does not leave, as a share of the value, > 0. */
  readonly tolerance: number;
}

export interface NumberStudy {
  readonly bands_Hz: readonly number[];
  readonly numbers: readonly (StudiedNumber & Sensitivity)[];
  /** Standard uncertainty that all tolerances together give, taken as independent, dB per band. */
  readonly standardR_dB: readonly number[];
  readonly standardLn_dB: readonly number[];
  /** Numbers so close to what the engine accepts that no step fits: they have no slope and count as certain. */
  readonly atTheEdge: readonly StudiedNumber[];
}

/**
 * What every one of some numbers does to R and Ln: the slope around its present value, and what its tolerance adds to the
 * uncertainty. A range that is not left, of half width a, stands for a standard uncertainty of a/√3
 * (ISO/IEC Guide 98-3:2008, 4.3.7).
 *
 * @throws TypeError and RangeError as `predict`, for the construction as it is.
 */
export function studyNumbers(construction: Construction, numbers: readonly StudiedNumber[]): NumberStudy {
  const { bands_Hz } = predict(construction);
  const done: (StudiedNumber & Sensitivity)[] = [];
  const atTheEdge: StudiedNumber[] = [];
  const parts: (readonly number[])[] = [];
  for (const number of numbers) {
    const { path, value, tolerance } = number;
    const stated = withNumber(construction, path, value);
    try {
      const standardUncertainty = (tolerance * value) / Math.sqrt(3);
      const [slopes] = sensitivities(stated, [path]).parameters;
      const part = propagatedUncertainty(stated, [{ name: path, path, standardUncertainty }], bothSpectra);
      done.push({ ...number, ...slopes! });
      parts.push(part.standard_dB);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      atTheEdge.push(number);
    }
  }
  const together = (first: number) => bands_Hz.map((_, i) => Math.hypot(...parts.map((p) => p[first + i]!)));
  return {
    bands_Hz,
    numbers: done,
    standardR_dB: together(0),
    standardLn_dB: together(bands_Hz.length),
    atTheEdge,
  };
}

/** R, then Ln: one prediction answers for both. */
function bothSpectra(construction: Construction): readonly number[] {
  const { R_dB, Ln_dB } = predict(construction);
  return [...R_dB, ...Ln_dB];
}
