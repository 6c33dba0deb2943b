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

  constructor(host: ReactiveControllerHost & Element, pause_ms = 150) {
    this.#host = host;
    this.#pause_ms = pause_ms;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer = new IntersectionObserver(
      (entries) => {
        const near = entries.at(-1)!.isIntersecting;
        if (near && !this.#near) this.#host.requestUpdate();
        this.#near = near;
      },
      { rootMargin: MARGIN },
    );
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    clearTimeout(this.#timer);
    this.#near = true;
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
