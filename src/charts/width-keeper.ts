import type { ReactiveController, ReactiveControllerHost } from 'lit';

/**
 * Knows how wide its element is, in whole pixels, and asks for an update when that changes. 0 before it was measured.
 * The update waits for the next frame: one made while sizes are being observed would change them under the observer.
 */
export class WidthKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost & Element;
  readonly #sizes: ResizeObserver;
  width = 0;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    this.#sizes = new ResizeObserver(([entry]) => {
      const width = Math.floor(entry?.contentRect.width ?? 0);
      if (width === 0 || width === this.width) return;
      this.width = width;
      requestAnimationFrame(() => host.requestUpdate());
    });
    host.addController(this);
  }

  /** Takes a width for granted until one is measured: what was never laid out has none. */
  assume(width: number): void {
    this.width ||= width;
  }

  hostConnected(): void {
    this.#sizes.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#sizes.disconnect();
  }
}
