import { findScenario, lineage } from './find.ts';
import type { Field, Notebook, ParameterValue, Scenario } from './types.ts';

export type Values = Readonly<Record<string, ParameterValue>>;

/** Every parameter's value in a scenario: the base values with the changes of the whole chain of parents on top. */
export function valuesOf(notebook: Notebook, scenarioId: string): Values {
  const values: Record<string, ParameterValue> = {};
  for (const { key, value } of notebook.parameters) values[key] = value;
  for (const { changes } of lineage(notebook, scenarioId).toReversed()) Object.assign(values, changes);
  return values;
}

/** What a scenario would have without changes of its own; for the base, the base values. */
export function inheritedValues(notebook: Notebook, scenarioId: string): Values {
  const { parent } = findScenario(notebook, scenarioId);
  return valuesOf(notebook, parent ?? scenarioId);
}

/** Keys of the parameters that differ from the parent's, in the notebook's order; none for the base. */
export function changedKeys(notebook: Notebook, scenarioId: string): readonly string[] {
  return differingKeys(notebook, valuesOf(notebook, scenarioId), inheritedValues(notebook, scenarioId));
}

/** Keys of the parameters whose values differ between two sets, in the notebook's order. */
export function differingKeys(notebook: Notebook, a: Values, b: Values): readonly string[] {
  return notebook.parameters.map((p) => p.key).filter((key) => a[key] !== b[key]);
}

/** The changes that lead from one set of values to another. */
export function changesBetween(notebook: Notebook, from: Values, to: Values): Scenario['changes'] {
  return Object.fromEntries(differingKeys(notebook, to, from).map((key) => [key, to[key]!]));
}

export function isReference<T extends ParameterValue>(field: Field<T>): field is { readonly parameter: string } {
  return typeof field === 'object';
}

/** The literal behind a field. @throws RangeError if it refers to a parameter without a value. */
export function fieldValue<T extends ParameterValue>(field: Field<T>, values: Values): T {
  if (!isReference(field)) return field;
  if (!Object.hasOwn(values, field.parameter))
    throw new RangeError(`parameter must be one of the notebook's, got "${field.parameter}"`);
  return values[field.parameter] as T;
}
