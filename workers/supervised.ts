/** Calls to a worker that always settle: with the result, with the reason of an abort, or with the worker's death. */

import { type Endpoint, type Remote, wrap } from 'comlink';
import { messageOf } from '#src/notebook/message-of.ts';

/** One running worker. Starting it is injected, so that the same code runs on any kind of worker. */
export interface Spawned {
  readonly endpoint: Endpoint;
  terminate(): void;
  onDeath(report: (why: Error) => void): void;
}

/** The worker ended before its call did: an uncaught error, a failed start, an exit. */
export class WorkerDeath extends Error {
  override readonly name = 'WorkerDeath';
}

/**
 * One worker that carries one call at a time. A bare Comlink call never settles once its worker is gone.
 *
 * Aborting ends the worker, because a busy kernel hears no message; the next call starts a fresh one.
 */
export class Supervised<Api> {
  readonly #spawn: () => Spawned;
  #spawned: Spawned | undefined;
  /** Kept as long as the worker lives: a proxy that is collected leaves its call hanging. */
  #remote: Remote<Api> | undefined;
  #fail: ((why: unknown) => void) | undefined;

  constructor(spawn: () => Spawned) {
    this.#spawn = spawn;
  }

  get busy(): boolean {
    return this.#fail !== undefined;
  }

  /** @throws WorkerDeath, the signal's reason, or what the remote function threw; Error if a call is still running. */
  async call<T>(run: (remote: Remote<Api>) => Promise<T>, signal?: AbortSignal): Promise<T> {
    signal?.throwIfAborted();
    if (this.busy) throw new Error('a worker carries one call at a time');
    const remote = this.#start();
    const onAbort = () => this.stop(signal?.reason);
    try {
      return await new Promise<T>((resolve, reject) => {
        this.#fail = reject;
        signal?.addEventListener('abort', onAbort, { once: true });
        run(remote).then(resolve, reject);
      });
    } finally {
      this.#fail = undefined;
      signal?.removeEventListener('abort', onAbort);
    }
  }

  /** Ends the worker; a running call rejects with `why`. */
  stop(why: unknown = new WorkerDeath('the worker was stopped')): void {
    const spawned = this.#spawned;
    this.#spawned = this.#remote = undefined;
    spawned?.terminate();
    this.#fail?.(why);
  }

  #start(): Remote<Api> {
    if (this.#remote) return this.#remote;
    let spawned: Spawned;
    try {
      spawned = this.#spawn();
    } catch (error) {
      throw new WorkerDeath(`the worker did not start: ${messageOf(error)}`);
    }
    spawned.onDeath((why) => {
      if (this.#spawned === spawned) this.stop(new WorkerDeath(why.message));
    });
    this.#spawned = spawned;
    this.#remote = wrap<Api>(spawned.endpoint);
    return this.#remote;
  }
}
