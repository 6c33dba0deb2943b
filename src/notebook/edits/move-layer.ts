import { findLayerIndex, findStack } from '../find.ts';
import type { Layer, Notebook } from '../types.ts';
import { withStack } from './with-stack.ts';

/**
 * Changes places with the next layer of the same sort above (-1) or below (+1): leaf with leaf, interlayer with
 * interlayer. At the end of the stack nothing changes.
 */
export function moveLayer(notebook: Notebook, stackId: string, layerId: string, by: -1 | 1): Notebook {
  const stack = findStack(notebook, stackId);
  const from = findLayerIndex(stack, layerId);
  const to = from + 2 * by;
  if (!stack.layers[to]) return notebook;
  const layers: Layer[] = [...stack.layers];
  [layers[from], layers[to]] = [layers[to]!, layers[from]!];
  return withStack(notebook, { ...stack, layers });
}
