/** What one field of a stack shows in the active scenario, and what can be done with it. */

import { impliedLiteral } from '#src/notebook/field-literal.ts';
import { type FieldPath, fieldLabel, fieldSpec, getField } from '#src/notebook/field-path.ts';
import { fitProblem } from '#src/notebook/field-use.ts';
import { findParameter, findStack } from '#src/notebook/find.ts';
import type { Choice, Notebook, Parameter, ParameterValue, QuantityKind } from '#src/notebook/types.ts';
import { fieldValue, isReference, valuesOf } from '#src/notebook/values.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { materialSource } from './material-source.ts';

interface FieldViewBase {
  /** As it stands above the field: "thickness". */
  readonly name: string;
  /** With what it belongs to: "slab thickness". */
  readonly label: string;
  /** The parameter that the field refers to. */
  readonly linked: Parameter | undefined;
  /** Parameters that the field could refer to instead. */
  readonly candidates: readonly Parameter[];
  readonly canBecomeParameter: boolean;
}

export interface NumberFieldView extends FieldViewBase {
  readonly type: 'number';
  readonly quantity: QuantityKind;
  readonly min: number;
  readonly max: number;
  /** Unless a parameter keeps it lower anyway. */
  readonly whyNotMore: string | undefined;
  readonly optional: boolean;
  /** Undefined where an optional field is absent. */
  readonly value: number | undefined;
  readonly text: string;
  /** What holds while the field is empty. */
  readonly placeholder: string;
}

export interface ChoiceFieldView extends FieldViewBase {
  readonly type: 'choice';
  readonly choices: readonly Choice[];
  /** Of the choices, those that the notebook brings itself. */
  readonly own: readonly Choice[];
  readonly value: string;
  /** Where the numbers of a chosen material come from. */
  readonly source: string | undefined;
}

export type FieldView = NumberFieldView | ChoiceFieldView;

export function fieldView(notebook: Notebook, stackId: string, path: FieldPath): FieldView {
  const stack = findStack(notebook, stackId);
  const spec = fieldSpec(stack, path);
  const field = getField(stack, path);
  const values = valuesOf(notebook, notebook.active);
  const linked = field !== undefined && isReference(field) ? findParameter(notebook, field.parameter) : undefined;
  const value = field === undefined ? undefined : fieldValue<ParameterValue>(field, values);
  const accepted = new Set(spec.type === 'choice' ? spec.choices(notebook).map((c) => c.value) : []);
  const implied = impliedLiteral(notebook, stack, path, values);
  const base = {
    name: spec.label,
    label: fieldLabel(stack, path),
    linked,
    candidates: notebook.parameters.filter((p) => p !== linked && !fitProblem(p, spec, accepted)),
    canBecomeParameter: !linked && (value !== undefined || implied !== undefined),
  };
  if (spec.type === 'choice') {
    const choices = linked && 'choices' in linked ? linked.choices : spec.choices(notebook);
    const key = String(value);
    const isOwn = (c: Choice) => notebook.materials.some((m) => m.key === c.value && m.name === c.label);
    return {
      ...base,
      type: 'choice',
      choices: choices.filter((c) => !isOwn(c)),
      own: choices.filter(isOwn),
      value: key,
      source: materialSource(notebook, path, key),
    };
  }
  const limits = linked && !('choices' in linked) ? linked : spec;
  const inWords = (number: number) => formatQuantity(number, spec.quantity, notebook.units);
  return {
    ...base,
    type: 'number',
    quantity: spec.quantity,
    min: limits.min,
    max: limits.max,
    whyNotMore: limits.max < spec.max ? undefined : spec.whyNotMore,
    optional: spec.optional && !linked,
    value: value === undefined ? undefined : Number(value),
    text: value === undefined ? '' : inWords(Number(value)),
    placeholder: implied === undefined ? 'usual' : inWords(implied),
  };
}
