/** Measured bands over the curves of a cell: add, change, remove. */
import { findCell } from '../find.ts';
import type { CurvesCell, MeasuredBands, Notebook } from '../types.ts';
import { updateCell } from './update-cell.ts';

/** @throws RangeError if the cell has measured bands with one of the ids already. */
export function addMeasured(notebook: Notebook, cellId: string, added: readonly MeasuredBands[]): Notebook {
  return withMeasured(notebook, cellId, (measured) => {
    const taken = added.find(({ id }) => measured.some((m) => m.id === id));
    if (taken) throw new RangeError(`id of measured bands must be new, got "${taken.id}"`);
    return [...measured, ...added];
  });
}

/** What measured bands are called, and where they come from. */
export function describeMeasured(
  notebook: Notebook,
  cellId: string,
  id: string,
  words: Partial<Pick<MeasuredBands, 'name' | 'source'>>,
): Notebook {
  return withMeasured(notebook, cellId, (measured) => {
    requireMeasured(measured, id);
    return measured.map((m) => (m.id === id ? { ...m, ...words } : m));
  });
}

export function removeMeasured(notebook: Notebook, cellId: string, id: string): Notebook {
  return withMeasured(notebook, cellId, (measured) => {
    requireMeasured(measured, id);
    return measured.filter((m) => m.id !== id);
  });
}

function withMeasured(
  notebook: Notebook,
  cellId: string,
  change: (measured: readonly MeasuredBands[]) => readonly MeasuredBands[],
): Notebook {
  const cell = findCell(notebook, cellId);
  const measured = change(cell.kind === 'curves' ? (cell.measured ?? []) : []);
  if (measured.length > 0) return updateCell(notebook, cellId, 'curves', { measured });
  const { measured: _none, ...rest } = cell as CurvesCell;
  return { ...notebook, cells: notebook.cells.map((c) => (c === cell ? rest : c)) };
}

function requireMeasured(measured: readonly MeasuredBands[], id: string): void {
  if (!measured.some((m) => m.id === id)) throw new RangeError(`measured bands must be the cell's, got "${id}"`);
}
