import { acceptsLiteral, impliedLiteral } from '../field-literal.ts';
import { type FieldPath, fieldLabel, fieldSpec, getField, withField } from '../field-path.ts';
import type { NumberSpec } from '../field-specs.ts';
import { baseScenario, findStack } from '../find.ts';
import { freshKey } from '../fresh-key.ts';
import type { Notebook, Parameter, ParameterValue, QuantityParameter } from '../types.ts';
import { isReference, valuesOf } from '../values.ts';
import { addParameter } from './add-parameter.ts';
import { withStack } from './with-stack.ts';

export interface ParameterWish {
  /** What people read; from the field's own name unless given. */
  readonly label?: string;
  /** A value the new parameter's range must hold besides the present one. */
  readonly reach?: ParameterValue;
}

export interface MadeParameter {
  readonly notebook: Notebook;
  readonly key: string;
}

/**
 * Turns a literal into a parameter of the same value, with a usual range, that the field refers to. Nothing that is
 * computed changes.
 *
 * @throws RangeError if the field is linked already, or is absent and the notebook does not know what stands for it.
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
  const field = getField(stack, path);
  const name = fieldLabel(stack, path);
  if (field !== undefined && isReference(field))
    throw new RangeError(`${name} must be a literal to become a parameter, got one linked to "${field.parameter}"`);
  const value = field ?? impliedLiteral(notebook, stack, path, valuesOf(notebook, baseScenario(notebook).id));
  if (value === undefined) throw new RangeError(`${name} must have a value before it becomes a parameter, got none`);
  const spec = fieldSpec(stack, path);
  const words = label ?? name;
  const key = freshKey(
    words,
    notebook.parameters.map((p) => p.key),
  );
  const parameter: Parameter =
    spec.type === 'choice'
      ? { key, label: words, choices: spec.choices(notebook), value: String(value) }
      : { key, label: words, quantity: spec.quantity, ...rangeAround(spec, [value, reach ?? value].map(Number)) };
  if (reach !== undefined && !acceptsLiteral(notebook, spec, reach))
    throw new RangeError(`${name} does not accept ${JSON.stringify(reach)}`);
  const linked = withStack(notebook, withField(stack, path, { parameter: key }));
  return { notebook: addParameter(linked, parameter), key };
}

/** The usual range, widened where a value lies outside. */
function rangeAround(
  spec: NumberSpec,
  values: readonly number[],
): Pick<QuantityParameter, 'value' | 'min' | 'max' | 'step'> {
  const min = Math.min(spec.usualMin, ...values);
  const max = Math.max(spec.usualMax, ...values);
  return { value: values[0]!, min, max, step: spec.step };
}
