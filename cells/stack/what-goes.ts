/** What a layer that is removed takes with it, in words: said before it goes. */
import { goesWith } from '#src/notebook/edits/remove-layer.ts';
import type { Layer, Notebook, Stack } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';

/** Undefined where nothing goes with it that its name does not tell. */
export function whatGoesWith(notebook: Notebook, stack: Stack, layer: Layer): string | undefined {
  const index = stack.layers.indexOf(layer);
  const companion = goesWith(stack.layers, index);
  if (companion) return `“${companion.name}” goes with it${inside(notebook, companion)}.`;
  if (layer.kind === 'leaf') return undefined;
  const [above, below] = [stack.layers[index - 1]!, stack.layers[index + 1]!];
  return `“${above.name}” and “${below.name}” then lie on each other${hasJoists(notebook, layer) ? ', and the joists are gone' : ''}.`;
}

function inside(notebook: Notebook, layer: Layer): string {
  if (layer.kind !== 'cavity') return '';
  if (!hasJoists(notebook, layer)) return ': the cavity with its fill and the support of the ceiling';
  return ': the joists, the fill between them and the support of the ceiling. Joists are reckoned only between two leaves, so that the floor is computed without any';
}

export function hasJoists(notebook: Notebook, layer: Layer): boolean {
  return layer.kind === 'cavity' && fieldValue(layer.joists, valuesOf(notebook, notebook.active)) !== 'none';
}
