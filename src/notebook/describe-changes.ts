import { formatQuantity, unitOf } from '#src/quantities/format-quantity.ts';
import { findParameter } from './find.ts';
import type { Notebook, Parameter, ParameterValue, UnitSystem } from './types.ts';
import { differingKeys, inheritedValues, type Values, valuesOf } from './values.ts';

export interface DescribedChange {
  readonly key: string;
  readonly from: ParameterValue;
  readonly to: ParameterValue;
  /** "slab thickness 38 → 76 mm" */
  readonly text: string;
}

/** Whether all that a parameter stands for would be so without it too. */
export type IsUsual = (notebook: Notebook, key: string, values: Values) => boolean;

/**
 * What differs from the parent, in words and in the notebook's units; empty for the base. What is usual in both goes along
 * with another change (of the kind of support, say) and is not told.
 */
export function describeChanges(
  notebook: Notebook,
  scenarioId: string,
  isUsual: IsUsual = () => false,
): readonly DescribedChange[] {
  const before = inheritedValues(notebook, scenarioId);
  const after = valuesOf(notebook, scenarioId);
  return describeDifferences(notebook, before, after).filter(
    ({ key }) => !(isUsual(notebook, key, before) && isUsual(notebook, key, after)),
  );
}

/** What differs between two sets of values, in words. */
function describeDifferences(notebook: Notebook, before: Values, after: Values): readonly DescribedChange[] {
  return differingKeys(notebook, before, after).map((key) => {
    const parameter = findParameter(notebook, key);
    const from = before[key]!;
    const to = after[key]!;
    return { key, from, to, text: `${parameter.label} ${fromTo(parameter, from, to, notebook.units)}` };
  });
}

/** A parameter's value for people: "38 mm", "isolation clips". */
export function describeValue(parameter: Parameter, value: ParameterValue, units: UnitSystem): string {
  if ('choices' in parameter) return parameter.choices.find((c) => c.value === value)?.label ?? String(value);
  return formatQuantity(Number(value), parameter.quantity, units);
}

/** The unit stands once, behind the second number, where both have the same. */
function fromTo(parameter: Parameter, from: ParameterValue, to: ParameterValue, units: UnitSystem): string {
  const first = describeValue(parameter, from, units);
  const second = describeValue(parameter, to, units);
  const unit = 'choices' in parameter ? '' : ` ${unitOf(parameter.quantity, units)}`;
  const shared = unit.trim() !== '' && first.endsWith(unit) && second.endsWith(unit);
  return `${shared ? first.slice(0, -unit.length) : first} → ${second}`;
}
