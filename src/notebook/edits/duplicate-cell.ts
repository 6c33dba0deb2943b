import { findCell } from '../find.ts';
import { insertedAt } from '../lists.ts';
import type { Notebook } from '../types.ts';

/** Puts a copy of a cell right after it. */
export function duplicateCell(notebook: Notebook, cellId: string, newId: string): Notebook {
  const cell = findCell(notebook, cellId);
  const at = notebook.cells.indexOf(cell) + 1;
  return { ...notebook, cells: insertedAt(notebook.cells, at, { ...cell, id: newId }) };
}
