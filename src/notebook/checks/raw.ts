/**
 * Looking into parsed JSON whose shape is not known to be right. What has the wrong type counts as absent here; the
 * schema reports it.
 */
import type { Path, Problem } from '../problem.ts';

/** A check of what one object cannot know by itself; runs whatever else is wrong with the file. */
export type Check = (notebook: RawObject) => readonly Problem[];

export type RawObject = Readonly<Record<string, unknown>>;

export interface Entry {
  readonly item: RawObject;
  readonly path: Path;
}

export function asObject(value: unknown): RawObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as RawObject) : {};
}

export function asList(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** An own entry; names that every object inherits give nothing. */
export function own(object: RawObject, key: string): unknown {
  return Object.hasOwn(object, key) ? object[key] : undefined;
}

/** The objects of a list, with their paths. */
export function entriesOf(holder: RawObject, key: string, path: Path = []): readonly Entry[] {
  return asList(own(holder, key)).map((item, i) => ({ item: asObject(item), path: [...path, key, i] }));
}

export function isText(value: unknown): value is string {
  return typeof value === 'string';
}

export function isNumber(value: unknown): value is number {
  return typeof value === 'number' && !Number.isNaN(value);
}

/** The texts that stand under one key of the objects of a list. */
export function textsOf(entries: readonly Entry[], key: string): ReadonlySet<string> {
  return new Set(entries.map(({ item }) => own(item, key)).filter(isText));
}

/** The objects of a list by the text under one key; of several with the same text the first. */
export function byText(entries: readonly Entry[], key: string): ReadonlyMap<string, RawObject> {
  const found = new Map<string, RawObject>();
  for (const { item } of entries) {
    const text = own(item, key);
    if (isText(text) && !found.has(text)) found.set(text, item);
  }
  return found;
}
