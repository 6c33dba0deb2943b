/** What lists say about a stored record, damaged ones included. */
import type { ShelfEntry } from './shelf.ts';

export interface RemovedEntry {
  readonly id: string;
  readonly title: string;
  readonly removedAt_ms: number;
}

export function entryOf(id: string, record: unknown): ShelfEntry {
  const { savedAt_ms, exportedAt_ms } = fieldsOf(record);
  return {
    id,
    title: titleOf(record),
    savedAt_ms: typeof savedAt_ms === 'number' ? savedAt_ms : 0,
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
