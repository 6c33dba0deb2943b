import type { Notebook } from '../types.ts';
import { withoutChange } from './scenario-changes.ts';

/** Takes a scenario's own change of a parameter out, so that the parent's value shows again. No effect in the base. */
export function resetParameter(notebook: Notebook, key: string, scenarioId = notebook.active): Notebook {
  return withoutChange(notebook, scenarioId, key);
}
