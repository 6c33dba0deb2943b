import { findCell } from '../find.ts';
import type { Notebook } from '../types.ts';

export function removeCell(notebook: Notebook, cellId: string): Notebook {
  const cell = findCell(notebook, cellId);
  return { ...notebook, cells: notebook.cells.filter((c) => c !== cell) };
}
