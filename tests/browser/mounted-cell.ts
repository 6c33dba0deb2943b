import type { CellElement } from '#cells/cell-registry.ts';
import { NotebookEdit, type Result, type ResultsView } from '#cells/contract.ts';
import { partOfFloor } from '#src/acoustics/floor-part.ts';
import { predict } from '#src/acoustics/predict.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Cell, Notebook } from '#src/notebook/types.ts';

/** Every prediction, computed here and now. */
export function readyResults(notebook: Notebook): ResultsView {
  return {
    of: (scenario, stack, { part = 'whole' } = {}): Result => ({
      state: 'ready',
      prediction: predict(partOfFloor(resolveStack(notebook, scenario, stack), part)),
    }),
  };
}

export interface Mounted<E extends CellElement> {
  readonly element: E;
  /** Labels of the edits the cell asked for. */
  readonly edits: string[];
  /** The notebook as it is after them. */
  notebook(): Notebook;
}

/** Puts a cell's element into the page; its edits take hold, with results to match. */
export async function mountCell<E extends CellElement & { readonly updateComplete: Promise<boolean> }>(
  element: E,
  start: Notebook,
  cellId: string,
  resultsOf: (notebook: Notebook) => ResultsView = readyResults,
): Promise<Mounted<E>> {
  let notebook = start;
  const edits: string[] = [];
  const show = () => {
    element.notebook = notebook;
    element.cell = notebook.cells.find((c) => c.id === cellId) as Cell;
    element.results = resultsOf(notebook);
  };
  element.addEventListener(NotebookEdit.type, (event) => {
    edits.push(event.label);
    notebook = event.edit(notebook);
    show();
  });
  show();
  document.body.append(element);
  await element.updateComplete;
  return { element, edits, notebook: () => notebook };
}
