/** Decides when the page shows what it got; of the views it is asked to show the latest is shown. */
export interface ViewPace {
  /** @param complete Nothing is computed any more: no reason to wait. */
  ask(show: () => void, complete: boolean): void;
}

/** How long the page waits for the results that belong together, ms: a drag shows them in one picture, not piecemeal. */
const PATIENCE_MS = 50;

/**
 * Shows complete results as soon as they are there, without waiting for the next frame to begin (measured: 8 ms
 * earlier), others when patience is over.
 *
 * @param turn Resolves when something may be drawn: `OnceAFrame`'s.
 */
export function viewPace(turn: () => Promise<void>, patience_ms = PATIENCE_MS): ViewPace {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let latest = () => {};
  let isDue = false;
  const showSoon = async () => {
    clearTimeout(timer);
    timer = undefined;
    if (isDue) return;
    isDue = true;
    await turn();
    isDue = false;
    latest();
  };
  return {
    ask(show, complete) {
      latest = show;
      if (complete) void showSoon();
      else timer ??= setTimeout(() => void showSoon(), patience_ms);
    },
  };
}
