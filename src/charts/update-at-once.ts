/**
 * Brings an element and what stands in it up to date without waiting, where something in it is due: a script that prints
 * the page waits for nothing, and what is not drawn by then is not on paper.
 */
export function updateAtOnce(element: Element): void {
  if (!isDue(element)) return;
  element.performUpdate();
  for (const inner of element.shadowRoot?.querySelectorAll('*') ?? []) updateAtOnce(inner);
}

interface Updating extends Element {
  readonly isUpdatePending: boolean;
  performUpdate(): void;
}

function isDue(element: Element): element is Updating {
  return 'performUpdate' in element && (element as Updating).isUpdatePending;
}
