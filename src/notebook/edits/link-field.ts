import { type FieldPath, fieldLabel, fieldSpec, withField } from '../field-path.ts';
import { choiceValues, fitProblem } from '../field-use.ts';
import { findParameter, findStack } from '../find.ts';
import type { Notebook } from '../types.ts';
import { withStack } from './with-stack.ts';

/** Makes a field refer to a parameter that is there. @throws RangeError if the parameter does not fit the field. */
export function linkField(notebook: Notebook, stackId: string, path: FieldPath, key: string): Notebook {
  const stack = findStack(notebook, stackId);
  const spec = fieldSpec(stack, path);
  const misfit = fitProblem(findParameter(notebook, key), spec, choiceValues(notebook, spec));
  if (misfit) throw new RangeError(`${fieldLabel(stack, path)} needs ${misfit.expected}, got ${misfit.received}`);
  return withStack(notebook, withField(stack, path, { parameter: key }));
}
