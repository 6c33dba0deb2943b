import { type FieldPath, fieldLabel, fieldSpec } from './field-path.ts';
import type { FieldSpec } from './field-specs.ts';
import { sheetMaterial } from './material-lookup.ts';
import type { Notebook, ParameterValue, Stack } from './types.ts';
import { fieldValue, type Values } from './values.ts';

/** What a field accepts, in words. */
export function expectedLiteral(notebook: Notebook, spec: FieldSpec): string {
  if (spec.type === 'number') return `a number from ${spec.min} to ${spec.max}`;
  return `one of ${spec
    .choices(notebook)
    .map((c) => `"${c.value}"`)
    .join(', ')}`;
}

export function acceptsLiteral(notebook: Notebook, spec: FieldSpec, value: ParameterValue): boolean {
  if (spec.type === 'number') return typeof value === 'number' && value >= spec.min && value <= spec.max;
  return spec.choices(notebook).some((c) => c.value === value);
}

/** Why a field does not accept a value, as one sentence; undefined if it does. */
export function fieldLiteralProblem(
  notebook: Notebook,
  stack: Stack,
  path: FieldPath,
  value: ParameterValue,
): string | undefined {
  const spec = fieldSpec(stack, path);
  if (acceptsLiteral(notebook, spec, value)) return undefined;
  return `${fieldLabel(stack, path)} must be ${expectedLiteral(notebook, spec)}, got ${JSON.stringify(value)}`;
}

/** What holds while an optional field is absent, where the notebook knows it: a sheet takes its material's density. */
export function impliedLiteral(notebook: Notebook, stack: Stack, path: FieldPath, values: Values): number | undefined {
  if (path.at(-1) !== 'density_kg_m3') return undefined;
  const layer = stack.layers[path[1] as number];
  const sheet = layer?.kind === 'leaf' ? layer.sheets[path[3] as number] : undefined;
  return sheet && sheetMaterial(notebook, fieldValue(sheet.material, values)).density_kg_m3;
}
