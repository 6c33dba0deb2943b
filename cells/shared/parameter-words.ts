/** A parameter's value in words, as the notebook's units have it. */
import type { Notebook, Parameter, ParameterValue } from '#src/notebook/types.ts';
import { formatQuantity, formatValue } from '#src/quantities/format-quantity.ts';

export function valueInWords(parameter: Parameter, value: ParameterValue, units: Notebook['units']): string {
  if ('choices' in parameter) return parameter.choices.find((c) => c.value === value)?.label ?? String(value);
  return formatQuantity(Number(value), parameter.quantity, units);
}

/** "slab thickness 38 → 76 mm"; a choice names only what it is now. */
export function changeInWords(
  parameter: Parameter,
  from: ParameterValue,
  to: ParameterValue,
  units: Notebook['units'],
): string {
  const now = valueInWords(parameter, to, units);
  if ('choices' in parameter) return `${parameter.label}: ${now}`;
  return `${parameter.label} ${formatValue(Number(from), parameter.quantity, units)} → ${now}`;
}
