/** Files in and out: what people open and save, the examples that come with the page, what a damaged record holds. */

import { download } from '#cells/shared/download.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { Notebook } from '#src/notebook/types.ts';
import type { NotebookStore } from '#src/store/notebook-store.ts';
import type { Notice } from './page-notices.ts';
import type { Session } from './session.ts';
import { refusedFileNotice } from './trouble-words.ts';

export class FileDesk {
  readonly #session: Session;
  readonly #store: NotebookStore;
  readonly #notify: (notice: Notice) => void;
  readonly #dismiss: (id: Notice['id']) => void;

  constructor(
    session: Session,
    store: NotebookStore,
    notify: (notice: Notice) => void,
    dismiss: (id: Notice['id']) => void,
  ) {
    this.#session = session;
    this.#store = store;
    this.#notify = notify;
    this.#dismiss = dismiss;
  }

  async open(file: File): Promise<void> {
    try {
      const { readNotebookFile } = await import('./notebook-files.ts');
      const reading = await readNotebookFile(file);
      if (!reading.ok) {
        this.#notify(refusedFileNotice(file.name, reading.problems));
        return;
      }
      // What was said of an earlier file is over; before this one is open, which may bring a notice of its own.
      this.#dismiss('file');
      await this.#session.openFile(reading.notebook);
    } catch (error) {
      this.#tell(`“${file.name}” could not be read: ${messageOf(error)}.`);
    }
  }

  /**
   * The examples come with the page and are checked before it ships, so that a first visit needs no reader of files.
   *
   * @returns whether it is open now.
   */
  async openDemo(url: string): Promise<boolean> {
    try {
      const response = await fetch(url);
      if (!response.ok) throw new Error(`the server answered ${response.status}`);
      const notebook = (await response.json()) as Notebook;
      this.#dismiss('file');
      await this.#session.openNew(notebook);
      return true;
    } catch (error) {
      this.#tell(`The example could not be opened: ${messageOf(error)}.`);
      return false;
    }
  }

  async save(): Promise<void> {
    const { state } = this.#session;
    if (!state) return;
    try {
      const { saveNotebookFile } = await import('./notebook-files.ts');
      saveNotebookFile(state.history.present, new Date());
      this.#dismiss('save');
      await this.#session.exported();
    } catch (error) {
      this.#tell(`The file could not be saved: ${messageOf(error)}.`, 'save');
    }
  }

  /** Hands out what is stored under an id as it is, readable or not. */
  async rescue(id: string): Promise<void> {
    const stored = await this.#store.rawText(id);
    if (stored.ok) download(new Blob([stored.value], { type: 'application/json' }), `rescued-${id}.json`);
    else this.#notify({ id: 'store', tone: 'problem', text: stored.problem.message });
  }

  #tell(text: string, id: Notice['id'] = 'file'): void {
    this.#notify({ id, tone: 'problem', text });
  }
}
