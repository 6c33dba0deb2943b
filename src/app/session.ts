/**
 * What is open on the page: one notebook with its history, where it is kept, and whether this tab may write it. Knows
 * the store, but no element.
 */

import type { Edit } from '#cells/contract.ts';
import { type History, record, redo, startHistory, undo } from '#src/notebook/history.ts';
import type { Notebook } from '#src/notebook/types.ts';
import type { ClaimState, NotebookClaim } from '#src/store/notebook-claim.ts';
import type { StoredNotebook } from '#src/store/notebook-record.ts';
import type { NotebookStore } from '#src/store/notebook-store.ts';
import type { ShelfEntry } from '#src/store/shelf.ts';
import type { StoreNotice, StoreNotices } from '#src/store/store-notices.ts';
import type { StoreProblem } from '#src/store/store-result.ts';
import { Autosave } from './autosave.ts';
import { duplicateNotebook } from './duplicate-notebook.ts';
import type { ApplyEdit } from './edit-check.ts';
import { freshName } from './fresh-scenario.ts';
import { sameContent } from './same-content.ts';

export interface SessionState {
  readonly history: History;
  /** 'reading': another tab writes this notebook. 'memory': the browser stores nothing, only files last. */
  readonly access: 'writing' | 'reading' | 'memory';
  readonly savedAt_ms: number | null;
  readonly exportedAt_ms: number | null;
}

/** What the session cannot settle by itself. */
export type SessionTrouble =
  | { readonly kind: 'store'; readonly problem: StoreProblem }
  /** Somebody else saved the notebook; what was changed here is not stored. */
  | { readonly kind: 'conflict'; readonly problem: StoreProblem }
  | { readonly kind: 'damaged'; readonly id: string; readonly problem: StoreProblem }
  /** What was opened, a file or an example, is here already with other content: it has this title now. */
  | { readonly kind: 'opened-as-copy'; readonly title: string }
  /** An edit would have made a notebook that cannot be stored or read again. */
  | { readonly kind: 'refused-edit'; readonly label: string; readonly message: string };

export interface SessionOptions {
  readonly store: NotebookStore;
  readonly claim: (id: string, onChange: (state: ClaimState) => void) => Promise<NotebookClaim>;
  readonly notices: (hear: (notice: StoreNotice) => void) => StoreNotices;
  readonly now_ms: () => number;
  readonly random: () => number;
  readonly applyEdit: ApplyEdit;
  /** Whether a notebook is one of the page's examples as it came, to be had again at any time. */
  readonly isExample: (notebook: Notebook) => Promise<boolean>;
  readonly onChange: (state: SessionState) => void;
  readonly onShelf: (entries: readonly ShelfEntry[], problem: string) => void;
  readonly onTrouble: (trouble: SessionTrouble) => void;
}

export class Session {
  readonly #options: SessionOptions;
  readonly #notices: StoreNotices;
  #state: SessionState | undefined;
  #claim: NotebookClaim | undefined;
  #autosave: Autosave | undefined;

  constructor(options: SessionOptions) {
    this.#options = options;
    this.#notices = options.notices((notice) => void this.#onNotice(notice));
  }

  get state(): SessionState | undefined {
    return this.#state;
  }

  /** The notebook asked for, or else the one that was open last in any tab, if it can still be opened. */
  async openLast(asked?: string): Promise<boolean> {
    const { store, onTrouble } = this.#options;
    const listed = await store.list();
    if (listed.ok && listed.value.some(({ id }) => id === asked)) return this.open(asked!);
    const last = await store.lastOpened();
    if (!last.ok) onTrouble({ kind: 'store', problem: last.problem });
    return last.ok && last.value !== null && (await this.open(last.value));
  }

  /** @returns whether it is open now; if not, `onTrouble` has said why and what was open stays. */
  async open(id: string): Promise<boolean> {
    const { store, onTrouble } = this.#options;
    await this.flush();
    const readable = await store.load(id);
    if (!readable.ok) {
      onTrouble(
        readable.problem.kind === 'damaged'
          ? { kind: 'damaged', id, problem: readable.problem }
          : { kind: 'store', problem: readable.problem },
      );
      return false;
    }
    await this.#openKnown(id, readable.value);
    return true;
  }

  /** Takes a notebook in that is not stored yet: a file, a demo, a new one. One of the same id and content is opened. */
  async openNew(notebook: Notebook): Promise<void> {
    const { store, onTrouble } = this.#options;
    await this.flush();
    const added = await store.add(notebook);
    if (added.ok) {
      this.#notices.tell({ kind: 'saved', id: notebook.id, savedAt_ms: added.value });
      const known = { history: startHistory(notebook), savedAt_ms: added.value, exportedAt_ms: null };
      await this.#openKnown(notebook.id, known, true);
      return;
    }
    if (added.problem.kind !== 'exists') {
      await this.#openInMemory(notebook);
      onTrouble({ kind: 'store', problem: added.problem });
      return;
    }
    const here = await store.load(notebook.id);
    if (here.ok && (await sameContent(here.value.history.present, notebook))) {
      await this.open(notebook.id);
      return;
    }
    if (here.ok && (await this.#isUntouchedExample(here.value.history))) {
      await this.open(notebook.id);
      if (this.#state?.access === 'writing') {
        this.#change((history) => record(history, notebook, 'file opened'));
        return;
      }
    }
    const title = await this.#freeTitle(notebook.title);
    await this.openNew(duplicateNotebook(notebook, title, this.#options.random));
    onTrouble({ kind: 'opened-as-copy', title });
  }

  /** The same for a notebook that came from a file: a file holds it as it is now. */
  async openFile(notebook: Notebook): Promise<void> {
    await this.openNew(notebook);
    const present = this.#state?.history.present;
    // A copy has another id and title; what could not be opened left something else in sight.
    if (present && (await sameContent({ ...present, id: notebook.id, title: notebook.title }, notebook)))
      await this.exported();
  }

  /** An example that nobody edited gives way to a file made from it, and undo brings it back. */
  async #isUntouchedExample({ present, past, future }: History): Promise<boolean> {
    return past.length === 0 && future.length === 0 && (await this.#options.isExample(present));
  }

  /** Goes on in the units of the notebook that is open. */
  async create(): Promise<void> {
    const { emptyNotebook } = await import('./new-notebook.ts');
    const notebook = emptyNotebook(this.#options.random, this.#state?.history.present.units);
    await this.openNew({ ...notebook, title: await this.#freeTitle(notebook.title) });
  }

  async duplicate(id: string): Promise<void> {
    await this.flush();
    const { store, random, onTrouble } = this.#options;
    const loaded = await store.load(id);
    if (!loaded.ok) {
      onTrouble({ kind: 'store', problem: loaded.problem });
      return;
    }
    const { present } = loaded.value.history;
    await this.openNew(duplicateNotebook(present, await this.#freeTitle(`${present.title}, copy`), random));
  }

  /** What stands on the page goes on as a notebook of its own: for a tab that may only read, and after a conflict. */
  async workOnCopy(): Promise<void> {
    const { random } = this.#options;
    if (!this.#state) return;
    this.#autosave?.stop();
    const { present } = this.#state.history;
    await this.openNew(duplicateNotebook(present, await this.#freeTitle(`${present.title}, copy`), random));
  }

  /** Makes this tab the one that writes; the other one turns to reading. */
  takeOver(): void {
    this.#claim?.takeOver();
  }

  /** @returns whether it is in the bin now. What was open and is removed makes room for another one, or a new one. */
  async remove(id: string): Promise<boolean> {
    const { store, onTrouble } = this.#options;
    const isOpen = this.#state?.history.present.id === id;
    if (isOpen) await this.flush();
    const removed = await store.remove(id);
    if (!removed.ok) {
      onTrouble({ kind: 'store', problem: removed.problem });
      return false;
    }
    this.#notices.tell({ kind: 'removed', id });
    if (isOpen) await this.#openAnother();
    await this.refreshShelf();
    return true;
  }

  async restore(id: string): Promise<void> {
    const restored = await this.#options.store.restore(id);
    if (!restored.ok) this.#options.onTrouble({ kind: 'store', problem: restored.problem });
    else this.#notices.tell({ kind: 'restored', id });
    await this.refreshShelf();
  }

  /** An edit that does not apply or leads beyond what a file may hold is refused in words; the notebook stays. */
  edit(edit: Edit, label: string, merge?: string): void {
    this.#change((history) => {
      const applied = this.#options.applyEdit(history.present, edit);
      if (applied.ok) return record(history, applied.notebook, label, merge);
      this.#options.onTrouble({ kind: 'refused-edit', label, message: applied.message });
      return history;
    });
  }

  undo(): void {
    this.#change(undo);
  }

  redo(): void {
    this.#change(redo);
  }

  /** A file holds the notebook as it is now: it was handed out as one, or came from one. */
  async exported(): Promise<void> {
    if (!this.#state) return;
    this.#show({ ...this.#state, exportedAt_ms: this.#options.now_ms() });
    if (this.#state.access === 'memory') return;
    await this.flush();
    await this.#options.store.markExported(this.#state.history.present.id);
  }

  async refreshShelf(): Promise<void> {
    const listed = await this.#options.store.list();
    this.#options.onShelf(listed.ok ? listed.value : [], listed.ok ? '' : listed.problem.message);
  }

  /** Stores what is not stored yet. */
  async flush(): Promise<void> {
    await this.#autosave?.flush();
  }

  async close(): Promise<void> {
    await this.flush();
    await this.#letGo();
    this.#notices.close();
  }

  #change(change: (history: History) => History): void {
    if (!this.#state || this.#state.access === 'reading') return;
    const history = change(this.#state.history);
    if (history === this.#state.history) return;
    this.#show({ ...this.#state, history });
    this.#autosave?.changed(history, this.#options.now_ms());
  }

  #show(state: SessionState): void {
    this.#state = state;
    this.#options.onChange(state);
  }

  /** @param isFresh It was added just now, so that nobody else can have saved it but a tab that holds it already. */
  async #openKnown(id: string, known: StoredNotebook, isFresh = false): Promise<void> {
    const { store } = this.#options;
    const claim = await this.#claimed(id);
    // Read again: until the claim was settled another tab may have saved.
    const latest = isFresh && claim.state === 'held' ? undefined : await store.load(id);
    const { history, savedAt_ms, exportedAt_ms } = latest?.ok ? latest.value : known;
    this.#settle(claim, { history, access: accessOf(claim.state), savedAt_ms, exportedAt_ms });
    await store.markOpened(id);
  }

  /** The claim on a notebook; the one held so far for it is kept. */
  async #claimed(id: string): Promise<NotebookClaim> {
    if (this.#claim && this.#state?.history.present.id === id) return this.#claim;
    await this.#letGo();
    return this.#options.claim(id, (state) => void this.#onClaim(id, state));
  }

  #settle(claim: NotebookClaim, state: SessionState): void {
    this.#autosave?.stop();
    this.#claim = claim;
    this.#autosave = state.access === 'writing' ? this.#autosaveFrom(state.savedAt_ms ?? undefined) : undefined;
    this.#show(state);
  }

  /** Neither saves nor claims anything any more. */
  async #letGo(): Promise<void> {
    const claim = this.#claim;
    this.#autosave?.stop();
    this.#autosave = undefined;
    this.#claim = undefined;
    await claim?.release();
  }

  async #openInMemory(notebook: Notebook): Promise<void> {
    await this.#letGo();
    this.#show({ history: startHistory(notebook), access: 'memory', savedAt_ms: null, exportedAt_ms: null });
  }

  #autosaveFrom(basedOn_ms: number | undefined): Autosave {
    const { store, onTrouble } = this.#options;
    return new Autosave(
      {
        save: store.save,
        onSaved: (savedAt_ms) => {
          if (!this.#state) return;
          this.#show({ ...this.#state, savedAt_ms });
          this.#notices.tell({ kind: 'saved', id: this.#state.history.present.id, savedAt_ms });
        },
        onProblem: (problem) => onTrouble({ kind: problem.kind === 'conflict' ? 'conflict' : 'store', problem }),
      },
      basedOn_ms,
    );
  }

  /** The claim changed hands while its notebook was open. */
  async #onClaim(id: string, state: ClaimState): Promise<void> {
    if (this.#state?.history.present.id !== id) return;
    if (state === 'held') await this.open(id);
    else {
      await this.flush();
      this.#autosave?.stop();
      this.#autosave = undefined;
      this.#show({ ...this.#state, access: 'reading' });
    }
  }

  /** Another tab did something: what only reads follows, and the list is renewed. */
  async #onNotice(notice: StoreNotice): Promise<void> {
    const open = this.#state?.history.present.id === notice.id ? this.#state : undefined;
    if (open?.access === 'reading' && notice.kind === 'saved') await this.open(notice.id);
    await this.refreshShelf();
  }

  /** In the list two notebooks of one title could not be told apart: the later one gets a number. */
  async #freeTitle(title: string): Promise<string> {
    const listed = await this.#options.store.list();
    const taken = listed.ok ? listed.value.map((entry) => entry.title) : [];
    return taken.includes(title) ? freshName(title, taken) : title;
  }

  async #openAnother(): Promise<void> {
    await this.#letGo();
    this.#state = undefined;
    const listed = await this.#options.store.list();
    const next = listed.ok ? listed.value[0] : undefined;
    if (!next || !(await this.open(next.id))) await this.create();
  }
}

function accessOf(state: ClaimState): SessionState['access'] {
  return state === 'held' ? 'writing' : 'reading';
}
