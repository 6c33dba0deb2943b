import { findScenario } from '../find.ts';
import { insertedAt } from '../lists.ts';
import type { Notebook } from '../types.ts';
import { freeMark } from './free-mark.ts';
import { listed } from './shown-order.ts';

export interface NewScenario {
  readonly id: string;
  readonly name: string;
}

/** Adds a scenario that starts equal to its parent, right after it; it is shown and active. */
export function forkScenario(notebook: Notebook, parentId: string, { id, name }: NewScenario): Notebook {
  const parent = findScenario(notebook, parentId);
  const at = notebook.scenarios.indexOf(parent) + 1;
  const fork = { id, name, mark: freeMark(notebook.scenarios), parent: parentId, changes: {} };
  const scenarios = insertedAt(notebook.scenarios, at, fork);
  return listed({ ...notebook, scenarios, active: id }, [...notebook.shown, id]);
}
