import { findStack } from '../find.ts';
import { insertedAt } from '../lists.ts';
import type { Interlayer, LeafLayer, Notebook } from '../types.ts';
import { withStack } from './with-stack.ts';

/**
 * Adds a leaf with an interlayer between it and its neighbour, so that leaves and interlayers go on alternating.
 * `at` counts leaves: 0 puts it on top, 1 below the first leaf, and so on. Ids must be new.
 */
export function insertLeaf(
  notebook: Notebook,
  stackId: string,
  at: number,
  leaf: LeafLayer,
  interlayer: Interlayer,
): Notebook {
  const stack = findStack(notebook, stackId);
  const layers =
    at === 0 ? insertedAt(stack.layers, 0, leaf, interlayer) : insertedAt(stack.layers, 2 * at - 1, interlayer, leaf);
  return withStack(notebook, { ...stack, layers });
}
