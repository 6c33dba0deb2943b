import type { Construction } from './construction.ts';
import { type Improvement, improvementOf } from './improvement.ts';
import { predict } from './predict.ts';
import type { PredictOptions } from './prediction.ts';
import { laidOnStandardSlab, STANDARD_SLAB } from './standard-slab.ts';

/**
 * What the covering of a floor and its leaves on mats take off impact sound on the heavy standard floor, predicted: two
 * predictions of that slab, bare and with them on it. Deck, ceiling, walls and sides of the floor do not enter.
 *
 * Source of the comparison: ISO 10140-1:2021, Annex H, ISO 717-2:2020, clause 5, ASTM E2179 (all from memory, unverified).
 * Valid as the model is: screeds and dry floors on mats within 4 dB of the ΔL_w of ISO 12354-2:2017, Annex C. Bridges between a
 * floating leaf and walls or slab are not in it.
 * @returns Undefined where neither a covering nor a leaf on a mat lies on the floor.
 * @throws TypeError, RangeError for constructions that cannot be computed.
 */
export function laidImprovement(construction: Construction, options: PredictOptions = {}): Improvement | undefined {
  const laid = laidOnStandardSlab(construction);
  return laid && improvementOf(predict(STANDARD_SLAB, options), predict(laid, options));
}
