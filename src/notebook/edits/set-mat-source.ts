import { findLayer, findStack } from '../find.ts';
import type { Notebook } from '../types.ts';
import { replaceLayer } from './replace-layer.ts';

/** Says where a mat's numbers come from; an empty text says nothing. @throws RangeError for a layer that is no mat. */
export function setMatSource(notebook: Notebook, stackId: string, matId: string, source: string): Notebook {
  const layer = findLayer(findStack(notebook, stackId), matId);
  if (layer.kind !== 'mat') throw new RangeError(`layer must be a mat, got a ${layer.kind} (layer "${matId}")`);
  const { source: _, ...mat } = layer;
  return replaceLayer(notebook, stackId, matId, source === '' ? mat : { ...mat, source });
}
