import { type FieldPath, withField } from '../field-path.ts';
import { findStack } from '../find.ts';
import type { Notebook } from '../types.ts';
import { withStack } from './with-stack.ts';

/** Takes an optional field out, in every scenario, so that the usual value holds again. */
export function clearStackField(notebook: Notebook, stackId: string, path: FieldPath): Notebook {
  return withStack(notebook, withField(findStack(notebook, stackId), path, undefined));
}
