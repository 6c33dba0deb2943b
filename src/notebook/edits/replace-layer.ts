import { findLayerIndex, findStack } from '../find.ts';
import { replacedAt } from '../lists.ts';
import type { Layer, Notebook } from '../types.ts';
import { withStack } from './with-stack.ts';

/** Puts a leaf in a leaf's place, or a mat or cavity in an interlayer's. */
export function replaceLayer(notebook: Notebook, stackId: string, layerId: string, layer: Layer): Notebook {
  const stack = findStack(notebook, stackId);
  const index = findLayerIndex(stack, layerId);
  const isLeaf = stack.layers[index]!.kind === 'leaf';
  if (isLeaf !== (layer.kind === 'leaf'))
    throw new RangeError(`layer must be ${isLeaf ? 'a leaf' : 'a mat or a cavity'}, got a ${layer.kind}`);
  return withStack(notebook, { ...stack, layers: replacedAt(stack.layers, index, layer) });
}
