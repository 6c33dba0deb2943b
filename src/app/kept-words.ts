import { dayWords } from './day-words.ts';
import type { SessionState } from './session.ts';

/** Where the work is kept, in one line: in this browser, in a file, or nowhere yet. */
export function keptWords({ access, savedAt_ms, exportedAt_ms }: SessionState, now: Date): string {
  const file = fileWords(savedAt_ms, exportedAt_ms, now);
  if (access === 'memory') return `Kept nowhere yet: this browser stores nothing · ${file}`;
  if (savedAt_ms === null) return file;
  return `Kept in this browser, ${dayWords(savedAt_ms, now)} · ${file}`;
}

/** Saving in the browser right after the export is part of it. */
const TOGETHER_MS = 2000;

function fileWords(savedAt_ms: number | null, exportedAt_ms: number | null, now: Date): string {
  if (exportedAt_ms === null) return 'not yet saved to a file';
  const changed = savedAt_ms !== null && savedAt_ms > exportedAt_ms + TOGETHER_MS ? ', changed since' : '';
  return `in a file as of ${dayWords(exportedAt_ms, now)}${changed}`;
}
