/** Scrolls no further than it takes to see an element, gently unless the reader asked for less motion. */
export function bringIntoView(element: Element, block: ScrollLogicalPosition = 'nearest'): void {
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  element.scrollIntoView({ block, behavior: still ? 'instant' : 'smooth' });
}
