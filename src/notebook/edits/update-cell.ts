import { findCell } from '../find.ts';
import { replacedWhere } from '../lists.ts';
import type { Cell, CellKind, Notebook } from '../types.ts';

export type CellOf<K extends CellKind> = Extract<Cell, { readonly kind: K }>;
export type CellPatch<K extends CellKind> = Partial<Omit<CellOf<K>, 'id' | 'kind'>>;

/** Replaces parts of a cell. @throws RangeError if there is no cell of that id and kind. */
export function updateCell<K extends CellKind>(
  notebook: Notebook,
  cellId: string,
  kind: K,
  patch: CellPatch<K>,
): Notebook {
  const cell = findCell(notebook, cellId);
  if (cell.kind !== kind) throw new RangeError(`cell must be of kind "${kind}", got "${cell.kind}" (cell "${cellId}")`);
  const cells = replacedWhere(
    notebook.cells,
    (c) => c === cell,
    (c) => ({ ...c, ...patch }) as Cell,
  );
  return { ...notebook, cells };
}
