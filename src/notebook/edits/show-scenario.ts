import { findScenario } from '../find.ts';
import type { Notebook } from '../types.ts';
import { listed } from './shown-order.ts';

/**
 * Shows or hides a scenario. One always stays shown, and the active one is always among them: hiding it makes the
 * first that is left active; hiding the last one changes nothing.
 */
export function showScenario(notebook: Notebook, scenarioId: string, shown: boolean): Notebook {
  findScenario(notebook, scenarioId);
  if (shown) return listed(notebook, [...notebook.shown, scenarioId]);
  const left = notebook.shown.filter((id) => id !== scenarioId);
  if (left.length === 0) return notebook;
  const next = listed(notebook, left);
  return notebook.active === scenarioId ? { ...next, active: next.shown[0]! } : next;
}
