import { findLayerIndex, findStack } from '../find.ts';
import type { Layer, LeafLayer, Notebook } from '../types.ts';
import { withStack } from './with-stack.ts';

/**
 * Takes a layer out and closes the gap. With a leaf goes the interlayer beside it: of two, the mat rather than the
 * cavity, else the lower one. Without an interlayer the leaves around it lie on each other as one.
 *
 * @throws RangeError for the only leaf of a stack.
 */
export function removeLayer(notebook: Notebook, stackId: string, layerId: string): Notebook {
  const stack = findStack(notebook, stackId);
  const index = findLayerIndex(stack, layerId);
  if (stack.layers.length === 1) throw new RangeError(`stack "${stackId}" must keep a leaf`);
  const layers = stack.layers[index]!.kind === 'leaf' ? withoutLeaf(stack.layers, index) : joined(stack.layers, index);
  return withStack(notebook, { ...stack, layers });
}

/** What goes with a leaf that is taken out; nothing with a mat or a cavity. */
export function goesWith(layers: readonly Layer[], index: number): Layer | undefined {
  if (layers[index]?.kind !== 'leaf') return undefined;
  const above = layers[index - 1];
  const below = layers[index + 1];
  return !below || (above?.kind === 'mat' && below.kind === 'cavity') ? above : below;
}

function withoutLeaf(layers: readonly Layer[], index: number): readonly Layer[] {
  const goes = goesWith(layers, index);
  return layers.filter((layer, i) => i !== index && layer !== goes);
}

function joined(layers: readonly Layer[], index: number): readonly Layer[] {
  const above = layers[index - 1] as LeafLayer;
  const below = layers[index + 1] as LeafLayer;
  const leaf: LeafLayer = { ...above, sheets: [...above.sheets, ...below.sheets] };
  return [...layers.slice(0, index - 1), leaf, ...layers.slice(index + 2)];
}
