import type { Construction } from './construction.ts';
import { type NumberPath, numberAt, withNumber } from './number-path.ts';
import { predict } from './predict.ts';
import type { PredictOptions } from './prediction.ts';
import { withSameQuadrature } from './same-quadrature.ts';

/** How R and Ln of every band answer to one number of the construction. */
export interface Sensitivity {
  readonly path: NumberPath;
  readonly value: number;
  /** dR and dLn in dB for the whole relative change of the number, that is d/d(ln x): × 0.01 for one per cent. */
  readonly dR_dB: readonly number[];
  readonly dLn_dB: readonly number[];
}

export interface Sensitivities {
  readonly bands_Hz: readonly number[];
  readonly parameters: readonly Sensitivity[];
}

/** Relative step of the central difference: large against quadrature error, small against the width of a band. */
const STEP = 0.02;

/**
 * dR/d(ln x) and dLn/d(ln x) per band, by central differences, of the numbers at `paths`, or of every positive number of
 * the layers.
 *
 * @throws RangeError for a path that names no positive number; TypeError and RangeError as `predict`. A step beyond what the
 * engine accepts is an error too: values at the very edge have no sensitivity.
 */
export function sensitivities(
  construction: Construction,
  paths: readonly NumberPath[] = everyNumber(construction),
  options: PredictOptions = {},
): Sensitivities {
  let bands_Hz: readonly number[] = [];
  const same = withSameQuadrature(construction, options);
  const parameters = paths.map((path): Sensitivity => {
    const value = positiveNumberAt(construction, path);
    const more = predict(withNumber(construction, path, value * (1 + STEP)), same);
    const less = predict(withNumber(construction, path, value * (1 - STEP)), same);
    const span = Math.log((1 + STEP) / (1 - STEP));
    bands_Hz = more.bands_Hz;
    const slope = (a: readonly number[], b: readonly number[]) => a.map((v, i) => (v - b[i]!) / span);
    return { path, value, dR_dB: slope(more.R_dB, less.R_dB), dLn_dB: slope(more.Ln_dB, less.Ln_dB) };
  });
  return { bands_Hz, parameters };
}

/** Paths of all positive numbers in the layers, from the upper room down. What has thickness 0 is absent, and has none. */
export function everyNumber({ layers }: Construction): string[] {
  return layers.flatMap((layer, i) => numbersOf(layer, `layers/${i}`));
}

function numbersOf(value: unknown, path: string): string[] {
  if (typeof value === 'number') return value > 0 ? [path] : [];
  if (typeof value !== 'object' || value === null || Reflect.get(value, 'thickness_m') === 0) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersOf(inner, `${path}/${key}`));
}

function positiveNumberAt(construction: Construction, path: NumberPath): number {
  const value = numberAt(construction, path);
  if (!(value > 0)) throw new RangeError(`path must name a positive number of the construction, got "${path}"`);
  return value;
}
