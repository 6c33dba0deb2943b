import { findLayerOf, findStack } from '../find.ts';
import type { Notebook } from '../types.ts';
import { replaceLayer } from './replace-layer.ts';

/** Says where a mat's numbers come from; an empty text says nothing. @throws RangeError for a layer that is no mat. */
export function setMatSource(notebook: Notebook, stackId: string, matId: string, source: string): Notebook {
  const { source: _, ...mat } = findLayerOf(findStack(notebook, stackId), matId, 'mat');
  return replaceLayer(notebook, stackId, matId, source === '' ? mat : { ...mat, source });
}
