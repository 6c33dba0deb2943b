/** Fibres that lie on the first fill of a cavity, from the lower one up: add on top of all, remove. */
import { FILLS_ABOVE_FIELDS } from '../field-specs.ts';
import { findLayer, findStack } from '../find.ts';
import { removedAt } from '../lists.ts';
import type { CavityLayer, FillField, Notebook } from '../types.ts';
import { replaceLayer } from './replace-layer.ts';

/** @throws RangeError where the cavity has as many as it may have. */
export function addFill(notebook: Notebook, stackId: string, cavityId: string, fill: FillField): Notebook {
  return withFillsAbove(notebook, stackId, cavityId, (above) => {
    const most = FILLS_ABOVE_FIELDS.length;
    if (above.length >= most) throw new RangeError(`fillsAbove must be at most ${most} long, got ${above.length + 1}`);
    return [...above, fill];
  });
}

/** `index` counts what lies on the first fill, which stays. */
export function removeFill(notebook: Notebook, stackId: string, cavityId: string, index: number): Notebook {
  return withFillsAbove(notebook, stackId, cavityId, (above) => removedAt(above, index));
}

function withFillsAbove(
  notebook: Notebook,
  stackId: string,
  cavityId: string,
  change: (above: readonly FillField[]) => readonly FillField[],
): Notebook {
  const layer = findLayer(findStack(notebook, stackId), cavityId);
  if (layer.kind !== 'cavity')
    throw new RangeError(`layer must be a cavity, got a ${layer.kind} (layer "${cavityId}")`);
  const { fillsAbove = [], ...rest } = layer;
  const above = change(fillsAbove);
  const next: CavityLayer = above.length > 0 ? { ...rest, fillsAbove: above } : rest;
  return replaceLayer(notebook, stackId, cavityId, next);
}
