import type { NewScenario } from '#src/notebook/edits/fork-scenario.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import type { Notebook } from '#src/notebook/types.ts';

/** Id and name for a scenario made from another one, both not yet taken. */
export function freshScenario({ scenarios }: Notebook, from: string): NewScenario {
  const ids = scenarios.map((s) => s.id);
  const names = scenarios.map((s) => s.name);
  return { id: freshId(Math.random, ids), name: freshName(from, names) };
}

/** "Slab on top 2", "Slab on top 3", … */
export function freshName(from: string, taken: readonly string[]): string {
  const stem = from.replace(/ \d+$/, '');
  for (let n = 2; ; n++) if (!taken.includes(`${stem} ${n}`)) return `${stem} ${n}`;
}
