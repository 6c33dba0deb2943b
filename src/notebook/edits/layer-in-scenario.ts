/**
 * Layers, sheets and further fills that some scenarios have and others have not: written down for all, with a thickness of 0
 * where they are absent.
 */
import { type FieldPath, fieldLabel, fieldSpec, getField } from '../field-path.ts';
import { fieldsUsing } from '../field-use.ts';
import { findLayerIndex, findParameter, findStack } from '../find.ts';
import { type AbsentField, absentFields, absentFillField, absentSheetField } from '../layer-presence.ts';
import type { Notebook, ParameterValue, Stack } from '../types.ts';
import { fieldValue, isReference, valuesOf } from '../values.ts';
import { rangeAround } from './make-parameter.ts';
import { removeParameter } from './remove-parameter.ts';
import { setFieldsByScenario } from './set-fields-by-scenario.ts';

/** A whole layer, one sheet of a leaf, or one of several fills of a cavity by its place. */
export interface LayerPart {
  readonly layer: string;
  readonly sheet?: number;
  readonly fill?: number;
}

/** Leaves parts in one scenario alone, as they are there. */
export function keepOnlyIn(
  notebook: Notebook,
  stackId: string,
  parts: readonly LayerPart[],
  scenarioId: string,
): Notebook {
  return setAbsent(notebook, stackId, parts, (id) => id !== scenarioId);
}

/** Takes parts out of one scenario; every other one keeps them, its forks too. */
export function takeOutOf(
  notebook: Notebook,
  stackId: string,
  parts: readonly LayerPart[],
  scenarioId: string,
): Notebook {
  return setAbsent(notebook, stackId, parts, (id) => id === scenarioId);
}

/** Puts parts into one scenario as they are in another, and into no other, its forks neither. */
export function putInto(
  notebook: Notebook,
  stackId: string,
  parts: readonly LayerPart[],
  scenarioId: string,
  like: string,
): Notebook {
  const stack = findStack(notebook, stackId);
  const values = valuesOf(notebook, like);
  const wishes = absentOf(notebook, stackId, parts).map(({ path }) => {
    const model = fieldValue<ParameterValue>(getField(stack, path)!, values);
    return { path, valueIn: (id: string, now: ParameterValue) => (id === scenarioId ? model : now) };
  });
  return setFieldsByScenario(notebook, stackId, wishes);
}

/**
 * After parts were taken out of every scenario: parameters that nothing refers to any more, and that told no more than
 * in which one of several scenarios a part was, go too. What a reader has made their own stays.
 */
export function withoutLeftovers(
  before: Notebook,
  after: Notebook,
  stackId: string,
  parts: readonly LayerPart[],
): Notebook {
  const stack = findStack(before, stackId);
  const leftover = absentOf(before, stackId, parts).flatMap(({ path, value }) => {
    const field = getField(stack, path)!;
    if (!isReference(field) || fieldsUsing(after, field.parameter).length > 0) return [];
    const values = before.scenarios.map(({ id }) => valuesOf(before, id)[field.parameter]!);
    const held = values.filter((v) => v !== value).length;
    const toldWhere = held <= 1 && held < values.length;
    return toldWhere && !isReadersOwn(before, stack, path, field.parameter, values) ? [field.parameter] : [];
  });
  return [...new Set(leftover)].reduce(removeParameter, after);
}

/** It has another label or range than the field would get by itself, or a cell names it. */
function isReadersOwn(
  notebook: Notebook,
  stack: Stack,
  path: FieldPath,
  key: string,
  values: readonly ParameterValue[],
): boolean {
  const parameter = findParameter(notebook, key);
  if (parameter.label !== fieldLabel(stack, path)) return true;
  if (notebook.cells.some((cell) => cell.kind === 'parameters' && cell.parameters.includes(key))) return true;
  const spec = fieldSpec(stack, path);
  if ('choices' in parameter || spec.type === 'choice') return false;
  const { min, max, step } = rangeAround(spec, values.map(Number));
  return parameter.min !== min || parameter.max !== max || parameter.step !== step;
}

function setAbsent(
  notebook: Notebook,
  stackId: string,
  parts: readonly LayerPart[],
  isAbsentIn: (scenarioId: string) => boolean,
): Notebook {
  const wishes = absentOf(notebook, stackId, parts).map(({ path, value }) => ({
    path,
    valueIn: (id: string, now: ParameterValue) => (isAbsentIn(id) ? value : now),
  }));
  return setFieldsByScenario(notebook, stackId, wishes);
}

function absentOf(notebook: Notebook, stackId: string, parts: readonly LayerPart[]): readonly AbsentField[] {
  const stack = findStack(notebook, stackId);
  return parts.flatMap(({ layer, sheet, fill }) => {
    const index = findLayerIndex(stack, layer);
    if (fill !== undefined) return [absentFillField(index, fill)];
    return sheet === undefined ? absentFields(stack.layers[index]!, index) : [absentSheetField(index, sheet)];
  });
}
