/** Studies of a floor's numbers, made only when somebody asks, in a worker of their own: no slider waits for one. */
import type { NumberStudyRequest } from '#cells/number-study-request.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import type { NumberStudy } from '#src/acoustics/number-study.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import type { Notebook } from '#src/notebook/types.ts';
import type { StudyApi, StudyOutcome } from '#workers/study.api.ts';
import { spawnStudyWorker } from '#workers/study.client.ts';
import { type Spawned, Supervised } from '#workers/supervised.ts';
import { RecentCache } from './recent-cache.ts';

const CACHE_SIZE = 50;

/** One study after another; what was studied before is at hand. */
export class NumberStudies {
  readonly #worker: Supervised<StudyApi>;
  readonly #cache = new RecentCache<NumberStudy>(CACHE_SIZE);
  /** Settles when the worker is free again. */
  #turn: Promise<unknown> = Promise.resolve();

  constructor(spawn: () => Spawned) {
    this.#worker = new Supervised<StudyApi>(spawn);
  }

  /**
   * An abort ends the study at once, wherever it is.
   *
   * @throws the signal's reason, WorkerDeath, or an Error with what the engine has against the construction.
   */
  of(construction: Construction, signal: AbortSignal): Promise<NumberStudy> {
    const study = this.#turn.then(() => this.#study(construction, signal));
    this.#turn = study.catch(() => {});
    return study;
  }

  async #study(construction: Construction, signal: AbortSignal): Promise<NumberStudy> {
    const key = JSON.stringify(construction);
    const known = this.#cache.get(key);
    if (known) return known;
    const numbers = studiedNumbers(construction);
    const outcome = await this.#worker.call<StudyOutcome>((remote) => remote.study(construction, numbers), signal);
    if (!outcome.ok) throw new Error(outcome.message);
    this.#cache.set(key, outcome.study);
    return outcome.study;
  }
}

let shared: NumberStudies | undefined;

/** By the page's one worker for studies, which starts with the first of them. */
export async function answerStudy(notebook: Notebook, request: NumberStudyRequest): Promise<NumberStudy> {
  shared ??= new NumberStudies(spawnStudyWorker);
  return await shared.of(resolveStack(notebook, request.scenario, request.stack), request.signal);
}
