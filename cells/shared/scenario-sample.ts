/** The short piece of line that stands for a scenario wherever it is named: colour, dash and marker. */
import type { TemplateResult } from 'lit';
import { lineSample } from '#src/charts/line-sample.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';
import type { Scenario } from '#src/notebook/types.ts';

/** Decoration only: the name beside it speaks. */
export function scenarioSample({ mark }: Pick<Scenario, 'mark'>): TemplateResult {
  return lineSample(scenarioMark(mark));
}
