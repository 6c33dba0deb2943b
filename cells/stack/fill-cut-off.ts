import { cavityDepth_m } from '#src/acoustics/normalise-construction.ts';
import { fillsOf } from '#src/notebook/fill-places.ts';
import { NONE } from '#src/notebook/material-lookup.ts';
import { emptyCavity, fittingFills_m } from '#src/notebook/resolve.ts';
import type { CavityLayer, Notebook } from '#src/notebook/types.ts';
import { fieldValue, type Values } from '#src/notebook/values.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

/** What a difference of decimals may be off. */
const NEGLIGIBLE_m = 1e-9;

/**
 * What is said where a fill does not fit under the leaf above; undefined where it does, or there is none.
 *
 * @param place Of the fill, 0 for the first.
 */
export function fillCutOff(
  { units }: Pick<Notebook, 'units'>,
  cavity: CavityLayer,
  place: number,
  values: Values,
): string | undefined {
  const { fill, fillThickness_m } = fillsOf(cavity)[place]!;
  const depth_m = cavityDepth_m(emptyCavity(cavity, values));
  const fits_m = fittingFills_m(cavity, depth_m, values)[place]!;
  if (fieldValue(fill, values) === NONE || fieldValue(fillThickness_m, values) < fits_m + NEGLIGIBLE_m)
    return undefined;
  if (fits_m === 0) return 'The fills below it leave no room for it.';
  return `Only ${formatQuantity(fits_m, 'length', units)} of it fits in.`;
}
