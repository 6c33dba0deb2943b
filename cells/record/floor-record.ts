/** Every number and choice that a floor was computed with, per scenario, in words: for paper, where no field can be opened. */
import { impliedLiteral } from '#src/notebook/field-literal.ts';
import { type FieldPath, fieldPaths, fieldSpec, getField } from '#src/notebook/field-path.ts';
import type { FieldSpec } from '#src/notebook/field-specs.ts';
import { presentLayers } from '#src/notebook/layer-presence.ts';
import { NONE } from '#src/notebook/material-lookup.ts';
import { OPTIONAL_CAVITY_FIELDS } from '#src/notebook/optional-cavity-fields.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Layer, Notebook, ParameterValue, Stack } from '#src/notebook/types.ts';
import { fieldValue, type Values, valuesOf } from '#src/notebook/values.ts';
import { formatQuantity, NO_VALUE } from '#src/quantities/format-quantity.ts';

export interface RecordGroup {
  readonly name: string;
  readonly rows: readonly RecordRow[];
}

export interface RecordRow {
  readonly label: string;
  /** One per scenario asked for. */
  readonly texts: readonly string[];
}

/** What is not stated but taken, as the usual value of its kind. */
const USUAL = ' (usual)';
const ABSENT = 'not in it';
const KINDS: Readonly<Record<Layer['kind'], string>> = { leaf: 'leaf', mat: 'mat', cavity: 'cavity' };
/** Fields that name a material. */
const NAMING: ReadonlySet<unknown> = new Set(['material', 'fill']);
/** What a cavity does not read without joists. */
const OF_JOISTS: ReadonlySet<unknown> = new Set(['joistWidth_m', 'joistSpacing_m']);

/** The floor's size and covering, its layers from the upper room down, and its gaps. */
export function floorRecord(notebook: Notebook, stack: Stack, scenarioIds: readonly string[]): readonly RecordGroup[] {
  const scenarios = scenarioIds.map((id) => ({
    values: valuesOf(notebook, id),
    present: presentLayers(resolveStack(notebook, id, stack.id)),
  }));
  const row = (path: FieldPath): RecordRow => ({
    label: rowLabel(stack, path),
    texts: scenarios.map(({ values, present }) => {
      const [where, index] = path;
      if (where === 'layers' && !present[index as number]) return ABSENT;
      return textOf(notebook, stack, path, values);
    }),
  });
  const of = (where: string, index: number) => fieldPaths(stack).filter(([w, i]) => w === where && i === index);
  return [
    {
      name: 'Floor',
      rows: fieldPaths(stack)
        .filter((path) => path.length === 1)
        .map(row),
    },
    ...stack.layers
      .map((layer, i) => ({
        name: `${layer.name} (${KINDS[layer.kind]})`,
        rows: layerPaths(layer, i, of('layers', i)).map(row).filter(saysSomething),
      }))
      .filter(({ rows }) => rows.length > 0),
    ...(stack.leaks ?? []).map((leak, i) => ({ name: `${leak.name} (${leak.kind})`, rows: of('leaks', i).map(row) })),
  ];
}

/** With what holds where optional fields are left empty; how sheets touch needs more than one of them. */
function layerPaths(layer: Layer, index: number, stated: readonly FieldPath[]): readonly FieldPath[] {
  switch (layer.kind) {
    case 'leaf': {
      const own = layer.sheets.length > 1 ? stated.filter((path) => path.at(-1) === 'contact') : [];
      const fields = ['material', 'thickness_m', 'density_kg_m3'];
      return [...layer.sheets.flatMap((_, k) => fields.map((f) => ['layers', index, 'sheets', k, f])), ...own];
    }
    case 'mat':
      return stated;
    case 'cavity': {
      const optional = new Set<unknown>(OPTIONAL_CAVITY_FIELDS);
      const must = stated.filter((path) => !optional.has(path.at(-1)));
      return [...must, ...OPTIONAL_CAVITY_FIELDS.map((name) => ['layers', index, name])];
    }
  }
}

/** "sheet 2: thickness" where a leaf has several. */
function rowLabel(stack: Stack, path: FieldPath): string {
  const { label } = fieldSpec(stack, path);
  const layer = path[0] === 'layers' ? stack.layers[path[1] as number] : undefined;
  const several = layer?.kind === 'leaf' && layer.sheets.length > 1 && path.length === 5;
  return several ? `sheet ${Number(path[3]) + 1}: ${label}` : label;
}

function textOf(notebook: Notebook, stack: Stack, path: FieldPath, values: Values): string {
  if (isUnread(stack, path, values)) return NAMING.has(path.at(-1)) ? ABSENT : NO_VALUE;
  const spec = fieldSpec(stack, path);
  const field = getField(stack, path);
  if (field !== undefined) return literalText(notebook, spec, fieldValue<ParameterValue>(field, values));
  const implied = impliedLiteral(notebook, stack, path, values);
  return implied === undefined ? NO_VALUE : `${literalText(notebook, spec, implied)}${USUAL}`;
}

function literalText(notebook: Notebook, spec: FieldSpec, value: ParameterValue): string {
  return spec.type === 'number'
    ? formatQuantity(Number(value), spec.quantity, notebook.units)
    : (spec.choices(notebook).find((choice) => choice.value === value)?.label ?? String(value));
}

/**
 * A sheet or further fill that is absent has no material, a cavity without joists no spacing of them, one without fill no
 * thickness of it.
 */
function isUnread(stack: Stack, path: FieldPath, values: Values): boolean {
  const layer = path[0] === 'layers' ? stack.layers[path[1] as number] : undefined;
  const name = path.at(-1);
  if (layer?.kind === 'leaf' && path.length === 5)
    return fieldValue(layer.sheets[path[3] as number]!.thickness_m, values) === 0;
  if (layer?.kind !== 'cavity') return false;
  if (path.length === 5) {
    const { fill, fillThickness_m } = layer.fillsAbove![path[3] as number]!;
    if (fieldValue(fillThickness_m, values) === 0) return true;
    return name === 'fillThickness_m' && fieldValue(fill, values) === NONE;
  }
  return (
    (OF_JOISTS.has(name) && fieldValue(layer.joists, values) === 'none') ||
    (name === 'fillThickness_m' && fieldValue(layer.fill, values) === NONE)
  );
}

function saysSomething({ texts }: RecordRow): boolean {
  return texts.some((text) => text !== NO_VALUE && text !== ABSENT);
}
