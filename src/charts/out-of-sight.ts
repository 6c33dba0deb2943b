import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { updateAtOnce } from './update-at-once.ts';

/** How long changes must rest before what is out of sight follows them, ms. */
export const REST_MS = 250;
/** What lies this near to the window counts as in sight. */
const MARGIN = '50%';

/**
 * Lets an element that is out of sight wait until changes rest, so that a dragged slider redraws only what is seen. Ask
 * it in `shouldUpdate`; what was skipped is caught up with, for printing and for whoever scrolls there.
 */
export class OutOfSight implements ReactiveController {
  readonly #host: ReactiveControllerHost & Element;
  readonly #sight: IntersectionObserver;
  #seen = true;
  #printing = false;
  #rested = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #leave = () => {};
  /** Settles when the browser has looked for the first time. */
  readonly #looked: Promise<void>;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    let looked = () => {};
    this.#looked = new Promise((resolve) => {
      looked = resolve;
    });
    this.#sight = new IntersectionObserver(
      (entries) => {
        this.#seen = entries.at(-1)!.isIntersecting;
        if (this.#seen && this.#timer !== undefined) this.#catchUp();
        looked();
        if (!this.#seen) this.#leave();
      },
      { rootMargin: MARGIN },
    );
    host.addController(this);
  }

  hostConnected(): void {
    this.#seen = true;
    this.#sight.observe(this.#host);
    // Before the host itself hears of it.
    window.addEventListener('beforeprint', this.#onPrint, true);
    window.addEventListener('afterprint', this.#onPrint, true);
  }

  hostDisconnected(): void {
    this.#sight.disconnect();
    window.removeEventListener('beforeprint', this.#onPrint, true);
    window.removeEventListener('afterprint', this.#onPrint, true);
    this.#printing = false;
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  /** True when the update that is due may wait. */
  mayWait(): boolean {
    if (this.#seen || this.#rested || this.#printing) {
      this.#rested = false;
      return false;
    }
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#catchUp(), REST_MS);
    return true;
  }

  /** Waits for the host's turn to load what it shows: at once in sight, else when the page has nothing better to do. */
  async turn(): Promise<void> {
    await this.#looked;
    if (!this.#seen) await idle();
  }

  /** Settles as soon as the host is out of sight. */
  left(): Promise<void> {
    if (!this.#seen) return Promise.resolve();
    return new Promise((resolve) => {
      this.#leave = resolve;
    });
  }

  /** On paper everything is in sight. */
  #onPrint = ({ type }: Event): void => {
    this.#printing = type === 'beforeprint';
    if (!this.#printing || this.#timer === undefined) return;
    this.#catchUp();
    updateAtOnce(this.#host);
  };

  #catchUp(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#rested = true;
    this.#host.requestUpdate();
  }
}

/** Not every browser tells when it is idle. */
function idle(): Promise<void> {
  return new Promise((resolve) => {
    if ('requestIdleCallback' in globalThis) requestIdleCallback(() => resolve(), { timeout: 1000 });
    else setTimeout(resolve, 200);
  });
}
