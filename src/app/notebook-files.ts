/** Notebooks as files: what is opened was checked, what is saved can be opened again. */
import { download } from '#cells/shared/download.ts';
import { sizeProblem } from '#src/notebook/parsed-json.ts';
import { type Reading, readNotebook } from '#src/notebook/read-file.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { FILE_ENDING, notebookFileName, writeNotebook } from '#src/notebook/write-file.ts';

/** Looks at the size first: a file of any length may have been dropped. */
export async function readNotebookFile(file: File): Promise<Reading> {
  const tooBig = sizeProblem(file.size);
  return tooBig ? { ok: false, problems: [tooBig] } : readNotebook(await file.text());
}

/** "percussion-above-the-reading-room-2026-11-25.slabspring.json" */
export function datedFileName(notebook: Notebook, now: Date): string {
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
  return `${notebookFileName(notebook).slice(0, -FILE_ENDING.length)}-${day}${FILE_ENDING}`;
}

export function saveNotebookFile(notebook: Notebook, now: Date): void {
  download(new Blob([writeNotebook(notebook)], { type: 'application/json' }), datedFileName(notebook, now));
}
