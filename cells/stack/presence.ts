import { lineage } from '#src/notebook/find.ts';
import type { Notebook } from '#src/notebook/types.ts';

/** Of every scenario by its id, which layers of a stack are there. */
export type Presence = ReadonlyMap<string, readonly boolean[]>;

export function isIn(presence: Presence, scenarioId: string, index: number): boolean {
  return presence.get(scenarioId)?.[index] === true;
}

/** Ids of the other scenarios that have a layer: the active one's parents first, then in the notebook's order. */
export function othersWith(presence: Presence, notebook: Notebook, index: number): readonly string[] {
  const parents = lineage(notebook, notebook.active).map(({ id }) => id);
  const all = new Set([...parents, ...notebook.scenarios.map(({ id }) => id)]);
  return [...all].filter((id) => id !== notebook.active && isIn(presence, id, index));
}
