import { fieldsUsing } from '#src/notebook/field-use.ts';
import type { Notebook, Stack } from '#src/notebook/types.ts';

/**
 * The floor whose sound answers to parameters: the first that uses one of them and that is predicted because a cell
 * shows it.
 *
 * @param keys Of parameters, the one that is asked about first.
 */
export function answeringStack(notebook: Notebook, keys: readonly string[]): Stack | undefined {
  const predicted = new Set(notebook.cells.flatMap((cell) => ('stack' in cell ? [cell.stack] : [])));
  for (const key of keys) {
    const use = fieldsUsing(notebook, key).find(({ stack }) => predicted.has(stack.id));
    if (use) return use.stack;
  }
  return undefined;
}
