import type { Construction } from './construction.ts';

/** Where a number stands in a construction: `length_m`, or `layers/0/sheets/1/thickness_m`. */
export type NumberPath = string;

/** @throws RangeError for a path that names no number. */
export function numberAt(construction: Construction, path: NumberPath): number {
  const value = valueAt(construction, path);
  if (typeof value !== 'number') throw new RangeError(`path must name a number of the construction, got "${path}"`);
  return value;
}

/** Whether the construction states a number at `path`. */
export function isNumberAt(construction: Construction, path: NumberPath): boolean {
  return typeof valueAt(construction, path) === 'number';
}

function valueAt(construction: Construction, path: NumberPath): unknown {
  let value: unknown = construction;
  for (const key of path.split('/')) {
    value =
      typeof value === 'object' && value !== null && Object.hasOwn(value, key) ? Reflect.get(value, key) : undefined;
  }
  return value;
}

/** The same construction with another number at `path`. */
export function withNumber(construction: Construction, path: NumberPath, value: number): Construction {
  return replaced(construction, path.split('/'), value) as Construction;
}

function replaced(whole: unknown, [key, ...rest]: readonly string[], value: number): unknown {
  if (key === undefined) return value;
  if (Array.isArray(whole)) return whole.map((inner, i) => (String(i) === key ? replaced(inner, rest, value) : inner));
  return { ...(whole as object), [key]: replaced(Reflect.get(whole as object, key), rest, value) };
}
