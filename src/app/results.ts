/**
 * From the notebook to predictions: one request per resolved stack, answered from a cache where the same content was
 * computed before. What the page reads is a snapshot; when it gets the next one is up to the pace.
 */

import type { Result, ResultsView } from '#cells/contract.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { partOfFloor } from '#src/acoustics/floor-part.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';
import type { PredictOutcome } from '#workers/predict.api.ts';
import { type Wanted, wantedPredictions } from './demand.ts';
import { RecentCache } from './recent-cache.ts';
import { slotId, snapshot } from './results-view.ts';
import type { ViewPace } from './view-pace.ts';

/**
 * Sends one construction to a worker. A newer call of the same slot may take the place of one not sent yet, whose
 * promise then rejects with what `isSuperseded` recognises.
 */
export interface PredictionSender {
  send(slot: string, construction: Construction, lowestBand_Hz: Wanted['lowestBand_Hz']): Promise<PredictOutcome>;
  /** Takes back the slot's call if it has not been sent. */
  drop(slot: string): void;
  isSuperseded(why: unknown): boolean;
}

export interface ResultsOptions {
  readonly sender: PredictionSender;
  readonly onView: (view: ResultsView) => void;
  readonly pace: ViewPace;
  readonly cacheSize?: number;
}

/** A construction under its content: equal text, equal prediction. */
interface Wish {
  readonly key: string;
  readonly construction: Construction;
  readonly lowestBand_Hz: Wanted['lowestBand_Hz'];
  /** Number of the update that brought it: later wishes have higher ones. */
  readonly update: number;
}

/** What one stack in one scenario, or a part of it, shows, and what it waits for; nothing where it could not be resolved. */
interface Slot {
  readonly wish: Wish | undefined;
  result: Result;
  /** Number of the update whose wish the prediction in the result fulfils. */
  shows: number;
}

export class ResultsService {
  readonly #sender: PredictionSender;
  readonly #onView: (view: ResultsView) => void;
  readonly #pace: ViewPace;
  readonly #cache: RecentCache<PredictOutcome>;
  #slots = new Map<string, Slot>();
  #view: ResultsView | undefined;
  /** Whose floors the slots are. */
  #notebook: Notebook['id'] | undefined;
  #updates = 0;
  /** Number of the update that brought this notebook: what was asked for before belongs to another one. */
  #opened = 0;
  /** Which slot's request carries a key that is being computed or waits to be: equal content is asked for once. */
  readonly #carriers = new Map<string, string>();

  constructor({ sender, onView, pace, cacheSize = 1000 }: ResultsOptions) {
    this.#sender = sender;
    this.#onView = onView;
    this.#pace = pace;
    this.#cache = new RecentCache(cacheSize);
  }

  /** Something that the page wants is not there yet. */
  get computing(): boolean {
    return [...this.#slots.values()].some(({ result }) => result.state === 'computing');
  }

  /** What there is at this moment; the same object as long as nothing changed. */
  get view(): ResultsView {
    this.#view ??= snapshot(new Map([...this.#slots].map(([id, { result }]) => [id, result])));
    return this.#view;
  }

  /** Takes the notebook as it is now; predictions that are missing are asked for, in order of urgency. */
  update(notebook: Notebook): void {
    this.#updates += 1;
    if (notebook.id !== this.#notebook) this.#forgetOther(notebook.id);
    const last = this.#slots;
    this.#slots = new Map();
    for (const wanted of wantedPredictions(notebook)) {
      const id = slotId(wanted.scenario, wanted.stack, wanted.part);
      this.#slots.set(id, this.#slotFor(notebook, wanted, last.get(id)));
    }
    this.#dropUnwanted();
    this.#requestMissing();
    this.#askToShow();
  }

  /** Asks once more for what failed without an answer from the engine: a worker that died, for instance. */
  retry(): void {
    for (const slot of this.#slots.values())
      if (slot.wish && slot.result.state === 'failed' && !this.#cache.get(slot.wish.key))
        slot.result = { state: 'computing', ...kept(slot.result) };
    this.#requestMissing();
    this.#askToShow();
  }

  /** Copies and files made from one another share the ids of scenarios and stacks, not the floors behind them. */
  #forgetOther(notebookId: Notebook['id']): void {
    this.#notebook = notebookId;
    this.#opened = this.#updates;
    this.#slots = new Map();
  }

  #slotFor(notebook: Notebook, { scenario, stack, part, lowestBand_Hz }: Wanted, last: Slot | undefined): Slot {
    const { result, shows } = last ?? { result: { state: 'computing' } as const, shows: this.#opened - 1 };
    try {
      const construction = partOfFloor(resolveStack(notebook, scenario, stack), part);
      const key = JSON.stringify([construction, lowestBand_Hz]);
      if (last?.wish?.key === key) return last;
      const wish = { key, construction, lowestBand_Hz, update: this.#updates };
      const outcome = this.#cache.get(key);
      return outcome
        ? { wish, result: settled(outcome, result), shows: wish.update }
        : { wish, result: { state: 'computing', ...kept(result) }, shows };
    } catch (error) {
      return { wish: undefined, result: failed(messageOf(error), result), shows };
    }
  }

  #dropUnwanted(): void {
    const wanted = new Set([...this.#slots.values()].map((s) => s.wish?.key));
    const carriers = [...this.#carriers];
    const stillNeeded = new Set(carriers.filter(([key]) => wanted.has(key)).map(([, slot]) => slot));
    for (const [, slot] of carriers) if (!stillNeeded.has(slot)) this.#sender.drop(slot);
  }

  #requestMissing(): void {
    for (const [id, { wish, result }] of this.#slots)
      if (wish && result.state === 'computing' && !this.#carriers.has(wish.key)) void this.#request(id, wish);
  }

  async #request(slot: string, { key, construction, lowestBand_Hz, update }: Wish): Promise<void> {
    this.#carriers.set(key, slot);
    try {
      const outcome = await this.#sender.send(slot, construction, lowestBand_Hz);
      this.#cache.set(key, outcome);
      this.#settle(key, outcome);
      this.#standIn(slot, outcome, update);
    } catch (why) {
      if (!this.#sender.isSuperseded(why)) this.#settle(key, { ok: false, message: messageOf(why) });
    }
    this.#carriers.delete(key);
    // The slot that carried this key may have moved on while another one of equal content still waits.
    this.#requestMissing();
  }

  #settle(key: string, outcome: PredictOutcome): void {
    for (const slot of this.#slots.values())
      if (slot.wish?.key === key && slot.result.state === 'computing') {
        slot.result = settled(outcome, slot.result);
        slot.shows = slot.wish.update;
        this.#askToShow();
      }
  }

  /** In a drag faster than the workers the slot wants something else by now, but this is newer than what it shows. */
  #standIn(id: string, outcome: PredictOutcome, update: number): void {
    const slot = this.#slots.get(id);
    if (!outcome.ok || slot?.result.state !== 'computing' || slot.shows >= update) return;
    slot.result = { state: 'computing', prediction: outcome.prediction };
    slot.shows = update;
    this.#askToShow();
  }

  #askToShow(): void {
    this.#view = undefined;
    this.#pace.ask(() => this.#onView(this.view), !this.computing);
  }
}

function settled(outcome: PredictOutcome, last: Result): Result {
  return outcome.ok ? { state: 'ready', prediction: outcome.prediction } : failed(outcome.message, last);
}

function failed(message: string, last: Result): Result {
  return { state: 'failed', message, ...kept(last) };
}

function kept({ prediction }: Result): { prediction?: Prediction } {
  return prediction ? { prediction } : {};
}
