import { findCell } from '../find.ts';
import type { Notebook } from '../types.ts';
import { updateCell } from './update-cell.ts';

export function foldCell(notebook: Notebook, cellId: string, folded: boolean): Notebook {
  return updateCell(notebook, cellId, findCell(notebook, cellId).kind, { folded });
}
