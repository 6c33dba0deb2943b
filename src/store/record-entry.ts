/** What lists say about a stored record, damaged ones included. */
import type { ShelfEntry } from './shelf.ts';

export interface RemovedEntry {
  readonly id: string;
  readonly title: string;
  readonly removedAt_ms: number;
}

export function entryOf(id: string, record: unknown): ShelfEntry {
  const { addedAt_ms, savedAt_ms: saved, exportedAt_ms } = fieldsOf(record);
  const savedAt_ms = typeof saved === 'number' ? saved : 0;
  return {
    id,
    title: titleOf(record),
    addedAt_ms: typeof addedAt_ms === 'number' ? addedAt_ms : savedAt_ms,
    savedAt_ms,
    exportedAt_ms: typeof exportedAt_ms === 'number' ? exportedAt_ms : null,
  };
}

export function removedEntryOf(id: string, record: unknown): RemovedEntry {
  const { removedAt_ms } = fieldsOf(record);
  return { id, title: titleOf(record), removedAt_ms: typeof removedAt_ms === 'number' ? removedAt_ms : 0 };
}

/** The fields of an object; none of anything else. */
export function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}

function titleOf(record: unknown): string {
  const { title } = fieldsOf(fieldsOf(record).notebook);
  return typeof title === 'string' ? title : '';
}
