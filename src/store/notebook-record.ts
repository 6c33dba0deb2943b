/** One notebook as it is stored, and the way back, with the same care as for a stranger's file. */
import type { History, Step } from '#src/notebook/history.ts';
import { nearestSteps } from '#src/notebook/history.ts';
import { readNotebookValue } from '#src/notebook/read-file.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { entryOf, fieldsOf } from './record-entry.ts';
import { refused, type StoreResult, succeeded } from './store-result.ts';

export interface NotebookRecord {
  readonly format: 'slab-and-spring-record';
  readonly version: 1;
  readonly savedAt_ms: number;
  readonly exportedAt_ms: number | null;
  /** When it was put in the bin; absent outside it. */
  readonly removedAt_ms?: number;
  readonly notebook: Notebook;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

export interface StoredNotebook {
  /** The notebook with its steps of undo and redo. */
  readonly history: History;
  readonly savedAt_ms: number;
  readonly exportedAt_ms: number | null;
}

/** Steps kept on either side: enough for a change of mind after a reload, few enough to be written at every save. */
const STORED_STEPS = 20;

export function recordOf(history: History, savedAt_ms: number, exportedAt_ms: number | null): NotebookRecord {
  const { present, past, future } = nearestSteps(history, STORED_STEPS);
  return { format: 'slab-and-spring-record', version: 1, savedAt_ms, exportedAt_ms, notebook: present, past, future };
}

/** Steps that cannot be read any more are left out; a notebook that cannot be read is a problem that says why. */
export function readRecord(value: unknown): StoreResult<StoredNotebook> {
  const { format, version, notebook, past, future } = fieldsOf(value);
  if (format !== 'slab-and-spring-record' || version !== 1) return refused('damaged', DAMAGED);
  const reading = readNotebookValue(notebook);
  if (!reading.ok) return refused('damaged', DAMAGED, reading.problems);
  const { savedAt_ms, exportedAt_ms } = entryOf(reading.notebook.id, value);
  const steps = { past: readSteps(past), future: readSteps(future) };
  return succeeded({
    history: { present: reading.notebook, ...steps, merge: null },
    savedAt_ms,
    exportedAt_ms,
  });
}

const DAMAGED = 'The stored notebook is damaged. It is kept as it is and can be saved to a file.';

function readSteps(value: unknown): readonly Step[] {
  if (!Array.isArray(value)) return [];
  const steps = value.slice(0, STORED_STEPS).map(readStep);
  return steps.every((step) => step !== undefined) ? steps : [];
}

function readStep(value: unknown): Step | undefined {
  const { label, notebook } = fieldsOf(value);
  const reading = readNotebookValue(notebook);
  return typeof label === 'string' && reading.ok ? { label, notebook: reading.notebook } : undefined;
}
