import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { type Range, sameRange, steadyRange } from './steady-range.ts';

/** How long the values must rest before the range may shrink, ms. */
const REST_MS = 600;

/** Holds a chart's value range still while values change: it grows at once, and shrinks after a rest with no button down. */
export class RangeKeeper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #held: Range | undefined;
  #about: string | undefined;
  #rested = true;
  #pressed = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('pointerdown', this.#onPress, true);
    addEventListener('pointerup', this.#onRelease, true);
    addEventListener('pointercancel', this.#onRelease, true);
  }

  hostDisconnected(): void {
    removeEventListener('pointerdown', this.#onPress, true);
    removeEventListener('pointerup', this.#onRelease, true);
    removeEventListener('pointercancel', this.#onRelease, true);
    clearTimeout(this.#timer);
  }

  /** The range to draw for values that want `wanted`; another quantity (`about`) starts afresh. */
  range(wanted: Range, about: string): Range {
    this.#held = steadyRange(this.#held, wanted, this.#rested || about !== this.#about);
    this.#about = about;
    this.#rested = false;
    if (!sameRange(this.#held, wanted)) this.#startRest();
    return this.#held;
  }

  #startRest(): void {
    clearTimeout(this.#timer);
    if (this.#pressed) return;
    this.#timer = setTimeout(() => {
      this.#rested = true;
      this.#host.requestUpdate();
    }, REST_MS);
  }

  #onPress = () => {
    this.#pressed = true;
    clearTimeout(this.#timer);
  };

  #onRelease = () => {
    this.#pressed = false;
    this.#startRest();
  };
}
