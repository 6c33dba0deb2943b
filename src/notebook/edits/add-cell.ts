import { insertedAt } from '../lists.ts';
import type { Cell, Notebook } from '../types.ts';

/** Puts a cell in; `index` is its place afterwards, the end unless given. The id must be new. */
export function addCell(notebook: Notebook, cell: Cell, index = notebook.cells.length): Notebook {
  return { ...notebook, cells: insertedAt(notebook.cells, index, cell) };
}
