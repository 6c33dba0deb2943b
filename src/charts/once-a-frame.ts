/** Lets drawing through at most once a frame: at once if nothing was drawn in this frame yet, else with the next. */
export class OnceAFrame {
  #turn: Promise<void> | undefined;

  /** Resolves when the caller may draw. */
  async turn(): Promise<void> {
    await this.#turn;
    this.#turn = new Promise((resolve) => {
      requestAnimationFrame(() => {
        this.#turn = undefined;
        resolve();
      });
    });
  }
}
