import { findCell } from '../find.ts';
import { movedTo } from '../lists.ts';
import type { Notebook } from '../types.ts';

/** `to` is the cell's index afterwards. */
export function moveCell(notebook: Notebook, cellId: string, to: number): Notebook {
  const from = notebook.cells.indexOf(findCell(notebook, cellId));
  return { ...notebook, cells: movedTo(notebook.cells, from, to) };
}
