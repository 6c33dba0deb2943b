import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How far outside the window an element counts as near. */
const MARGIN = '300px';

/**
 * Whether an element is on screen or close to it. While something is dragged, what nobody sees need not follow each
 * step: `mayUpdate` lets it through once the changes have paused, so that it is never out of date for long.
 */
export class NearView implements ReactiveController {
  readonly #host: ReactiveControllerHost & Element;
  readonly #pause_ms: number;
  #observer: IntersectionObserver | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #near = true;
  #paused = false;
  /** Settles when the browser has looked for the first time. */
  #looked = Promise.resolve();

  constructor(host: ReactiveControllerHost & Element, pause_ms = 150) {
    this.#host = host;
    this.#pause_ms = pause_ms;
    host.addController(this);
  }

  hostConnected(): void {
    this.#looked = new Promise((looked) => {
      this.#observer = new IntersectionObserver(
        (entries) => {
          const near = entries.at(-1)!.isIntersecting;
          if (near && !this.#near) this.#host.requestUpdate();
          this.#near = near;
          looked();
        },
        { rootMargin: MARGIN },
      );
    });
    this.#observer?.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    clearTimeout(this.#timer);
    this.#near = true;
  }

  /** Waits for the host's turn to load what it shows: at once when near, else when the page has nothing better to do. */
  async turn(): Promise<void> {
    await this.#looked;
    if (!this.#near) await idle();
  }

  /** Asked before each update; false means: wait, another update will be asked for. */
  mayUpdate(): boolean {
    clearTimeout(this.#timer);
    if (this.#near || this.#paused) {
      this.#paused = false;
      return true;
    }
    this.#timer = setTimeout(() => {
      this.#paused = true;
      this.#host.requestUpdate();
    }, this.#pause_ms);
    return false;
  }
}

/** Not every browser tells when it is idle. */
function idle(): Promise<void> {
  return new Promise((resolve) => {
    if ('requestIdleCallback' in globalThis) requestIdleCallback(() => resolve(), { timeout: 1000 });
    else setTimeout(resolve, 200);
  });
}
