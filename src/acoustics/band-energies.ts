import { BandSums } from './band-sums.ts';
import { raiseToFloatingLimit } from './floating-limit.ts';
import type { FloorModel } from './floor-model.ts';
import type { Quadrature } from './quadrature.ts';

/** Transmission coefficient per band of what goes through the floor itself, each path as if it were alone. */
export interface AirborneBands {
  readonly direct: Float64Array;
  readonly supports: Float64Array;
}

/** Sound power of the tapping machine below, per band, W. */
export interface ImpactBands {
  readonly direct: Float64Array;
  readonly supports: Float64Array;
}

/** Energies of each band, airborne and impact. */
export function bandEnergies(
  model: FloorModel,
  bands_Hz: readonly number[],
  quadrature: Quadrature,
): { readonly airborne: AirborneBands; readonly impact: ImpactBands } {
  const sums = new BandSums(model, quadrature).bands(bands_Hz);
  const airborne = {
    direct: Float64Array.from(sums, (s) => s.direct),
    supports: Float64Array.from(sums, (s) => s.supports),
  };
  const impact = {
    direct: Float64Array.from(sums, (s) => s.struckDirect),
    supports: Float64Array.from(sums, (s) => s.struckSupports),
  };
  raiseToFloatingLimit(model, bands_Hz, quadrature, impact);
  return { airborne, impact };
}
