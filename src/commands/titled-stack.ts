import type { NotebookPrediction, StackPrediction } from './predict-notebook.ts';

/** A predicted stack under the heading that tables give it. */
export interface TitledStack {
  readonly title: string;
  readonly stack: StackPrediction;
}

/** Scenario by scenario. */
export function titledStacks({ scenarios }: NotebookPrediction): readonly TitledStack[] {
  return scenarios.flatMap((scenario) =>
    scenario.stacks.map((stack) => ({ title: titleOf(scenario.name, stack.name), stack })),
  );
}

function titleOf(scenario: string, stack: string): string {
  return scenario === stack ? stack : `${scenario}: ${stack}`;
}
