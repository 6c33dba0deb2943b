import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Knows how wide its element is, in whole pixels, and asks for an update when that changes. 0 before it was measured. */
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
      host.requestUpdate();
    });
    host.addController(this);
  }

  hostConnected(): void {
    this.#sizes.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#sizes.disconnect();
  }
}
