/** Studies of a floor's numbers, made only when somebody asks, in a worker of their own: no slider waits for one. */
import type { NumberStudyRequest, StudyProgress } from '#cells/number-study-request.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { joinedStudy } from '#src/acoustics/joined-study.ts';
import type { NumberOutcome, NumberStudy } from '#src/acoustics/number-study.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { orAborted } from '#workers/or-aborted.ts';
import type { StudyApi, StudyOutcome } from '#workers/study.api.ts';
import { spawnStudyWorker } from '#workers/study.client.ts';
import { type Spawned, Supervised } from '#workers/supervised.ts';
import { RecentCache } from './recent-cache.ts';

const CACHE_SIZE = 50;

/** One study after another; what was studied before is at hand, down to the single number. */
export class NumberStudies {
  readonly #worker: Supervised<StudyApi>;
  readonly #cache = new RecentCache<readonly NumberOutcome[]>(CACHE_SIZE);
  /** Settles when the worker is free again. */
  #turn: Promise<unknown> = Promise.resolve();

  constructor(spawn: () => Spawned) {
    this.#worker = new Supervised<StudyApi>(spawn);
  }

  /**
   * An abort ends the study at once, be it still waiting for its turn; what it had done is kept for the next one of this construction.
   *
   * @param tell Hears how far the study has come: before its first number, and after each.
   * @throws the signal's reason, WorkerDeath, or an Error with what the engine has against the construction.
   */
  of(
    construction: Construction,
    signal: AbortSignal,
    tell: (progress: StudyProgress) => void = () => {},
  ): Promise<NumberStudy> {
    const study = this.#turn.then(() => this.#study(construction, signal, tell));
    this.#turn = study.catch(() => {});
    return orAborted(study, signal);
  }

  async #study(
    construction: Construction,
    signal: AbortSignal,
    tell: (progress: StudyProgress) => void,
  ): Promise<NumberStudy> {
    const key = JSON.stringify(construction);
    const numbers = studiedNumbers(construction);
    let done = this.#cache.get(key) ?? [];
    const soFar = () => ({ done: done.length, total: numbers.length, study: joinedStudy(done) });
    signal.throwIfAborted();
    tell(soFar());
    for (const number of numbers.slice(done.length)) {
      const answer = await this.#worker.call<StudyOutcome>((remote) => remote.study(construction, number), signal);
      if (!answer.ok) throw new Error(answer.message);
      done = [...done, answer.outcome];
      this.#cache.set(key, done);
      tell(soFar());
    }
    return joinedStudy(done);
  }
}

let shared: NumberStudies | undefined;

/** By the page's one worker for studies, which starts with the first of them. */
export async function answerStudy(notebook: Notebook, { scenario, stack, signal, tell }: NumberStudyRequest) {
  shared ??= new NumberStudies(spawnStudyWorker);
  return await shared.of(resolveStack(notebook, scenario, stack), signal, tell);
}
