import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How long changes must rest before what is out of sight follows them, ms. */
const REST_MS = 250;
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
  #rested = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    this.#sight = new IntersectionObserver(
      (entries) => {
        this.#seen = entries.at(-1)!.isIntersecting;
        if (this.#seen && this.#timer !== undefined) this.#catchUp();
      },
      { rootMargin: MARGIN },
    );
    host.addController(this);
  }

  hostConnected(): void {
    this.#seen = true;
    this.#sight.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#sight.disconnect();
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  /** True when the update that is due may wait. */
  mayWait(): boolean {
    if (this.#seen || this.#rested) {
      this.#rested = false;
      return false;
    }
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#catchUp(), REST_MS);
    return true;
  }

  #catchUp(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#rested = true;
    this.#host.requestUpdate();
  }
}
