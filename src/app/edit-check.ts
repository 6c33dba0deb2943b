import { type Applied, tryEdit } from '#src/notebook/try-edit.ts';
import type { Notebook } from '#src/notebook/types.ts';

export type ApplyEdit = (notebook: Notebook, edit: (notebook: Notebook) => Notebook) => Applied;

/**
 * Applies edits so that nothing comes about that could not be stored and read again.
 *
 * What checks a whole notebook is loaded by `load` (it is not needed for the first curve). Until it is there, and where
 * it cannot be fetched, only edits that do not apply are refused.
 */
export function editCheck(load: () => Promise<ApplyEdit>): ApplyEdit {
  let checked: ApplyEdit = tryEdit;
  load().then(
    (apply) => {
      checked = apply;
    },
    () => {},
  );
  return (notebook, edit) => checked(notebook, edit);
}
