import { findScenario } from '../find.ts';
import type { Notebook } from '../types.ts';
import { listed } from './shown-order.ts';

/** Sliders and stack edits write to this scenario from now on; it is shown if it was not. */
export function setActive(notebook: Notebook, scenarioId: string): Notebook {
  findScenario(notebook, scenarioId);
  return listed({ ...notebook, active: scenarioId }, [...notebook.shown, scenarioId]);
}
