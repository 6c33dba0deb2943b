/** Notebooks as files: what is opened was checked, what is saved can be opened again. */
import { download } from '#cells/shared/download.ts';
import { sizeProblem } from '#src/notebook/parsed-json.ts';
import type { Problem } from '#src/notebook/problem.ts';
import { type Reading, readNotebook } from '#src/notebook/read-file.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { FILE_ENDING, notebookFileName, writeNotebook } from '#src/notebook/write-file.ts';

/** Looks at the size first: a file of any length may have been dropped. */
export async function readNotebookFile(file: File): Promise<Reading> {
  const tooBig = sizeProblem(file.size);
  if (tooBig) return { ok: false, problems: [tooBig] };
  const reading = readNotebook(await file.text());
  return reading.ok || !MEASURED.test(file.name) ? reading : { ok: false, problems: reading.problems.map(elsewhere) };
}

/** Files as measured bands come in. */
const MEASURED = /\.(?:csv|tsv|txt)$/i;

/** A table of bands is no notebook, but there is a place for it. */
const elsewhere = (problem: Problem): Problem => ({
  ...problem,
  message: `${problem.message}; measured bands are opened under the curves, with “Measured bands …”`,
});

/** "percussion-above-the-reading-room-2026-11-25.slabspring.json" */
export function datedFileName(notebook: Notebook, now: Date): string {
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
  return `${notebookFileName(notebook).slice(0, -FILE_ENDING.length)}-${day}${FILE_ENDING}`;
}

export function saveNotebookFile(notebook: Notebook, now: Date): void {
  download(new Blob([writeNotebook(notebook)], { type: 'application/json' }), datedFileName(notebook, now));
}
