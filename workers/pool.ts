/** A few workers and one queue in front of them, where the latest request of a slot replaces the one still waiting. */
import type { Remote } from 'comlink';
import { type Spawned, Supervised, WorkerDeath } from './supervised.ts';

/** A newer request of the same slot came before this one was sent. Nothing is wrong; nothing was computed. */
export class Superseded extends Error {
  override readonly name = 'Superseded';
  constructor() {
    super('a newer request took the place of this one');
  }
}

export interface PoolOptions {
  readonly spawn: () => Spawned;
  /** Number of workers, ≥ 1. They start when first needed. */
  readonly size: number;
  /** Called when a worker died; its job is sent once more, to a fresh worker. */
  readonly onDeath?: (why: Error) => void;
  /** A call that takes longer ends its worker, ms. */
  readonly limit_ms?: number;
}

interface Job<Api> {
  readonly slot: string;
  readonly run: (remote: Remote<Api>) => Promise<unknown>;
  readonly resolve: (value: never) => void;
  readonly reject: (why: unknown) => void;
  /** How many workers it may still bring down before it is given up. */
  lives: number;
}

const LIMIT_MS = 30_000;

/**
 * Leaves one core to the page, but never fewer than two workers: while they compute, the page waits for them (measured
 * on two cores: 17 ms from slider to curve, 21 ms with one worker).
 */
export function poolSize(cores: number): number {
  return Math.max(2, Math.min(4, cores - 1));
}

/**
 * Each slot has at most one call in flight and one waiting. Workers hold no queue of their own: a second message to a
 * busy worker could not be taken back.
 */
export class Pool<Api> {
  readonly #workers: readonly Supervised<Api>[];
  readonly #onDeath: (why: Error) => void;
  readonly #limit_ms: number;
  /** In order of arrival; a newer request keeps its predecessor's place. */
  readonly #waiting = new Map<string, Job<Api>>();
  readonly #inFlight = new Set<string>();

  constructor({ spawn, size, onDeath = () => {}, limit_ms = LIMIT_MS }: PoolOptions) {
    this.#workers = Array.from({ length: size }, () => new Supervised<Api>(spawn));
    this.#onDeath = onDeath;
    this.#limit_ms = limit_ms;
  }

  /** @throws Superseded, or whatever `Supervised.call` rejects with. */
  submit<T>(slot: string, run: (remote: Remote<Api>) => Promise<T>): Promise<T> {
    return new Promise<T>((resolve, reject) => {
      const older = this.#waiting.get(slot);
      this.#waiting.set(slot, { slot, run, resolve, reject, lives: 2 });
      older?.reject(new Superseded());
      this.#next();
    });
  }

  /** Takes back the slot's request if it has not been sent. */
  drop(slot: string): void {
    const job = this.#waiting.get(slot);
    this.#waiting.delete(slot);
    job?.reject(new Superseded());
  }

  /** Ends every worker; running and waiting requests reject. The pool can be used again. */
  stop(): void {
    for (const slot of [...this.#waiting.keys()]) this.drop(slot);
    for (const worker of this.#workers) worker.stop(new Superseded());
  }

  #next(): void {
    for (const worker of this.#workers) {
      if (worker.busy) continue;
      const job = this.#firstFree();
      if (!job) return;
      this.#waiting.delete(job.slot);
      void this.#carry(worker, job);
    }
  }

  #firstFree(): Job<Api> | undefined {
    for (const job of this.#waiting.values()) if (!this.#inFlight.has(job.slot)) return job;
    return undefined;
  }

  async #carry(worker: Supervised<Api>, job: Job<Api>): Promise<void> {
    this.#inFlight.add(job.slot);
    const limit = new AbortController();
    const timer = setTimeout(
      () => limit.abort(new WorkerDeath(`no answer within ${this.#limit_ms / 1000} s`)),
      this.#limit_ms,
    );
    try {
      job.resolve((await worker.call(job.run, limit.signal)) as never);
    } catch (why) {
      if (why instanceof WorkerDeath) this.#afterDeath(job, why);
      else job.reject(why);
    } finally {
      clearTimeout(timer);
      this.#inFlight.delete(job.slot);
      this.#next();
    }
  }

  #afterDeath(job: Job<Api>, why: WorkerDeath): void {
    this.#onDeath(why);
    job.lives -= 1;
    if (this.#waiting.has(job.slot)) job.reject(new Superseded());
    else if (job.lives > 0) this.#waiting.set(job.slot, job);
    else job.reject(why);
  }
}
