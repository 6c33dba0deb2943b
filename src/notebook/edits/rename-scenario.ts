import { findScenario } from '../find.ts';
import type { Notebook } from '../types.ts';
import { withScenario } from './scenario-changes.ts';

export function renameScenario(notebook: Notebook, scenarioId: string, name: string): Notebook {
  findScenario(notebook, scenarioId);
  return withScenario(notebook, scenarioId, (s) => ({ ...s, name }));
}
