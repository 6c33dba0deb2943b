/** Slits and holes of a stack: add, rename, remove. Their numbers are fields like any other. */
import { findStack } from '../find.ts';
import type { Notebook, StackLeak } from '../types.ts';
import { withStack } from './with-stack.ts';

/** @throws RangeError if a leak of the stack has the id already. */
export function addLeak(notebook: Notebook, stackId: string, leak: StackLeak): Notebook {
  return withLeaks(notebook, stackId, (leaks) => {
    if (leaks.some((l) => l.id === leak.id)) throw new RangeError(`leak id must be new, got "${leak.id}"`);
    return [...leaks, leak];
  });
}

export function renameLeak(notebook: Notebook, stackId: string, leakId: string, name: string): Notebook {
  return withLeaks(notebook, stackId, (leaks) => {
    requireLeak(leaks, leakId);
    return leaks.map((leak) => (leak.id === leakId ? { ...leak, name } : leak));
  });
}

export function removeLeak(notebook: Notebook, stackId: string, leakId: string): Notebook {
  return withLeaks(notebook, stackId, (leaks) => {
    requireLeak(leaks, leakId);
    return leaks.filter((leak) => leak.id !== leakId);
  });
}

function withLeaks(
  notebook: Notebook,
  stackId: string,
  change: (leaks: readonly StackLeak[]) => readonly StackLeak[],
): Notebook {
  const stack = findStack(notebook, stackId);
  return withStack(notebook, { ...stack, leaks: change(stack.leaks ?? []) });
}

function requireLeak(leaks: readonly StackLeak[], id: string): void {
  if (!leaks.some((leak) => leak.id === id)) throw new RangeError(`leak must be one of the stack's, got "${id}"`);
}
