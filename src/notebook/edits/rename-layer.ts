import { findLayer, findStack } from '../find.ts';
import type { Notebook } from '../types.ts';
import { replaceLayer } from './replace-layer.ts';

export function renameLayer(notebook: Notebook, stackId: string, layerId: string, name: string): Notebook {
  const layer = findLayer(findStack(notebook, stackId), layerId);
  return replaceLayer(notebook, stackId, layerId, { ...layer, name });
}
