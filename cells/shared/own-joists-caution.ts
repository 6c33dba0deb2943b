import type { Notebook } from '#src/notebook/types.ts';
import { supportsOf } from './supports-of.ts';

/** What masses leave out where a shown scenario has a ceiling on joists of its own; undefined where none has. */
export function ownJoistsCaution(notebook: Notebook, stackId: string): string | undefined {
  return notebook.shown.some((id) => supportsOf(notebook, id, stackId).has('separate-joists'))
    ? 'A ceiling on joists of its own weighs on the walls, not on the floor above it, and its joists are not counted in these masses: whether walls and joists carry it, a structural engineer decides.'
    : undefined;
}
