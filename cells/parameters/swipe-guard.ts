/** A finger that goes further than this along a slider means the slider, px. */
const MEANT_px = 8;

/**
 * Keeps a finger that scrolls the page from moving the slider it happens to start on. Browsers set a slider where it is
 * touched, before anybody can know what the finger wants. So what the first touch asks for waits until the finger goes along
 * the slider or lifts, and is forgotten where the browser takes the touch for scrolling. Mouse and keys are not held up.
 */
export class SwipeGuard {
  #touchedAt_px: number | undefined;
  #waiting: (() => void) | undefined;

  down({ pointerType, clientX }: PointerEvent): void {
    this.#waiting = undefined;
    this.#touchedAt_px = pointerType === 'touch' ? clientX : undefined;
  }

  move({ clientX }: PointerEvent): void {
    if (this.#touchedAt_px !== undefined && Math.abs(clientX - this.#touchedAt_px) > MEANT_px) this.#meant();
  }

  up(): void {
    this.#meant();
  }

  /** The page scrolls. */
  cancel(): void {
    this.#touchedAt_px = undefined;
    this.#waiting = undefined;
  }

  /** Takes a value now, or once it is known that it was meant. */
  take(take: () => void): void {
    if (this.#touchedAt_px === undefined) take();
    else this.#waiting = take;
  }

  /** The finger means the slider: what waits is taken, and nothing waits any more. */
  #meant(): void {
    const take = this.#waiting;
    this.cancel();
    take?.();
  }
}
