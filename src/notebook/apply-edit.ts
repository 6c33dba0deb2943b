import type { Problem } from './problem.ts';
import { notebookProblems } from './read-file.ts';
import type { Notebook } from './types.ts';

export type Applied =
  | { readonly ok: true; readonly notebook: Notebook }
  | { readonly ok: false; readonly message: string; readonly problems: readonly Problem[] };

/**
 * Applies an edit and makes sure that its result could be stored and read again: an edit that does not apply, or that
 * leads beyond a limit, is refused in words, and the notebook stays as it was. Takes a fraction of a millisecond for a
 * notebook of usual size.
 */
export function applyEdit(notebook: Notebook, edit: (notebook: Notebook) => Notebook): Applied {
  let edited: Notebook;
  try {
    edited = edit(notebook);
  } catch (error) {
    if (error instanceof RangeError || error instanceof TypeError)
      return { ok: false, message: error.message, problems: [] };
    throw error;
  }
  if (edited === notebook) return { ok: true, notebook };
  const problems = notebookProblems(edited);
  const [first] = problems;
  return first ? { ok: false, message: first.message, problems } : { ok: true, notebook: edited };
}
