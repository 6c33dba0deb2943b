/** Whole stacks: add, rename, remove. A notebook keeps at least one. */
import { findStack } from '../find.ts';
import type { Notebook, Stack } from '../types.ts';
import { withStack } from './with-stack.ts';

/** The id must be new. */
export function addStack(notebook: Notebook, stack: Stack): Notebook {
  if (notebook.stacks.some((s) => s.id === stack.id)) throw new RangeError(`stack id must be new, got "${stack.id}"`);
  return { ...notebook, stacks: [...notebook.stacks, stack] };
}

export function renameStack(notebook: Notebook, stackId: string, name: string): Notebook {
  return withStack(notebook, { ...findStack(notebook, stackId), name });
}

/** Cells that show it go with it. @throws RangeError for the only stack. */
export function removeStack(notebook: Notebook, stackId: string): Notebook {
  const stack = findStack(notebook, stackId);
  if (notebook.stacks.length === 1) throw new RangeError('a notebook must keep a stack');
  const cells = notebook.cells.filter((c) => !('stack' in c) || c.stack !== stackId);
  return { ...notebook, stacks: notebook.stacks.filter((s) => s !== stack), cells };
}
