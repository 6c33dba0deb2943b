import type { Construction } from './construction.ts';
import { type NumberPath, numberAt, withNumber } from './number-path.ts';
import { predict } from './predict.ts';
import type { PredictOptions } from './prediction.ts';
import { withSameQuadrature } from './same-quadrature.ts';

export interface Tolerance {
  readonly name: string;
  readonly path: NumberPath;
  /** Standard uncertainty of the number, in its own unit, ≥ 0. A tolerance ± a that is never exceeded has a/√3. */
  readonly standardUncertainty: number;
}

export interface PropagatedUncertainty {
  /** All parameters together, taken as independent, dB per band. */
  readonly standard_dB: readonly number[];
  readonly contributions: readonly { readonly name: string; readonly standard_dB: readonly number[] }[];
}

/**
 * What uncertain numbers of a construction do to a spectrum, to first order: √Σ(∂y/∂x · u)², each derivative from the two
 * predictions one standard uncertainty to either side (ISO/IEC Guide 98-3:2008, 5.1.2 and 5.1.3, note 2). Where
 * the lower side would fall below zero, it ends at zero.
 *
 * @param spectrum What is asked of the construction, dB per band; absent: the transmission loss.
 * @throws RangeError for an uncertainty below 0 and for a path that names no number.
 */
export function propagatedUncertainty(
  construction: Construction,
  tolerances: readonly Tolerance[],
  spectrum: (construction: Construction) => readonly number[] = transmissionLossBy(withSameQuadrature(construction)),
): PropagatedUncertainty {
  const contributions = tolerances.map(({ name, path, standardUncertainty: u }) => {
    if (!(u >= 0)) throw new RangeError(`standardUncertainty must be >= 0, got ${u} (${name})`);
    const value = numberAt(construction, path);
    const low = value >= 0 ? Math.max(value - u, 0) : value - u;
    const high = value + u;
    if (high === low) return { name, standard_dB: spectrum(construction).map(() => 0) };
    const below = spectrum(withNumber(construction, path, low));
    const above = spectrum(withNumber(construction, path, high));
    return { name, standard_dB: above.map((y, i) => (Math.abs(y - below[i]!) / (high - low)) * u) };
  });
  const bands = contributions[0]?.standard_dB ?? spectrum(construction);
  const standard_dB = bands.map((_, i) => Math.hypot(...contributions.map((c) => c.standard_dB[i]!)));
  return { standard_dB, contributions };
}

function transmissionLossBy(options: PredictOptions): (construction: Construction) => readonly number[] {
  return (construction) => predict(construction, options).R_dB;
}
