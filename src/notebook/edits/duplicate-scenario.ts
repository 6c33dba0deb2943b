import { baseScenario, findScenario } from '../find.ts';
import { insertedAt } from '../lists.ts';
import type { Notebook } from '../types.ts';
import { changesBetween, valuesOf } from '../values.ts';
import type { NewScenario } from './fork-scenario.ts';
import { freeMark } from './free-mark.ts';
import { listed } from './shown-order.ts';

/**
 * Adds a scenario of the same values that no longer follows the parents in between: it hangs on the base and carries
 * every difference from it. It is shown and active.
 */
export function duplicateScenario(notebook: Notebook, scenarioId: string, { id, name }: NewScenario): Notebook {
  const base = baseScenario(notebook);
  const changes = changesBetween(notebook, valuesOf(notebook, base.id), valuesOf(notebook, scenarioId));
  const at = notebook.scenarios.indexOf(findScenario(notebook, scenarioId)) + 1;
  const copy = { id, name, mark: freeMark(notebook.scenarios), parent: base.id, changes };
  const scenarios = insertedAt(notebook.scenarios, at, copy);
  return listed({ ...notebook, scenarios, active: id }, [...notebook.shown, id]);
}
