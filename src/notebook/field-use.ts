/** Which fields refer to which parameter, and whether a parameter fits them. */
import { type FieldPath, fieldLabel, fieldPaths, fieldSpec, getField } from './field-path.ts';
import type { FieldSpec } from './field-specs.ts';
import { RANGE_WORDS } from './range-words.ts';
import type { ChoiceParameter, Notebook, Parameter, QuantityKind, QuantityParameter, Stack } from './types.ts';
import { isReference } from './values.ts';

export interface FieldUse {
  readonly stack: Stack;
  readonly path: FieldPath;
  /** In words: "slab thickness". */
  readonly label: string;
  readonly spec: FieldSpec;
}

/** Every field that refers to a parameter, stack by stack. */
export function fieldsUsing(notebook: Notebook, key: string): readonly FieldUse[] {
  return notebook.stacks.flatMap((stack) =>
    fieldPaths(stack)
      .filter((path) => {
        const field = getField(stack, path);
        return field !== undefined && isReference(field) && field.parameter === key;
      })
      .map((path) => ({ stack, path, label: fieldLabel(stack, path), spec: fieldSpec(stack, path) })),
  );
}

/** Why a quantity's range is not accepted, as one sentence; undefined if it is. */
export function rangeProblem(parameter: QuantityParameter, uses: readonly FieldUse[]): string | undefined {
  if (!(parameter.min <= parameter.max))
    return `${parameter.label}: “${RANGE_WORDS.max}” must be at least “${RANGE_WORDS.min}” (${parameter.min}), got ${parameter.max}`;
  if (!(parameter.step > 0)) return `${parameter.label}: step must be > 0, got ${parameter.step}`;
  for (const { spec, label } of uses) {
    const problem = fitProblem(parameter, spec, new Set());
    if (problem) return `${parameter.label}: ${problem.expected} for ${label}, got ${problem.received}`;
  }
  return undefined;
}

/** What a choice field accepts; empty for a number. */
export function choiceValues(notebook: Pick<Notebook, 'materials'>, spec: FieldSpec): ReadonlySet<string> {
  return new Set(spec.type === 'choice' ? spec.choices(notebook).map((c) => c.value) : []);
}

export interface Misfit {
  readonly expected: string;
  readonly received: string;
}

/** Why a field cannot refer to a parameter; undefined if every value the parameter may take is accepted there. */
export function fitProblem(parameter: Parameter, spec: FieldSpec, accepted: ReadonlySet<string>): Misfit | undefined {
  if (spec.type === 'choice')
    return 'choices' in parameter ? choicesMisfit(parameter, accepted) : notAChoice(parameter);
  if ('choices' in parameter) return { expected: `a ${spec.quantity} parameter`, received: 'a choice' };
  if (!sameMeasure(parameter.quantity, spec.quantity))
    return { expected: `a ${spec.quantity} parameter`, received: `a ${parameter.quantity} parameter` };
  if (parameter.min >= spec.min && parameter.max <= spec.max) return undefined;
  const why = parameter.max > spec.max && spec.whyNotMore !== undefined ? ` (${spec.whyNotMore})` : '';
  return {
    expected: `a range within ${spec.min} to ${spec.max}${why}`,
    received: `${parameter.min} to ${parameter.max}`,
  };
}

/** A span is a length that is shown in metres. */
function sameMeasure(a: QuantityKind, b: QuantityKind): boolean {
  const measure = (kind: QuantityKind) => (kind === 'span' ? 'length' : kind);
  return measure(a) === measure(b);
}

function choicesMisfit(parameter: ChoiceParameter, accepted: ReadonlySet<string>): Misfit | undefined {
  const wrong = parameter.choices.filter((c) => !accepted.has(c.value));
  if (wrong.length === 0) return undefined;
  return { expected: `choices among ${[...accepted].join(', ')}`, received: wrong.map((c) => c.value).join(', ') };
}

function notAChoice(parameter: QuantityParameter): Misfit {
  return { expected: 'a choice parameter', received: `a ${parameter.quantity} parameter` };
}
