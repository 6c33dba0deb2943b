import { type FieldPath, fieldLabel, getField, withField } from '../field-path.ts';
import { findStack } from '../find.ts';
import type { Notebook } from '../types.ts';
import { fieldValue, isReference, valuesOf } from '../values.ts';
import { withStack } from './with-stack.ts';

/**
 * Unlinks a field from its parameter: from now on it holds the active scenario's value, in every scenario. The
 * parameter itself stays.
 *
 * @throws RangeError if the field is a literal already.
 */
export function makeLiteral(notebook: Notebook, stackId: string, path: FieldPath): Notebook {
  const stack = findStack(notebook, stackId);
  const field = getField(stack, path);
  if (field === undefined || !isReference(field))
    throw new RangeError(`${fieldLabel(stack, path)} must be linked to a parameter to be unlinked`);
  return withStack(notebook, withField(stack, path, fieldValue(field, valuesOf(notebook, notebook.active))));
}
