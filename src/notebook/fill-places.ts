/** The fibres in a cavity by their places: 0 is the first, on the leaf below, and every further one lies on the one before. */
import type { FieldPath } from './field-path.ts';
import type { CavityLayer, FillField } from './types.ts';

/** There is always a first one, of `none` where there is no fibre. */
export type Fills = readonly [FillField, ...FillField[]];

export function fillsOf({ fill, fillThickness_m, fillsAbove = [] }: CavityLayer): Fills {
  return [{ fill, fillThickness_m }, ...fillsAbove];
}

/** Where a field of a fill stands; `layer` is the cavity's index. */
export function fillPath(layer: number, place: number, field: keyof FillField): FieldPath {
  return place === 0 ? ['layers', layer, field] : ['layers', layer, 'fillsAbove', place - 1, field];
}
