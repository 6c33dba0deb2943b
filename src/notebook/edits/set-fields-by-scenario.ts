import { type FieldPath, getField, withField } from '../field-path.ts';
import { fieldsUsing } from '../field-use.ts';
import { baseScenario, findParameter, findStack } from '../find.ts';
import type { Notebook, Parameter, ParameterValue } from '../types.ts';
import { fieldValue, isReference, valuesOf } from '../values.ts';
import { makeLiteral } from './make-literal.ts';
import { madeParameter } from './make-parameter.ts';
import { withParameter } from './with-parameter.ts';
import { withStack } from './with-stack.ts';

export interface FieldByScenario {
  /** Of a field that is there. */
  readonly path: FieldPath;
  /** What it is to hold in a scenario that holds `now`. */
  valueIn(scenarioId: string, now: ParameterValue): ParameterValue;
}

/**
 * Writes what fields hold in each scenario, and changes no other scenario by that: what a fork inherited it then holds
 * itself, where the two are to differ. A parameter that other fields read too stays theirs; the field gets its own.
 */
export function setFieldsByScenario(notebook: Notebook, stackId: string, wishes: readonly FieldByScenario[]): Notebook {
  return wishes.reduce((next, wish) => setField(next, stackId, wish, wishes), notebook);
}

function setField(
  notebook: Notebook,
  stackId: string,
  { path, valueIn }: FieldByScenario,
  wishes: readonly FieldByScenario[],
): Notebook {
  const stack = findStack(notebook, stackId);
  const field = getField(stack, path);
  if (field === undefined) throw new RangeError(`field must be there, got none (${path.join('/')})`);
  const now = (id: string) => fieldValue<ParameterValue>(field, valuesOf(notebook, id));
  const wanted = new Map(notebook.scenarios.map(({ id }) => [id, valueIn(id, now(id))]));
  if ([...wanted].every(([id, value]) => value === now(id))) return notebook;
  const [first] = wanted.values();
  if (!isReference(field) && [...wanted.values()].every((value) => value === first))
    return withStack(notebook, withField(stack, path, first));
  const linked = isReference(field) ? field.parameter : undefined;
  if (linked !== undefined && isTheirsAlone(notebook, stackId, linked, wishes) && mayHold(notebook, linked, wanted))
    return withValues(notebook, linked, wanted);
  const literal = linked === undefined ? notebook : makeLiteral(notebook, stackId, path);
  const made = madeParameter(literal, stackId, path);
  return withValues(made.notebook, made.key, wanted);
}

function isTheirsAlone(notebook: Notebook, stackId: string, key: string, wishes: readonly FieldByScenario[]): boolean {
  const paths = new Set(wishes.map(({ path }) => path.join('/')));
  return fieldsUsing(notebook, key).every(({ stack, path }) => stack.id === stackId && paths.has(path.join('/')));
}

/** A range may be widened; choices are what they are. */
function mayHold(notebook: Notebook, key: string, wanted: ReadonlyMap<string, ParameterValue>): boolean {
  const parameter = findParameter(notebook, key);
  if (!('choices' in parameter)) return true;
  return [...wanted.values()].every((value) => parameter.choices.some((c) => c.value === value));
}

function withValues(notebook: Notebook, key: string, wanted: ReadonlyMap<string, ParameterValue>): Notebook {
  const value = wanted.get(baseScenario(notebook).id)!;
  const next = withParameter(notebook, key, { value, ...widened(findParameter(notebook, key), [...wanted.values()]) });
  const scenarios = next.scenarios.map((scenario) => {
    const { [key]: _before, ...changes } = scenario.changes;
    const own = wanted.get(scenario.id)!;
    const isOwn = scenario.parent !== null && own !== wanted.get(scenario.parent);
    return { ...scenario, changes: isOwn ? { ...changes, [key]: own } : changes };
  });
  return { ...next, scenarios };
}

function widened(parameter: Parameter, values: readonly ParameterValue[]): object {
  if ('choices' in parameter) return {};
  const numbers = values.map(Number);
  return { min: Math.min(parameter.min, ...numbers), max: Math.max(parameter.max, ...numbers) };
}
