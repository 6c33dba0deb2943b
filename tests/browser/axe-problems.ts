import axe from 'axe-core';
import { deep } from './deep.ts';

/** What is wrong for people who use assistive technology, short enough to read in a failed test. */
export async function axeProblems(element: Element): Promise<readonly string[]> {
  endTransitions(element);
  const { violations } = await axe.run(element, { resultTypes: ['violations'] });
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)} — ${n.failureSummary ?? ''}`));
}

/** Half faded in, a button has a contrast that nobody can read by: colours are judged where they end. */
function endTransitions(element: Element): void {
  const inside = [element, ...(element.shadowRoot ? [element.shadowRoot] : [])].flatMap((root) => deep('*', root));
  for (const animation of [element, ...inside].flatMap((part) => part.getAnimations())) animation.finish();
}
