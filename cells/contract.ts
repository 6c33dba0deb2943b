/**
 * What the page and its cells say to each other. Data comes in by property and is replaced, never changed; intent goes
 * out as one kind of event that carries a pure edit. Cells never compute predictions and never touch storage.
 *
 * A cell of kind `x` is the element `<x-cell>`, defined by `cells/x/x-cell.ts`, which the page loads when the first cell
 * of its kind appears (`cell-registry.ts`). The page frames it: title (h2), fold, move, duplicate, delete. The cell draws
 * what is inside and starts its own headings at h3.
 */
import type { FloorPart } from '#src/acoustics/floor-part.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import type { Cell, Notebook } from '#src/notebook/types.ts';

/** The last good prediction stays available while a newer one is on its way or has failed. */
export type Result =
  | { readonly state: 'ready'; readonly prediction: Prediction }
  | { readonly state: 'computing'; readonly prediction?: Prediction }
  | { readonly state: 'failed'; readonly message: string; readonly prediction?: Prediction };

/** Of one floor. */
export interface ResultChoice {
  /** Absent: 50 Hz. Below that there are bands only where a cell of curves asks for them. */
  readonly lowestBand_Hz?: 20 | 50 | undefined;
  /** Absent: the whole floor. */
  readonly part?: FloorPart;
}

/** A snapshot: a new object whenever any result in it changed. */
export interface ResultsView {
  of(scenarioId: string, stackId: string, choice?: ResultChoice): Result;
}

/** The properties every cell element takes. */
export interface CellProperties<C extends Cell = Cell> {
  notebook: Notebook;
  cell: C;
  results: ResultsView;
  /** Goes to a field of the stack that the cell shows, opening what hides it. */
  reveal?(path: FieldPath): void | Promise<void>;
}

export type Edit = (notebook: Notebook) => Notebook;

/**
 * A wish to change the notebook. `label` is shown with undo ("Undo: slab thickness"). Edits with the same `merge` key
 * that follow each other (one drag of one slider) become a single step of undo.
 */
export class NotebookEdit extends Event {
  static readonly type = 'notebook-edit';
  readonly label: string;
  readonly edit: Edit;
  readonly merge: string | undefined;

  constructor(label: string, edit: Edit, merge?: string) {
    super(NotebookEdit.type, { bubbles: true, composed: true });
    this.label = label;
    this.edit = edit;
    this.merge = merge;
  }
}

/**
 * The wish to see where a field of a stack stands. The page scrolls to the first cell that shows the stack and, if the
 * cell's element has a method `reveal(path)`, calls it.
 */
export class FieldReveal extends Event {
  static readonly type = 'field-reveal';
  readonly stack: string;
  readonly path: FieldPath;

  constructor(stack: string, path: FieldPath) {
    super(FieldReveal.type, { bubbles: true, composed: true });
    this.stack = stack;
    this.path = path;
  }
}

declare global {
  interface HTMLElementEventMap {
    'field-reveal': FieldReveal;
    'notebook-edit': NotebookEdit;
  }
}
