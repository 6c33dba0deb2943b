/** Longer than that nobody waits to see what is there, ms. */
export const LONGEST_WAIT_MS = 1500;

/** Settles when nothing in an element is loaded or computed any more, or after a while. */
export async function untilLaidOut(element: Element): Promise<void> {
  const began = performance.now();
  do await nextFrame();
  while (isBusy(element.shadowRoot ?? element) && performance.now() - began < LONGEST_WAIT_MS);
}

function isBusy(root: ParentNode): boolean {
  if (root.querySelector('[aria-busy="true"]')) return true;
  return [...root.querySelectorAll('*')].some(({ shadowRoot }) => shadowRoot && isBusy(shadowRoot));
}

/** A page in the background gets no frames: nobody sees it jump. */
function nextFrame(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 100);
    requestAnimationFrame(() => resolve());
  });
}
