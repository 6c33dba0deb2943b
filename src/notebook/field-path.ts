/**
 * Where a field stands in a stack, from the stack's own object: `['length_m']`, `['layers', 2, 'depth_m']`,
 * `['layers', 0, 'sheets', 1, 'thickness_m']`, `['layers', 1, 'fillsAbove', 0, 'fill']` or `['leaks', 0, 'width_m']`, the same
 * steps as in the file.
 */
import {
  FILLS_ABOVE_FIELDS,
  type FieldSpec,
  LAYER_FIELDS,
  LEAK_FIELDS,
  SHEET_FIELDS,
  STACK_FIELDS,
} from './field-specs.ts';
import { replacedAt } from './lists.ts';
import type { Field, Layer, ParameterValue, Stack, StackLeak } from './types.ts';

export type FieldPath = readonly (string | number)[];

/** What one object of a stack holds, and the fields it may hold. */
interface Place {
  readonly holder: Readonly<Record<string, unknown>>;
  readonly specs: Readonly<Record<string, FieldSpec>>;
  /** In words, for labels and messages. */
  readonly name: string;
}

export function fieldSpec(stack: Stack, path: FieldPath): FieldSpec {
  const { specs } = placeOf(stack, path);
  const name = String(path.at(-1));
  if (!Object.hasOwn(specs, name)) throw unknownField(stack, path);
  return specs[name]!;
}

/** Undefined where an optional field is absent. */
export function getField(stack: Stack, path: FieldPath): Field<ParameterValue> | undefined {
  fieldSpec(stack, path);
  return placeOf(stack, path).holder[String(path.at(-1))] as Field<ParameterValue> | undefined;
}

/** The field in words, with what it belongs to: "slab thickness", "ceiling fill". */
export function fieldLabel(stack: Stack, path: FieldPath): string {
  const { label } = fieldSpec(stack, path);
  return joinedName(placeOf(stack, path).name, label);
}

/** "joists" and "joist spacing" are "joist spacing": a word that ends the one and begins the other is said once. */
function joinedName(name: string, label: string): string {
  const words = name.split(' ');
  const singular = (word: string) => word.toLowerCase().replace(/s$/, '');
  const repeated = singular(words.at(-1) ?? '') === singular(label.split(' ')[0]!);
  return repeated ? [...words.slice(0, -1), label].join(' ') : `${name} ${label}`;
}

/** Puts a field in; undefined takes an optional one out. */
export function withField(stack: Stack, path: FieldPath, field: Field<ParameterValue> | undefined): Stack {
  const name = String(path.at(-1));
  if (field === undefined && !fieldSpec(stack, path).optional)
    throw new RangeError(`${name} must have a value, got none (stack "${stack.id}", ${path.join('/')})`);
  if (path.length === 1) return withEntry(stack, name, field);
  const index = path[1] as number;
  const leak = leakAt(stack, path);
  if (leak) return { ...stack, leaks: replacedAt(stack.leaks!, index, withEntry(leak, name, field)) };
  const layer = layerAt(stack, path);
  const next = path.length === 3 ? withEntry(layer, name, field) : withItemEntry(stack, layer, path, field);
  return { ...stack, layers: replacedAt(stack.layers, index, next) };
}

/** The path of every field a stack holds, from the upper room down. */
export function fieldPaths(stack: Stack): readonly FieldPath[] {
  return [
    ...Object.keys(STACK_FIELDS).map((name) => [name]),
    ...stack.layers.flatMap((layer, i) => layerPaths(layer).map((path) => ['layers', i, ...path])),
    ...(stack.leaks ?? []).flatMap(({ kind }, i) => Object.keys(LEAK_FIELDS[kind]).map((name) => ['leaks', i, name])),
  ];
}

function layerPaths(layer: Layer): readonly FieldPath[] {
  const own = present(layer, LAYER_FIELDS[layer.kind]);
  switch (layer.kind) {
    case 'leaf':
      return [...own, ...layer.sheets.flatMap((sheet, i) => within(['sheets', i], present(sheet, SHEET_FIELDS)))];
    case 'mat':
      return own;
    case 'cavity': {
      const above = layer.fillsAbove ?? [];
      return [...own, ...above.flatMap((fill, i) => within(['fillsAbove', i], present(fill, FILLS_ABOVE_FIELDS[i]!)))];
    }
  }
}

function within(place: FieldPath, paths: readonly FieldPath[]): readonly FieldPath[] {
  return paths.map((path) => [...place, ...path]);
}

function present(holder: object, specs: Readonly<Record<string, FieldSpec>>): readonly FieldPath[] {
  return Object.keys(specs)
    .filter((name) => (holder as Record<string, unknown>)[name] !== undefined)
    .map((name) => [name]);
}

function placeOf(stack: Stack, path: FieldPath): Place {
  if (path.length === 1) return place(stack, STACK_FIELDS, 'floor');
  const leak = leakAt(stack, path);
  if (leak) return place(leak, LEAK_FIELDS[leak.kind], leak.name);
  const layer = layerAt(stack, path);
  if (path.length === 3) return place(layer, LAYER_FIELDS[layer.kind], layer.name);
  const item = itemAt(stack, layer, path);
  const index = path[3] as number;
  if (layer.kind !== 'leaf') return place(item, FILLS_ABOVE_FIELDS[index]!, layer.name);
  return place(item, SHEET_FIELDS, layer.sheets.length > 1 ? `${layer.name} sheet ${index + 1}` : layer.name);
}

function place(holder: object, specs: Readonly<Record<string, FieldSpec>>, name: string): Place {
  return { holder: holder as Readonly<Record<string, unknown>>, specs, name };
}

function layerAt(stack: Stack, path: FieldPath): Layer {
  const layer = path[0] === 'layers' && typeof path[1] === 'number' ? stack.layers[path[1]] : undefined;
  if (!layer || (path.length !== 3 && path.length !== 5)) throw unknownField(stack, path);
  return layer;
}

function leakAt(stack: Stack, path: FieldPath): StackLeak | undefined {
  return path[0] === 'leaks' && path.length === 3 && typeof path[1] === 'number' ? stack.leaks?.[path[1]] : undefined;
}

/** A sheet of a leaf, or a further fill of a cavity. */
function itemAt(stack: Stack, layer: Layer, path: FieldPath): object {
  const [, , list, index] = path;
  const item = typeof index === 'number' ? listOf(layer, list)?.[index] : undefined;
  if (!item) throw unknownField(stack, path);
  return item;
}

function listOf(layer: Layer, name: FieldPath[number] | undefined): readonly object[] | undefined {
  if (layer.kind === 'leaf') return name === 'sheets' ? layer.sheets : undefined;
  return layer.kind === 'cavity' && name === 'fillsAbove' ? layer.fillsAbove : undefined;
}

function withItemEntry(stack: Stack, layer: Layer, path: FieldPath, field: Field<ParameterValue> | undefined): Layer {
  const item = withEntry(itemAt(stack, layer, path), String(path[4]), field);
  return { ...layer, [String(path[2])]: replacedAt(listOf(layer, path[2])!, path[3] as number, item) } as Layer;
}

function withEntry<T extends object>(holder: T, name: string, field: Field<ParameterValue> | undefined): T {
  if (field !== undefined) return { ...holder, [name]: field };
  const { [name as keyof T]: _removed, ...rest } = holder;
  return rest as T;
}

function unknownField(stack: Stack, path: FieldPath): RangeError {
  return new RangeError(`path must name a field of stack "${stack.id}", got "${path.join('/')}"`);
}
