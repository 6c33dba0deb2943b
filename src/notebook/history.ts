/**
 * Undo and redo. A history is plain data: it can be stored beside its notebook and taken up after a reload. Notebooks in
 * it share what did not change.
 */
import type { Notebook } from './types.ts';

export interface History {
  readonly present: Notebook;
  /** What undo goes back to, oldest first. */
  readonly past: readonly Step[];
  /** What redo goes forward to, nearest first. */
  readonly future: readonly Step[];
  /** Key of the step that an edit with the same key continues; null once anything else happened. */
  readonly merge: string | null;
}

/** One step: the notebook on the other side of it, and what the step did. */
export interface Step {
  readonly label: string;
  readonly notebook: Notebook;
}

export const MOST_STEPS = 100;

export function startHistory(notebook: Notebook): History {
  return { present: notebook, past: [], future: [], merge: null };
}

/**
 * Takes the notebook an edit made as the present one. Edits with the same merge key that follow each other form one
 * step. What was undone before can no longer be redone.
 */
export function record(history: History, next: Notebook, label: string, merge?: string): History {
  const { present, past } = history;
  if (next === present) return history;
  const continues = merge !== undefined && merge === history.merge && past.length > 0;
  const steps = continues ? past : [...past, { label, notebook: present }];
  return { present: next, past: steps.slice(-MOST_STEPS), future: [], merge: merge ?? null };
}

/** Ends a run of merged edits: the next one starts a step of its own, whatever its key. */
export function sealed(history: History): History {
  return history.merge === null ? history : { ...history, merge: null };
}

export function undo(history: History): History {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    present: step.notebook,
    past: history.past.slice(0, -1),
    future: [{ label: step.label, notebook: history.present }, ...history.future],
    merge: null,
  };
}

export function redo(history: History): History {
  const [step, ...future] = history.future;
  if (!step) return history;
  return {
    present: step.notebook,
    past: [...history.past, { label: step.label, notebook: history.present }],
    future,
    merge: null,
  };
}

/** What undo would take back, e.g. "slab thickness"; undefined if there is nothing. */
export function undoLabel({ past }: History): string | undefined {
  return past.at(-1)?.label;
}

/** What redo would do again; undefined if there is nothing. */
export function redoLabel({ future }: History): string | undefined {
  return future[0]?.label;
}

/** The history with only its nearest steps, small enough to be stored at every save. */
export function nearestSteps(history: History, count: number): History {
  return { ...history, past: history.past.slice(-count), future: history.future.slice(0, count) };
}
