import { findStack } from '../find.ts';
import { replacedWhere } from '../lists.ts';
import type { Notebook, Stack } from '../types.ts';

/** Replaces the stack of the same id. */
export function withStack(notebook: Notebook, stack: Stack): Notebook {
  findStack(notebook, stack.id);
  const stacks = replacedWhere(
    notebook.stacks,
    (s) => s.id === stack.id,
    () => stack,
  );
  return { ...notebook, stacks };
}
