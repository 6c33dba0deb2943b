/** The list of stored notebooks, kept beside them so that showing it need not read them all. */
export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  /** When it came into this browser; for what was here before that was noted, when it was last saved then. */
  readonly addedAt_ms: number;
  readonly savedAt_ms: number;
  /** When the notebook was last saved to a file; null: never. */
  readonly exportedAt_ms: number | null;
}

export interface Shelf {
  readonly format: 'slab-and-spring-shelf';
  readonly version: 1;
  /** Latest saved first. */
  readonly entries: readonly ShelfEntry[];
  /** Id of the notebook that was open last. */
  readonly lastOpened: string | null;
}

export const EMPTY_SHELF: Shelf = { format: 'slab-and-spring-shelf', version: 1, entries: [], lastOpened: null };

/** The list as stored; undefined if it is not one (then it can be made anew from the records). */
export function readShelf(value: unknown): Shelf | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { format, version, entries, lastOpened } = value as Record<string, unknown>;
  if (format !== EMPTY_SHELF.format || version !== EMPTY_SHELF.version || !Array.isArray(entries)) return undefined;
  const read = entries.map(readEntry);
  if (read.some((entry) => entry === undefined)) return undefined;
  return {
    ...EMPTY_SHELF,
    entries: read as ShelfEntry[],
    lastOpened: typeof lastOpened === 'string' ? lastOpened : null,
  };
}

function readEntry(value: unknown): ShelfEntry | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const { id, title, addedAt_ms, savedAt_ms, exportedAt_ms } = value as Record<string, unknown>;
  if (typeof id !== 'string' || typeof title !== 'string' || typeof savedAt_ms !== 'number') return undefined;
  return {
    id,
    title,
    addedAt_ms: typeof addedAt_ms === 'number' ? addedAt_ms : savedAt_ms,
    savedAt_ms,
    exportedAt_ms: typeof exportedAt_ms === 'number' ? exportedAt_ms : null,
  };
}

export function withEntry(shelf: Shelf, entry: ShelfEntry): Shelf {
  const others = shelf.entries.filter((e) => e.id !== entry.id);
  return { ...shelf, entries: [entry, ...others].toSorted((a, b) => b.savedAt_ms - a.savedAt_ms) };
}

export function withoutEntry(shelf: Shelf, id: string): Shelf {
  return {
    ...shelf,
    entries: shelf.entries.filter((e) => e.id !== id),
    lastOpened: shelf.lastOpened === id ? null : shelf.lastOpened,
  };
}
