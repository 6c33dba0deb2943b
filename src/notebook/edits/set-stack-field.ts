import { fieldLiteralProblem } from '../field-literal.ts';
import { type FieldPath, getField, withField } from '../field-path.ts';
import { findStack, isBase } from '../find.ts';
import type { Notebook, ParameterValue } from '../types.ts';
import { isReference } from '../values.ts';
import { madeParameter } from './make-parameter.ts';
import { setParameter } from './set-parameter.ts';
import { withStack } from './with-stack.ts';

/**
 * Writes a value where it belongs: a field that refers to a parameter changes that parameter in the active scenario; a
 * literal changes in place while the base is active; while a fork is active a literal first becomes a parameter, so
 * that the change stays in the fork. The same value changes nothing.
 *
 * @throws RangeError or TypeError if the field does not accept the value.
 */
export function setStackField(notebook: Notebook, stackId: string, path: FieldPath, value: ParameterValue): Notebook {
  const stack = findStack(notebook, stackId);
  const field = getField(stack, path);
  if (field !== undefined && isReference(field)) return setParameter(notebook, field.parameter, value);
  const problem = fieldLiteralProblem(notebook, stack, path, value);
  if (problem) throw new RangeError(problem);
  if (field === value) return notebook;
  if (isBase(notebook, notebook.active)) return withStack(notebook, withField(stack, path, value));
  const { notebook: next, key } = madeParameter(notebook, stackId, path, { reach: value });
  return setParameter(next, key, value);
}
