import { isHeldAtEdges } from '#src/acoustics/held-at-edges.ts';
import type { CavityLayer } from '#src/notebook/types.ts';
import { fieldValue, type Values } from '#src/notebook/values.ts';

/** Said where a ceiling is to be screwed to joists that are not there: the engine holds it like a pane of glass. */
export const HELD_AT_EDGES =
  'Without joists there is nothing to screw it to: it counts as held at its edges alone, like a pane of glass. Under a slab choose hangers; a stiff rod is one with a stiffness of its own.';

export function isLayerHeldAtEdges({ joists, support }: CavityLayer, values: Values): boolean {
  return isHeldAtEdges({ joists: fieldValue(joists, values), support: fieldValue(support, values) });
}
