import type { Scenario } from '../types.ts';

/** The lowest mark that no scenario has. */
export function freeMark(scenarios: readonly Scenario[]): number {
  const taken = new Set(scenarios.map((s) => s.mark));
  let mark = 0;
  while (taken.has(mark)) mark++;
  return mark;
}
