import { browserKeyValues } from './key-values.ts';
import { type NotebookStore, notebookStore } from './notebook-store.ts';

const DATABASE = 'slab-and-spring';

/** The store of this browser. Opening never fails; what fails later says so in its result. */
export function openNotebookStore({ database = DATABASE, now_ms = Date.now } = {}): NotebookStore {
  return notebookStore(browserKeyValues(database), now_ms);
}
