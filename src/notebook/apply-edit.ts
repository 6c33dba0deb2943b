import { notebookProblems } from './read-file.ts';
import { type Applied, tryEdit } from './try-edit.ts';
import type { Notebook } from './types.ts';

/**
 * Applies an edit and makes sure that its result could be stored and read again: an edit that does not apply, or that
 * leads beyond a limit, is refused in words, and the notebook stays as it was. Takes a fraction of a millisecond for a
 * notebook of usual size.
 */
export function applyEdit(notebook: Notebook, edit: (notebook: Notebook) => Notebook): Applied {
  const tried = tryEdit(notebook, edit);
  if (!tried.ok || tried.notebook === notebook) return tried;
  const problems = notebookProblems(tried.notebook);
  const [first] = problems;
  return first ? { ok: false, message: first.message, problems } : tried;
}
