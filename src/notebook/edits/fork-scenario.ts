import { findScenario } from '../find.ts';
import { insertedAt } from '../lists.ts';
import type { Notebook, Scenario } from '../types.ts';
import { freeMark } from './free-mark.ts';
import { listed } from './shown-order.ts';

export interface NewScenario {
  readonly id: string;
  readonly name: string;
}

/** Adds a scenario that starts equal to its parent, after it and all forks it has by now; it is shown and active. */
export function forkScenario(notebook: Notebook, parentId: string, { id, name }: NewScenario): Notebook {
  const { scenarios: before } = notebook;
  const at = lastOfFamily(before, findScenario(notebook, parentId)) + 1;
  const fork = { id, name, mark: freeMark(before), parent: parentId, changes: {} };
  const scenarios = insertedAt(before, at, fork);
  return listed({ ...notebook, scenarios, active: id }, [...notebook.shown, id]);
}

/** Where the last of a scenario, its forks and their forks stands. */
function lastOfFamily(scenarios: readonly Scenario[], { id }: Scenario): number {
  const family = new Set([id]);
  // A fork may stand above its parent once people have moved it.
  for (let size = 0; size < family.size; ) {
    size = family.size;
    for (const { id: of, parent } of scenarios) if (parent !== null && family.has(parent)) family.add(of);
  }
  return scenarios.findLastIndex((scenario) => family.has(scenario.id));
}
