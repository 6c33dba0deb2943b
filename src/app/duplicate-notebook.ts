import { freshId } from '#src/notebook/fresh-id.ts';
import type { Notebook } from '#src/notebook/types.ts';

/** The same content as a notebook of its own. */
export function duplicateNotebook(notebook: Notebook, title: string, random: () => number): Notebook {
  return { ...notebook, id: freshId(random, [notebook.id]), title };
}
