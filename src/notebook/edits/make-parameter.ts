import { acceptsLiteral, impliedLiteral } from '../field-literal.ts';
import { type FieldPath, fieldLabel, fieldSpec, getField, withField } from '../field-path.ts';
import type { FieldSpec, NumberSpec } from '../field-specs.ts';
import { baseScenario, findStack } from '../find.ts';
import { freshKey } from '../fresh-key.ts';
import type { Notebook, Parameter, ParameterValue, Scenario } from '../types.ts';
import { isReference, valuesOf } from '../values.ts';
import { addParameter } from './add-parameter.ts';
import { withStack } from './with-stack.ts';

export interface ParameterWish {
  /** What people read; from the field's own name unless given. */
  readonly label?: string;
  /** What the active scenario is about to hold: the new parameter's range must hold it too. */
  readonly reach?: ParameterValue;
}

export interface MadeParameter {
  readonly notebook: Notebook;
  readonly key: string;
}

/**
 * Turns a literal into a parameter of the same value, with a usual range, that the field refers to. A field that is
 * absent becomes one with the value that holds now, in each scenario its own. Nothing that is computed changes.
 *
 * @throws RangeError if the field is linked already, or is absent and nowhere read.
 */
export function makeParameter(
  notebook: Notebook,
  stackId: string,
  path: FieldPath,
  wish: ParameterWish = {},
): Notebook {
  return madeParameter(notebook, stackId, path, wish).notebook;
}

/** As `makeParameter`, and tells the new parameter's key. */
export function madeParameter(
  notebook: Notebook,
  stackId: string,
  path: FieldPath,
  { label, reach }: ParameterWish = {},
): MadeParameter {
  const stack = findStack(notebook, stackId);
  const spec = fieldSpec(stack, path);
  const name = fieldLabel(stack, path);
  if (reach !== undefined && !acceptsLiteral(notebook, spec, reach))
    throw new RangeError(`${name} does not accept ${JSON.stringify(reach)}`);
  const present = new Map(presentValues(notebook, stackId, path));
  const base = baseScenario(notebook).id;
  const value = present.get(base) ?? [...present.values()][0] ?? reach;
  // Where the base does not read the field, what is typed is the active scenario's own and must not become the base's.
  if (!present.has(base) && reach !== undefined) present.set(notebook.active, reach);
  if (value === undefined) throw new RangeError(`${name} must have a value before it becomes a parameter, got none`);
  const words = label ?? name;
  const key = freshKey(
    words,
    notebook.parameters.map((p) => p.key),
  );
  const parameter = parameterOf(notebook, spec, [value, ...present.values(), reach ?? value]);
  const linked = withStack(notebook, withField(stack, path, { parameter: key }));
  const scenarios = changedWhereDifferent(notebook.scenarios, key, value, present);
  return { notebook: addParameter({ ...linked, scenarios }, { key, label: words, ...parameter } as Parameter), key };
}

/** What the field holds now, scenario by scenario; none where it is absent and not read. */
function presentValues(notebook: Notebook, stackId: string, path: FieldPath): ReadonlyMap<string, ParameterValue> {
  const stack = findStack(notebook, stackId);
  const field = getField(stack, path);
  if (field !== undefined && isReference(field))
    throw new RangeError(
      `${fieldLabel(stack, path)} must be a literal to become a parameter, got one linked to "${field.parameter}"`,
    );
  const spec = fieldSpec(stack, path);
  const values = new Map<string, ParameterValue>();
  for (const { id } of notebook.scenarios) {
    const value = field ?? impliedLiteral(notebook, stack, path, valuesOf(notebook, id));
    if (value !== undefined) values.set(id, accepted(spec, value));
  }
  return values;
}

/** What the engine takes for usual lies within the limits but for freak stacks (a ceiling of no weight, say). */
function accepted(spec: FieldSpec, value: ParameterValue): ParameterValue {
  return spec.type === 'number' ? Math.min(Math.max(Number(value), spec.min), spec.max) : value;
}

function parameterOf(notebook: Notebook, spec: FieldSpec, values: readonly ParameterValue[]): object {
  return spec.type === 'choice'
    ? { choices: spec.choices(notebook), value: values[0] }
    : { quantity: spec.quantity, value: values[0], ...rangeAround(spec, values.map(Number)) };
}

/** The usual range, widened where a value lies outside. */
export function rangeAround({ usualMin, usualMax, step }: NumberSpec, values: readonly number[]) {
  return { min: Math.min(usualMin, ...values), max: Math.max(usualMax, ...values), step };
}

/** Gives each scenario its own value where it differs from its parent's. */
function changedWhereDifferent(
  scenarios: readonly Scenario[],
  key: string,
  baseValue: ParameterValue,
  present: ReadonlyMap<string, ParameterValue>,
): readonly Scenario[] {
  const parents = new Map(scenarios.map((s) => [s.id, s.parent]));
  const valueIn = (id: string | null | undefined): ParameterValue =>
    id == null ? baseValue : (present.get(id) ?? valueIn(parents.get(id)));
  return scenarios.map((s) => {
    const value = valueIn(s.id);
    return value === valueIn(s.parent) ? s : { ...s, changes: { ...s.changes, [key]: value } };
  });
}
