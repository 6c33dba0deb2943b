import type { Construction } from './construction.ts';
import { floorModel } from './floor-model.ts';
import { MODEL_CONSTANTS } from './model-constants.ts';
import type { PredictOptions } from './prediction.ts';
import { quadratureFor } from './quadrature.ts';

/**
 * The options with which a construction and its variations are predicted to be compared: all by the quadrature that suits the
 * construction itself. If a varied number chose another one, the difference of the two would pass for its effect.
 *
 * @throws TypeError and RangeError as `floorModel`.
 */
export function withSameQuadrature(construction: Construction, options: PredictOptions = {}): PredictOptions {
  if (options.quadrature) return options;
  return { ...options, quadrature: quadratureFor(floorModel(construction, options.constants ?? MODEL_CONSTANTS)) };
}
