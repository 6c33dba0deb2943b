import axe from 'axe-core';

/** What is wrong for people who use assistive technology, short enough to read in a failed test. */
export async function axeProblems(element: Element): Promise<readonly string[]> {
  endTransitions(element);
  const { violations } = await axe.run(element, { resultTypes: ['violations'] });
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)} — ${n.failureSummary ?? ''}`));
}

/** Half faded in, a button has a contrast that nobody can read by: colours are judged where they end. */
function endTransitions(root: Element | ShadowRoot): void {
  if (root instanceof Element) for (const animation of root.getAnimations()) animation.finish();
  for (const part of root.querySelectorAll('*')) {
    for (const animation of part.getAnimations()) animation.finish();
    if (part.shadowRoot) endTransitions(part.shadowRoot);
  }
  if (root instanceof Element && root.shadowRoot) endTransitions(root.shadowRoot);
}
