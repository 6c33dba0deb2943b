import { findScenario } from '../find.ts';
import { insertedAt } from '../lists.ts';
import type { Notebook } from '../types.ts';
import { listed } from './shown-order.ts';

export interface NewScenario {
  readonly id: string;
  readonly name: string;
}

/** Adds a scenario that starts equal to its parent, right after it; it is shown and active. */
export function forkScenario(notebook: Notebook, parentId: string, { id, name }: NewScenario): Notebook {
  const parent = findScenario(notebook, parentId);
  const at = notebook.scenarios.indexOf(parent) + 1;
  return listed(
    {
      ...notebook,
      scenarios: insertedAt(notebook.scenarios, at, { id, name, parent: parentId, changes: {} }),
      active: id,
    },
    [...notebook.shown, id],
  );
}
