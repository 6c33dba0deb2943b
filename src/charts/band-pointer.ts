import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import type { BandFrame } from './band-frame.ts';

/** Another band of a chart is read: the one under the pointer, else the pinned one. Bubbles, leaves shadow roots. */
export class BandRead extends Event {
  static readonly type = 'band-read';
  readonly index: number;

  constructor(index: number) {
    super(BandRead.type, { bubbles: true, composed: true });
    this.index = index;
  }
}

export interface PointedChart extends ReactiveControllerHost, EventTarget {
  readonly frame: BandFrame | undefined;
}

/** Which band of a chart is read: one is pinned, by click or by the arrow keys, and one may be under the pointer. */
export class BandPointer implements ReactiveController {
  readonly #host: PointedChart;
  #pinned_Hz = 500;
  #pointed: number | undefined;

  constructor(host: PointedChart) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#pointed = undefined;
  }

  /** Index of the pinned band; the middle one where the chart lacks it. */
  get pinned(): number {
    const bands = this.#bands;
    const exact = bands.indexOf(this.#pinned_Hz);
    return exact >= 0 ? exact : Math.floor(bands.length / 2);
  }

  /** Index of the band under the pointer. */
  get pointed(): number | undefined {
    return this.#pointed;
  }

  /** The area over the picture that takes pointer and keys. `readout` says the values at a band in one line. */
  reach(readout: (index: number) => string): TemplateResult {
    return html`
      <div
        class="reach"
        tabindex="0"
        role="slider"
        aria-label="Band that is read"
        aria-valuemin="0"
        aria-valuemax=${this.#bands.length - 1}
        aria-valuenow=${this.pinned}
        aria-valuetext=${readout(this.pinned)}
        @pointermove=${this.#onPoint}
        @pointerdown=${this.#onPoint}
        @pointerleave=${this.#onLeave}
        @click=${this.#onPin}
        @keydown=${this.#onKey}
      ></div>
    `;
  }

  get #bands(): readonly number[] {
    return this.#host.frame?.bands_Hz ?? [];
  }

  #indexAt({ clientX, currentTarget }: MouseEvent): number {
    const { left, width } = (currentTarget as Element).getBoundingClientRect();
    const frame = this.#host.frame!;
    return frame.bandAt(((clientX - left) * frame.width) / width);
  }

  #point(index: number | undefined): void {
    if (index === this.#pointed) return;
    this.#pointed = index;
    this.#tell();
  }

  #pin(index: number): void {
    this.#pinned_Hz = this.#bands[index]!;
    this.#tell();
  }

  #tell(): void {
    this.#host.requestUpdate();
    this.#host.dispatchEvent(new BandRead(this.#pointed ?? this.pinned));
  }

  #onPoint = (event: PointerEvent) => this.#point(this.#indexAt(event));

  #onLeave = () => this.#point(undefined);

  #onPin = (event: MouseEvent) => this.#pin(this.#indexAt(event));

  #onKey = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const last = this.#bands.length - 1;
    const target = KEYS[event.key]?.(this.pinned, last);
    if (target === undefined) return;
    event.preventDefault();
    this.#pin(Math.min(last, Math.max(0, target)));
  };
}

/** Arrow keys go by a band, page keys by an octave. */
const KEYS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowLeft: (at) => at - 1,
  ArrowDown: (at) => at - 1,
  ArrowRight: (at) => at + 1,
  ArrowUp: (at) => at + 1,
  PageDown: (at) => at - 3,
  PageUp: (at) => at + 3,
  Home: () => 0,
  End: (_at, last) => last,
};

declare global {
  interface HTMLElementEventMap {
    'band-read': BandRead;
  }
}
