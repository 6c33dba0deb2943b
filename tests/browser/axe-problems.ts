import axe from 'axe-core';

/** What is wrong for people who use assistive technology, short enough to read in a failed test. */
export async function axeProblems(element: Element): Promise<readonly string[]> {
  const { violations } = await axe.run(element, { resultTypes: ['violations'] });
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)} — ${n.failureSummary ?? ''}`));
}
