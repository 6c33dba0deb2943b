/** Immutable edits of lists. Indices outside the list are a RangeError. */

export function insertedAt<T>(list: readonly T[], index: number, ...items: readonly T[]): readonly T[] {
  checkIndex(index, list.length);
  return [...list.slice(0, index), ...items, ...list.slice(index)];
}

export function removedAt<T>(list: readonly T[], index: number, count = 1): readonly T[] {
  checkIndex(index, list.length - 1);
  return [...list.slice(0, index), ...list.slice(index + count)];
}

export function replacedAt<T>(list: readonly T[], index: number, item: T): readonly T[] {
  checkIndex(index, list.length - 1);
  return list.map((old, i) => (i === index ? item : old));
}

/** `to` is the index the item has afterwards. */
export function movedTo<T>(list: readonly T[], from: number, to: number): readonly T[] {
  checkIndex(from, list.length - 1);
  return insertedAt(removedAt(list, from), to, list[from]!);
}

/** Replaces each item for which `test` holds; an untouched list keeps its identity. */
export function replacedWhere<T>(list: readonly T[], test: (item: T) => boolean, change: (item: T) => T): readonly T[] {
  const next = list.map((item) => (test(item) ? change(item) : item));
  return next.every((item, i) => item === list[i]) ? list : next;
}

function checkIndex(index: number, last: number): void {
  if (!Number.isInteger(index) || index < 0 || index > last)
    throw new RangeError(`index must be a whole number from 0 to ${last}, got ${index}`);
}
