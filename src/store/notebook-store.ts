/**
 * The notebooks that this browser keeps. Every change of a notebook and of the list of notebooks is one atomic step;
 * every answer is a `StoreResult`. What is stored is read with the care given to a stranger's file, and a record that
 * cannot be read is reported and kept.
 */
import { type History, startHistory } from '#src/notebook/history.ts';
import type { Notebook } from '#src/notebook/types.ts';
import type { KeyValues } from './key-values.ts';
import { type NotebookRecord, recordOf, type StoredNotebook } from './notebook-record.ts';
import { entryOf, type RemovedEntry, removedEntryOf } from './record-entry.ts';
import { EMPTY_SHELF, readShelf, type Shelf, type ShelfEntry, withEntry, withoutEntry } from './shelf.ts';
import { attempted, refused, type StoreResult, succeeded } from './store-result.ts';

export interface NotebookStore {
  /** Latest saved first. */
  readonly list: () => Promise<StoreResult<readonly ShelfEntry[]>>;
  readonly lastOpened: () => Promise<StoreResult<string | null>>;
  readonly load: (id: string) => Promise<StoreResult<StoredNotebook>>;
  /** Stores a notebook that is new here; 'exists' if one of its id is there, which then stays as it is. */
  readonly add: (notebook: Notebook) => Promise<StoreResult<number>>;
  /**
   * Stores the present notebook and its nearest steps of undo; gives the time it was saved at. With `basedOn_ms`, the
   * time that the caller last loaded or saved it at, a save by anybody else in between is a 'conflict'.
   */
  readonly save: (history: History, basedOn_ms?: number) => Promise<StoreResult<number>>;
  /** Puts a notebook in the bin. */
  readonly remove: (id: string) => Promise<StoreResult<void>>;
  /** Takes it out again, as it was. */
  readonly restore: (id: string) => Promise<StoreResult<void>>;
  readonly listRemoved: () => Promise<StoreResult<readonly RemovedEntry[]>>;
  /** Empties the bin of what was removed before a time. */
  readonly forgetRemovedBefore: (time_ms: number) => Promise<StoreResult<void>>;
  readonly markOpened: (id: string) => Promise<StoreResult<void>>;
  /** Notes that a notebook was saved to a file just now. */
  readonly markExported: (id: string) => Promise<StoreResult<void>>;
  /** What is stored under an id, as JSON, whether or not it can be read: to rescue a damaged notebook. */
  readonly rawText: (id: string) => Promise<StoreResult<string>>;
}

const SHELF = 'shelf';
const recordKey = (id: string) => `notebook:${id}`;
const binKey = (id: string) => `removed:${id}`;
const idsOf = (keys: readonly string[], prefix: string) =>
  keys.filter((key) => key.startsWith(prefix)).map((key) => key.slice(prefix.length));

export function notebookStore(values: KeyValues, now_ms: () => number): NotebookStore {
  async function shelf(): Promise<Shelf> {
    const [stored] = await values.read([SHELF]);
    return readShelf(stored) ?? (stored === undefined ? EMPTY_SHELF : await rebuiltShelf());
  }

  /** The list made anew from the records, for one that got damaged. */
  async function rebuiltShelf(): Promise<Shelf> {
    const ids = idsOf(await values.keys(), recordKey(''));
    const records = await values.read(ids.map(recordKey));
    const rebuilt = records.reduce<Shelf>((made, record, i) => withEntry(made, entryOf(ids[i]!, record)), EMPTY_SHELF);
    await values.update([SHELF], () => [rebuilt]);
    return rebuilt;
  }

  async function changeShelf(change: (shelf: Shelf) => Shelf): Promise<StoreResult<void>> {
    await shelf();
    await values.update([SHELF], ([stored]) => [change(readShelf(stored) ?? EMPTY_SHELF)]);
    return succeeded(undefined);
  }

  function write(history: History, mayReplace: (record: unknown) => StoreResult<void>): Promise<StoreResult<number>> {
    return attempted(async () => {
      // Fails here, before anything is written, if the notebook holds something that cannot be stored.
      const copy = structuredClone(history);
      const { id, title } = copy.present;
      await shelf();
      let result: StoreResult<number> = refused('failed', 'The notebook was not stored.');
      await values.update([recordKey(id), SHELF], ([old, stored]) => {
        const allowed = mayReplace(old);
        if (!allowed.ok) {
          result = allowed;
          return undefined;
        }
        const before = entryOf(id, old);
        const savedAt_ms = Math.max(now_ms(), before.savedAt_ms + 1);
        const addedAt_ms = old === undefined ? savedAt_ms : before.addedAt_ms;
        const times = { addedAt_ms, savedAt_ms, exportedAt_ms: before.exportedAt_ms };
        result = succeeded(savedAt_ms);
        return [recordOf(copy, times), withEntry(readShelf(stored) ?? EMPTY_SHELF, { id, title, ...times })];
      });
      return result;
    });
  }

  /** Moves a record between the shelf and the bin. */
  function move(
    id: string,
    [from, to]: readonly [string, string],
    change: (shelf: Shelf, record: object) => readonly [Shelf, object],
  ): Promise<StoreResult<void>> {
    return attempted(async () => {
      await shelf();
      let result: StoreResult<void> = missing(id);
      await values.update([from, to, SHELF], ([record, there, stored]) => {
        if (typeof record !== 'object' || record === null) return undefined;
        if (there !== undefined && to === recordKey(id)) {
          result = alreadyThere();
          return undefined;
        }
        const [nextShelf, nextRecord] = change(readShelf(stored) ?? EMPTY_SHELF, record);
        result = succeeded(undefined);
        return [undefined, nextRecord, nextShelf];
      });
      return result;
    });
  }

  return {
    list: () => attempted(async () => succeeded((await shelf()).entries)),
    lastOpened: () => attempted(async () => succeeded((await shelf()).lastOpened)),
    load: (id) =>
      attempted(async () => {
        const [record] = await values.read([recordKey(id)]);
        if (record === undefined) return missing(id);
        // A file of its own: on a first visit nothing is stored, and the first curve need not wait for the reader.
        const reader = await import('./read-record.ts').catch(() => undefined);
        return reader ? reader.readRecord(record) : withoutReader();
      }),
    add: (notebook) =>
      write(startHistory(notebook), (old) => (old === undefined ? succeeded(undefined) : alreadyThere())),
    save: (history, basedOn_ms) =>
      write(history, (old) =>
        basedOn_ms === undefined || entryOf('', old).savedAt_ms === basedOn_ms
          ? succeeded(undefined)
          : refused('conflict', 'This notebook was saved elsewhere in the meantime. Nothing was overwritten.'),
      ),
    remove: (id) =>
      move(id, [recordKey(id), binKey(id)], (list, record) => [
        withoutEntry(list, id),
        { ...record, removedAt_ms: now_ms() },
      ]),
    restore: (id) =>
      move(id, [binKey(id), recordKey(id)], (list, record) => {
        const { removedAt_ms: _gone, ...kept } = record as NotebookRecord;
        return [withEntry(list, entryOf(id, kept)), kept];
      }),
    listRemoved: () =>
      attempted(async () => {
        const ids = idsOf(await values.keys(), binKey(''));
        const records = await values.read(ids.map(binKey));
        return succeeded(records.map((record, i) => removedEntryOf(ids[i]!, record)));
      }),
    forgetRemovedBefore: (time_ms) =>
      attempted(async () => {
        const keys = idsOf(await values.keys(), binKey('')).map(binKey);
        const isOld = (record: unknown) => removedEntryOf('', record).removedAt_ms < time_ms;
        await values.update(keys, (records) => records.map((record) => (isOld(record) ? undefined : record)));
        return succeeded(undefined);
      }),
    markOpened: (id) => attempted(() => changeShelf((list) => ({ ...list, lastOpened: id }))),
    markExported: (id) =>
      attempted(async () => {
        await shelf();
        let result: StoreResult<void> = missing(id);
        await values.update([recordKey(id), SHELF], ([record, stored]) => {
          if (typeof record !== 'object' || record === null) return undefined;
          const next = { ...record, exportedAt_ms: now_ms() };
          result = succeeded(undefined);
          return [next, withEntry(readShelf(stored) ?? EMPTY_SHELF, entryOf(id, next))];
        });
        return result;
      }),
    rawText: (id) =>
      attempted(async () => {
        const [record] = await values.read([recordKey(id)]);
        return record === undefined ? missing(id) : succeeded(JSON.stringify(record, null, 2));
      }),
  };
}

function missing(id: string): StoreResult<never> {
  return refused('missing', `There is no stored notebook "${id}".`);
}

function withoutReader(): StoreResult<never> {
  return refused('failed', 'A part of this page could not be loaded, so the stored notebook was not read. Reload it.');
}

function alreadyThere(): StoreResult<never> {
  return refused('exists', 'There is a notebook of this id already.');
}
