/**
 * Keys and values that survive a reload. The one thing this asks of storage: several keys read and written in a single
 * step, so that a list and what it lists never disagree.
 */
import { createStore, promisifyRequest, type UseStore } from 'idb-keyval';

export interface KeyValues {
  readonly read: (keys: readonly string[]) => Promise<readonly unknown[]>;
  /**
   * Reads keys, computes new values from them and writes those, all or nothing. `change` returns one value for each
   * key, undefined for "no such key", or undefined to write nothing. It must not wait for anything.
   */
  readonly update: (
    keys: readonly string[],
    change: (values: readonly unknown[]) => readonly unknown[] | undefined,
  ) => Promise<void>;
  readonly keys: () => Promise<readonly string[]>;
}

/** IndexedDB through idb-keyval, with one transaction for each call. */
export function browserKeyValues(database: string): KeyValues {
  const use = reopening(() => createStore(database, 'entries'));
  return {
    read: (keys) => use('readonly', (entries) => Promise.all(keys.map((key) => promisifyRequest(entries.get(key))))),
    keys: async () =>
      (await use('readonly', (entries) => promisifyRequest(entries.getAllKeys()))).map((key) => String(key)),
    update: (keys, change) => use('readwrite', (entries) => updated(entries, keys, change)),
  };
}

/** Browsers close the connection at times (after sleep, for one) without saying so: then it is opened once more. */
function reopening(open: () => UseStore): UseStore {
  let store = open();
  return async (mode, callback) => {
    try {
      return await store(mode, callback);
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'InvalidStateError')) throw error;
      store = open();
      return await store(mode, callback);
    }
  };
}

async function updated(
  entries: IDBObjectStore,
  keys: readonly string[],
  change: Parameters<KeyValues['update']>[1],
): Promise<void> {
  const { transaction } = entries;
  // Waiting for requests of the transaction, and for nothing else, keeps it open.
  const values = await Promise.all(keys.map((key) => promisifyRequest<unknown>(entries.get(key))));
  try {
    change(values)?.forEach((value, i) => {
      if (value === undefined) entries.delete(keys[i]!);
      else entries.put(value, keys[i]!);
    });
  } catch (error) {
    // A value that cannot be cloned fails at `put`; what was put before it must not stay.
    transaction.abort();
    throw error;
  }
  await promisifyRequest(transaction);
}
