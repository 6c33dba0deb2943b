import { requireParameterValue } from '../parameter-value.ts';
import type { Notebook, Parameter } from '../types.ts';

/** @throws RangeError if the key is taken or the value does not fit. */
export function addParameter(notebook: Notebook, parameter: Parameter): Notebook {
  if (notebook.parameters.some((p) => p.key === parameter.key))
    throw new RangeError(`parameter key must be new, got "${parameter.key}"`);
  requireParameterValue(parameter, parameter.value);
  return { ...notebook, parameters: [...notebook.parameters, parameter] };
}
