import type { Applied } from '#src/notebook/apply-edit.ts';
import type { Notebook } from '#src/notebook/types.ts';

export type ApplyEdit = (notebook: Notebook, edit: (notebook: Notebook) => Notebook) => Applied;

/**
 * Applies edits so that nothing comes about that could not be stored and read again.
 *
 * What checks a whole notebook is loaded by `load` (it is not needed for the first curve). Until it is there, and where
 * it cannot be fetched, only edits that throw are refused.
 */
export function editCheck(load: () => Promise<ApplyEdit>): ApplyEdit {
  let checked: ApplyEdit = unchecked;
  load().then(
    (apply) => {
      checked = apply;
    },
    () => {},
  );
  return (notebook, edit) => checked(notebook, edit);
}

const unchecked: ApplyEdit = (notebook, edit) => {
  try {
    return { ok: true, notebook: edit(notebook) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error), problems: [] };
  }
};
