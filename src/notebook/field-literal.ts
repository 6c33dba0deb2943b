import { type FieldPath, fieldLabel, fieldSpec, withField } from './field-path.ts';
import type { FieldSpec } from './field-specs.ts';
import type { OptionalCavityField } from './optional-cavity-fields.ts';
import { resolveStackWith } from './resolve.ts';
import type { Notebook, ParameterValue, Stack } from './types.ts';
import { usualSupport } from './usual-support.ts';
import type { Values } from './values.ts';

/** What a field accepts, in words. */
function expectedLiteral(notebook: Notebook, spec: FieldSpec): string {
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

/**
 * What holds while an optional field is absent: a sheet has its material's density, a support what is usual for its
 * kind. Undefined for fields that are never absent, and where the engine does not read the field.
 */
export function impliedLiteral(notebook: Notebook, stack: Stack, path: FieldPath, values: Values): number | undefined {
  const name = path.at(-1) as OptionalCavityField | 'density_kg_m3';
  if (!fieldSpec(stack, path).optional) return undefined;
  const without = { ...notebook, stacks: [withField(stack, path, undefined)] };
  const construction = resolveStackWith(without, values, stack.id);
  const index = path[1] as number;
  const layer = construction.layers[index];
  if (layer?.kind === 'leaf') return layer.sheets[path[3] as number]?.density_kg_m3;
  return name === 'density_kg_m3' ? undefined : usualSupport(construction, index)[name];
}
