import { readNotebookValue } from './read-file.ts';
import { slug } from './slug.ts';
import type { Notebook } from './types.ts';

export const FILE_ENDING = '.slabspring.json';

/** The text of a notebook's file: `format` and `version` first, keys in the order of the schema, two spaces deep. */
export function writeNotebook(notebook: Notebook): string {
  const reading = readNotebookValue(notebook);
  // A notebook that could not be read again is written as it stands: nothing of it may get lost.
  return `${JSON.stringify(reading.ok ? reading.notebook : notebook, null, 2)}\n`;
}

/** "Practice room above library" → `practice-room-above-library.slabspring.json` */
export function notebookFileName({ title }: Pick<Notebook, 'title'>): string {
  const stem = slug(title, /[^\p{Letter}\p{Number}]+/gu, 80);
  return `${stem || 'notebook'}${FILE_ENDING}`;
}
