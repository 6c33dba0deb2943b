import type { Problem } from './problem.ts';
import type { Notebook } from './types.ts';

export type Applied =
  | { readonly ok: true; readonly notebook: Notebook }
  | { readonly ok: false; readonly message: string; readonly problems: readonly Problem[] };

/** Applies an edit; one that does not apply is refused in its own words, and the notebook stays as it was. */
export function tryEdit(notebook: Notebook, edit: (notebook: Notebook) => Notebook): Applied {
  try {
    return { ok: true, notebook: edit(notebook) };
  } catch (error) {
    if (error instanceof RangeError || error instanceof TypeError)
      return { ok: false, message: error.message, problems: [] };
    throw error;
  }
}
