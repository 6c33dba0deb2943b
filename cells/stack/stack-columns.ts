/** What a stack cell shows side by side: every shown scenario with its construction and its prediction. */

import type { Result, ResultsView } from '#cells/contract.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, Scenario } from '#src/notebook/types.ts';

export interface StackColumn {
  readonly scenario: Scenario;
  /** Absent where the stack could not be resolved; `problem` then says why. */
  readonly construction?: Construction;
  readonly problem?: string;
  readonly result: Result;
}

export function stackColumns(notebook: Notebook, stackId: string, results: ResultsView): readonly StackColumn[] {
  return notebook.shown.flatMap((id) => {
    const scenario = notebook.scenarios.find((s) => s.id === id);
    return scenario ? [stackColumn(notebook, scenario, stackId, results)] : [];
  });
}

function stackColumn(notebook: Notebook, scenario: Scenario, stackId: string, results: ResultsView): StackColumn {
  const result = results.of(scenario.id, stackId);
  try {
    return { scenario, result, construction: resolveStack(notebook, scenario.id, stackId) };
  } catch (error) {
    return { scenario, result, problem: messageOf(error) };
  }
}

/** The column that words and masses are about: the active scenario's if it is shown, else the first. */
export function focusColumn(columns: readonly StackColumn[], active: string): StackColumn | undefined {
  return columns.find((c) => c.scenario.id === active) ?? columns[0];
}
