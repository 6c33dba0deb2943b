import { findParameter, isBase } from '../find.ts';
import { requireParameterValue } from '../parameter-value.ts';
import type { Notebook, ParameterValue } from '../types.ts';
import { inheritedValues } from '../values.ts';
import { withChange, withoutChange } from './scenario-changes.ts';
import { withParameter } from './with-parameter.ts';

/**
 * Sets a parameter in a scenario, the active one unless told otherwise: in the base its base value, elsewhere a change.
 * A change that equals the inherited value is no change and is taken out.
 *
 * @throws RangeError or TypeError if the parameter does not accept the value.
 */
export function setParameter(
  notebook: Notebook,
  key: string,
  value: ParameterValue,
  scenarioId = notebook.active,
): Notebook {
  requireParameterValue(findParameter(notebook, key), value);
  if (isBase(notebook, scenarioId)) return withParameter(notebook, key, { value });
  return inheritedValues(notebook, scenarioId)[key] === value
    ? withoutChange(notebook, scenarioId, key)
    : withChange(notebook, scenarioId, key, value);
}
