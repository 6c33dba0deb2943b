/** One notebook as it is stored. */
import { type History, nearestSteps, type Step } from '#src/notebook/history.ts';
import type { Notebook } from '#src/notebook/types.ts';

export interface NotebookRecord {
  readonly format: 'slab-and-spring-record';
  readonly version: 1;
  /** When it came into this browser; absent in records from before that was noted. */
  readonly addedAt_ms?: number;
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
export const STORED_STEPS = 20;

export type RecordTimes = Pick<NotebookRecord, 'addedAt_ms' | 'savedAt_ms' | 'exportedAt_ms'>;

export function recordOf(history: History, times: RecordTimes): NotebookRecord {
  const { present, past, future } = nearestSteps(history, STORED_STEPS);
  return { format: 'slab-and-spring-record', version: 1, ...times, notebook: present, past, future };
}
