import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { updateAtOnce } from './update-at-once.ts';

/** About what an upright A4 sheet has between its margins. */
const PAPER_px = 680;

/**
 * Knows how wide its element is, in whole pixels, and asks for an update when that changes. 0 before it was measured.
 * The update waits for the next frame: one made while sizes are being observed would change them under the observer.
 *
 * While the page is printed it is as wide as paper: a picture laid out for the window would be shrunk, its letters and its
 * scale with it.
 */
export class WidthKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost & Element;
  readonly #sizes: ResizeObserver;
  #measured = 0;
  #printing = false;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    this.#sizes = new ResizeObserver(([entry]) => {
      const width = Math.floor(entry?.contentRect.width ?? 0);
      if (width === 0 || width === this.#measured) return;
      this.#measured = width;
      requestAnimationFrame(() => host.requestUpdate());
    });
    host.addController(this);
  }

  /** Whether the page is being printed. */
  get onPaper(): boolean {
    return this.#printing;
  }

  get width(): number {
    return this.#printing ? PAPER_px : this.#measured;
  }

  hostConnected(): void {
    this.#sizes.observe(this.#host);
    window.addEventListener('beforeprint', this.#onPrint);
    window.addEventListener('afterprint', this.#onPrint);
  }

  hostDisconnected(): void {
    this.#sizes.disconnect();
    window.removeEventListener('beforeprint', this.#onPrint);
    window.removeEventListener('afterprint', this.#onPrint);
    this.#printing = false;
  }

  #onPrint = ({ type }: Event): void => {
    this.#printing = type === 'beforeprint';
    this.#host.requestUpdate();
    updateAtOnce(this.#host);
  };
}
