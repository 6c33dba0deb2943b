/** Fibres in a cavity by their places: add on top of all, remove, move. */
import { FILLS_ABOVE_FIELDS } from '../field-specs.ts';
import { type Fills, fillsOf } from '../fill-places.ts';
import { findLayerOf, findStack } from '../find.ts';
import { movedTo, removedAt } from '../lists.ts';
import type { CavityLayer, FillField, Notebook } from '../types.ts';
import { replaceLayer } from './replace-layer.ts';

/** @throws RangeError where the cavity has as many as it may have. */
export function addFill(notebook: Notebook, stackId: string, cavityId: string, fill: FillField): Notebook {
  return changeFills(notebook, stackId, cavityId, (fills) => {
    const most = FILLS_ABOVE_FIELDS.length;
    if (fills.length > most) throw new RangeError(`fillsAbove must be at most ${most} long, got ${fills.length}`);
    return [...fills, fill];
  });
}

/** What lay on it comes down. @throws RangeError for the only one: set it to `none` instead. */
export function removeFill(notebook: Notebook, stackId: string, cavityId: string, place: number): Notebook {
  return changeFills(notebook, stackId, cavityId, (fills) => {
    if (fills.length === 1) throw new RangeError(`cavity "${cavityId}" must keep a fill; set it to "none" instead`);
    return removedAt(fills, place);
  });
}

/** `to` is the fill's place afterwards. */
export function moveFill(notebook: Notebook, stackId: string, cavityId: string, from: number, to: number): Notebook {
  return changeFills(notebook, stackId, cavityId, (fills) => movedTo(fills, from, to));
}

function changeFills(
  notebook: Notebook,
  stackId: string,
  cavityId: string,
  change: (fills: Fills) => readonly FillField[],
): Notebook {
  const cavity = findLayerOf(findStack(notebook, stackId), cavityId, 'cavity');
  return replaceLayer(notebook, stackId, cavityId, withFills(cavity, change(fillsOf(cavity)) as Fills));
}

function withFills({ fillsAbove: _, ...rest }: CavityLayer, [first, ...above]: Fills): CavityLayer {
  return { ...rest, ...first, ...(above.length > 0 && { fillsAbove: above }) };
}
