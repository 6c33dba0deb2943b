/** Sheets of a leaf, from the upper room down: add, remove, move. A leaf keeps at least one. */
import { findLayerOf, findStack } from '../find.ts';
import { insertedAt, movedTo, removedAt } from '../lists.ts';
import type { LeafLayer, Notebook, SheetField } from '../types.ts';
import { replaceLayer } from './replace-layer.ts';

/** `index` is the sheet's place afterwards. */
export function addSheet(
  notebook: Notebook,
  stackId: string,
  leafId: string,
  index: number,
  sheet: SheetField,
): Notebook {
  return withSheets(notebook, stackId, leafId, (sheets) => insertedAt(sheets, index, sheet));
}

/** @throws RangeError for the only sheet: remove the leaf instead. */
export function removeSheet(notebook: Notebook, stackId: string, leafId: string, index: number): Notebook {
  return withSheets(notebook, stackId, leafId, (sheets) => {
    if (sheets.length === 1) throw new RangeError(`leaf "${leafId}" must keep a sheet; remove the leaf instead`);
    return removedAt(sheets, index);
  });
}

/** `to` is the sheet's index afterwards. */
export function moveSheet(notebook: Notebook, stackId: string, leafId: string, from: number, to: number): Notebook {
  return withSheets(notebook, stackId, leafId, (sheets) => movedTo(sheets, from, to));
}

function withSheets(
  notebook: Notebook,
  stackId: string,
  leafId: string,
  change: (sheets: LeafLayer['sheets']) => LeafLayer['sheets'],
): Notebook {
  const leaf = findLayerOf(findStack(notebook, stackId), leafId, 'leaf');
  return replaceLayer(notebook, stackId, leafId, { ...leaf, sheets: change(leaf.sheets) });
}
