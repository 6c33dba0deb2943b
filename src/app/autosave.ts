/** Saves a while after the last edit, and at the latest a while after the first; one save at a time. */
import type { History } from '#src/notebook/history.ts';
import type { StoreProblem, StoreResult } from '#src/store/store-result.ts';

export interface AutosaveOptions {
  /** As `NotebookStore.save`. */
  readonly save: (history: History, basedOn_ms?: number) => Promise<StoreResult<number>>;
  readonly onSaved: (savedAt_ms: number) => void;
  readonly onProblem: (problem: StoreProblem) => void;
  /** After the last edit, ms. */
  readonly pause_ms?: number;
  /** After the first edit that is not saved, ms. */
  readonly longest_ms?: number;
}

export class Autosave {
  readonly #options: Required<AutosaveOptions>;
  /** Time of the save that the next one builds on; undefined: whatever is there is overwritten. */
  #basedOn_ms: number | undefined;
  #pending: History | undefined;
  #pendingSince_ms = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> | undefined;

  constructor(options: AutosaveOptions, basedOn_ms: number | undefined) {
    this.#options = { pause_ms: 400, longest_ms: 3000, ...options };
    this.#basedOn_ms = basedOn_ms;
  }

  get unsaved(): boolean {
    return this.#pending !== undefined;
  }

  changed(history: History, now_ms: number): void {
    if (!this.#pending) this.#pendingSince_ms = now_ms;
    this.#pending = history;
    const { pause_ms, longest_ms } = this.#options;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(
      () => void this.flush(),
      Math.max(0, Math.min(pause_ms, this.#pendingSince_ms + longest_ms - now_ms)),
    );
  }

  /** Saves what is not saved yet; settles when everything handed over so far is stored or refused. */
  async flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#running = (this.#running ?? Promise.resolve()).then(() => this.#save());
    await this.#running;
  }

  /** Saves no more; what is unsaved stays so. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#pending = undefined;
  }

  async #save(): Promise<void> {
    const history = this.#pending;
    if (!history) return;
    this.#pending = undefined;
    const saved = await this.#options.save(history, this.#basedOn_ms);
    if (saved.ok) {
      this.#basedOn_ms = saved.value;
      this.#options.onSaved(saved.value);
    } else {
      // Tried again with the next edit: room may have been made, storage may have come back.
      this.#pending ??= history;
      this.#options.onProblem(saved.problem);
    }
  }
}
