import { findScenario } from '../find.ts';
import type { Notebook } from '../types.ts';

/** Differences are taken from this scenario from now on. */
export function setReference(notebook: Notebook, scenarioId: string): Notebook {
  findScenario(notebook, scenarioId);
  return { ...notebook, reference: scenarioId };
}
