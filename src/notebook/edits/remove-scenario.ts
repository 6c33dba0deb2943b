import { findScenario } from '../find.ts';
import type { Notebook, Scenario } from '../types.ts';
import { changesBetween, valuesOf } from '../values.ts';
import { listed } from './shown-order.ts';

/**
 * Takes a scenario out. Its forks move to its parent and keep their values; what was active or reference moves to the
 * parent as well, and the parent is shown if nothing else would be.
 *
 * @throws RangeError for the base.
 */
export function removeScenario(notebook: Notebook, scenarioId: string): Notebook {
  const { parent } = findScenario(notebook, scenarioId);
  if (parent === null) throw new RangeError('scenario to remove must be a fork, got the base');
  const parentValues = valuesOf(notebook, parent);
  const moved = (s: Scenario): Scenario =>
    s.parent === scenarioId
      ? { ...s, parent, changes: changesBetween(notebook, parentValues, valuesOf(notebook, s.id)) }
      : s;
  const scenarios = notebook.scenarios.filter((s) => s.id !== scenarioId).map(moved);
  const orParent = (id: string) => (id === scenarioId ? parent : id);
  const active = orParent(notebook.active);
  const left = notebook.shown.filter((id) => id !== scenarioId);
  return listed({ ...notebook, scenarios, active, reference: orParent(notebook.reference) }, [...left, active]);
}
