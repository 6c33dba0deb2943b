/** From a stored record back to a notebook, with the same care as for a stranger's file. */
import type { Step } from '#src/notebook/history.ts';
import { readNotebookValue } from '#src/notebook/read-file.ts';
import { STORED_STEPS, type StoredNotebook } from './notebook-record.ts';
import { entryOf, fieldsOf } from './record-entry.ts';
import { refused, type StoreResult, succeeded } from './store-result.ts';

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
