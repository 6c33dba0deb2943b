/**
 * One tab writes a notebook, the others look on. A claim is a Web Lock on the notebook; whoever comes second learns it
 * and may wait, fork the notebook, or take it over, in which case the first learns that it lost it.
 */
export type ClaimState =
  /** This tab writes. */
  | 'held'
  /** Another tab writes; this one gets its turn when that one lets go. */
  | 'waiting'
  /** Another tab took the notebook over, or this one let go. */
  | 'lost';

export interface NotebookClaim {
  readonly state: ClaimState;
  /** Makes this tab the one that writes, at once. */
  readonly takeOver: () => void;
  /** Lets go, or stops waiting; settles once another tab could have the notebook. */
  readonly release: () => Promise<void>;
}

/** What a claim needs of the browser's lock manager. */
export type Locks = Pick<LockManager, 'request'>;

/**
 * Claims a notebook and settles once it is known whether this tab or another one writes. `onChange` hears every later
 * change of the state.
 *
 * @param locks The browser's lock manager; null where there is none (a page without a secure origin). Where there is none,
 *   or the browser refuses it (storage blocked for this page), every tab holds its claim, and only the store's conflict
 *   check keeps one from overwriting another.
 */
export async function claimNotebook(
  id: string,
  onChange: (state: ClaimState) => void,
  locks: Locks | null = globalThis.navigator?.locks ?? null,
): Promise<NotebookClaim> {
  const claim = new Claim(`slab-and-spring:${id}`, onChange, locks);
  await claim.start();
  return claim;
}

class Claim implements NotebookClaim {
  state: ClaimState = 'waiting';
  readonly #name: string;
  readonly #onChange: (state: ClaimState) => void;
  #locks: Locks | null;
  /** Ends the present hold or wait; each request has its own. */
  #end = () => {};
  /** Settles when the browser has closed the present request. */
  #closed: Promise<void> = Promise.resolve();

  constructor(name: string, onChange: (state: ClaimState) => void, locks: Locks | null) {
    this.#name = name;
    this.#onChange = onChange;
    this.#locks = locks;
  }

  async start(): Promise<void> {
    if (!this.#locks) {
      this.state = 'held';
      return;
    }
    const free = await new Promise<boolean>((known) =>
      this.#request({ ifAvailable: true }, known, () => {
        this.#locks = null;
        known(true);
      }),
    );
    if (free) this.state = 'held';
    else this.#wait();
  }

  readonly takeOver = (): void => {
    if (this.state === 'held' || !this.#locks) return;
    this.#end();
    this.#request({ steal: true }, () => this.#become('held'));
  };

  readonly release = async (): Promise<void> => {
    this.#end();
    this.state = 'lost';
    await this.#closed;
  };

  #wait(): void {
    this.#request({}, () => this.#become('held'));
  }

  /** Asks for the lock; `granted` hears whether it was given, `refused` that the browser gives no answer. */
  #request(
    options: LockOptions,
    granted: (given: boolean) => void,
    refused: () => void = () => this.#become('lost'),
  ): void {
    const abort = new AbortController();
    let over = false;
    let answered = false;
    const held = new Promise<void>((end) => {
      this.#end = () => {
        over = true;
        abort.abort();
        end();
      };
    });
    // A signal may not be combined with the other options, and only waiting can be aborted.
    const waiting = options.ifAvailable || options.steal ? options : { ...options, signal: abort.signal };
    const request = this.#locks!.request(this.#name, waiting, (lock) => {
      answered = true;
      granted(lock !== null);
      return lock === null ? undefined : held;
    });
    this.#closed = request.then(
      () => {},
      () => {
        // Rejected when another tab takes the lock over, when waiting was given up here, or when there is no answer.
        if (over) return;
        if (answered) this.#become('lost');
        else refused();
      },
    );
  }

  #become(state: ClaimState): void {
    this.state = state;
    this.#onChange(state);
  }
}
