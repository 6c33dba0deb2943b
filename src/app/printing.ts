import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { updateAtOnce } from '#src/charts/update-at-once.ts';

/** Knows since when the page is being printed, and has its element laid out for that at once. */
export class Printing implements ReactiveController {
  readonly #host: ReactiveControllerHost & Element;
  /** Undefined while the page is not being printed. */
  since: Date | undefined;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('beforeprint', this.#onPrint);
    window.addEventListener('afterprint', this.#onPrint);
  }

  hostDisconnected(): void {
    window.removeEventListener('beforeprint', this.#onPrint);
    window.removeEventListener('afterprint', this.#onPrint);
    this.since = undefined;
  }

  #onPrint = ({ type }: Event): void => {
    this.since = type === 'beforeprint' ? new Date() : undefined;
    this.#host.requestUpdate();
    updateAtOnce(this.#host);
  };
}
