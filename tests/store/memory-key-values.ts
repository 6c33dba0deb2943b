import type { KeyValues } from '#src/store/key-values.ts';

/** Storage in memory, cloning what goes in and out as the browser's does. `entries` may be looked at and spoiled. */
export function memoryKeyValues(entries = new Map<string, unknown>()): KeyValues {
  return {
    read: async (keys) => keys.map((key) => structuredClone(entries.get(key))),
    keys: async () => [...entries.keys()],
    update: async (keys, change) => {
      const next = change(keys.map((key) => structuredClone(entries.get(key))));
      const copies = structuredClone(next);
      copies?.forEach((value, i) => {
        if (value === undefined) entries.delete(keys[i]!);
        else entries.set(keys[i]!, value);
      });
    },
  };
}

/** Storage that fails at everything, with a value of choice. */
export function failingKeyValues(error: unknown): KeyValues {
  const fail = () => Promise.reject(error);
  return { read: fail, keys: fail, update: fail };
}
