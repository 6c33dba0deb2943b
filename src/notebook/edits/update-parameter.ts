import { fieldsUsing, rangeProblem } from '../field-use.ts';
import { findParameter } from '../find.ts';
import { requireParameterValue } from '../parameter-value.ts';
import type { Notebook } from '../types.ts';
import { type ParameterPatch, withParameter } from './with-parameter.ts';

/**
 * Changes a parameter's label, or the range and step of a quantity.
 *
 * @throws RangeError if a value in any scenario, or a field that refers to it, does not fit the new range.
 */
export function updateParameter(notebook: Notebook, key: string, patch: Omit<ParameterPatch, 'value'>): Notebook {
  const next = withParameter(notebook, key, patch);
  const parameter = findParameter(next, key);
  if (!('choices' in parameter)) {
    const problem = rangeProblem(parameter, fieldsUsing(next, key));
    if (problem) throw new RangeError(problem);
  }
  requireParameterValue(parameter, parameter.value);
  for (const { changes } of next.scenarios)
    if (Object.hasOwn(changes, key)) requireParameterValue(parameter, changes[key]!);
  return next;
}
