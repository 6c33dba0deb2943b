import type { ShelfEntry } from '#src/store/shelf.ts';

/**
 * A number for every notebook whose title another one has too, by its id: in the order in which they came into this
 * browser, so that a later one does not change what an earlier one is called. Titles, and files, stay as they are.
 */
export function numbersOfSameTitles(entries: readonly ShelfEntry[]): ReadonlyMap<string, number> {
  const alike = new Map<string, readonly string[]>();
  for (const { id, title } of entries.toSorted((a, b) => a.addedAt_ms - b.addedAt_ms))
    alike.set(title, [...(alike.get(title) ?? []), id]);
  const several = [...alike.values()].filter(({ length }) => length > 1);
  return new Map(several.flatMap((ids) => ids.map((id, i) => [id, i + 1] as const)));
}
