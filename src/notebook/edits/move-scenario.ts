import { findScenario } from '../find.ts';
import { movedTo } from '../lists.ts';
import type { Notebook } from '../types.ts';
import { listed } from './shown-order.ts';

/**
 * Gives a scenario another place in the list; `to` is its index afterwards. Parents stay as they are.
 *
 * @throws RangeError if the base would no longer stand first.
 */
export function moveScenario(notebook: Notebook, scenarioId: string, to: number): Notebook {
  const from = notebook.scenarios.indexOf(findScenario(notebook, scenarioId));
  const scenarios = movedTo(notebook.scenarios, from, to);
  if (scenarios[0]!.parent !== null) throw new RangeError('the base scenario must stay first');
  return listed({ ...notebook, scenarios }, notebook.shown);
}
