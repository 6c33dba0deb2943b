/** The sparse changes of one scenario: put one in, take one out. */
import { replacedWhere } from '../lists.ts';
import type { Notebook, ParameterValue, Scenario } from '../types.ts';

export function withScenario(notebook: Notebook, scenarioId: string, change: (s: Scenario) => Scenario): Notebook {
  return { ...notebook, scenarios: replacedWhere(notebook.scenarios, (s) => s.id === scenarioId, change) };
}

export function withChange(notebook: Notebook, scenarioId: string, key: string, value: ParameterValue): Notebook {
  return withScenario(notebook, scenarioId, (s) => ({ ...s, changes: { ...s.changes, [key]: value } }));
}

export function withoutChange(notebook: Notebook, scenarioId: string, key: string): Notebook {
  return withScenario(notebook, scenarioId, (s) => {
    if (!Object.hasOwn(s.changes, key)) return s;
    const { [key]: _removed, ...changes } = s.changes;
    return { ...s, changes };
  });
}
