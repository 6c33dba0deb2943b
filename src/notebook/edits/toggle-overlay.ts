import { findCell } from '../find.ts';
import type { CurveOverlay, Notebook } from '../types.ts';
import { updateCell } from './update-cell.ts';

/** Lays something over the curves of a cell, or takes it away. @throws RangeError if there is no such cell of curves. */
export function toggleOverlay(notebook: Notebook, cellId: string, overlay: CurveOverlay): Notebook {
  const cell = findCell(notebook, cellId);
  const before = cell.kind === 'curves' ? cell.overlays : [];
  const overlays = before.includes(overlay) ? before.filter((o) => o !== overlay) : [...before, overlay];
  return updateCell(notebook, cellId, 'curves', { overlays });
}
