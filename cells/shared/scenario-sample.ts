/** The short piece of line that stands for a scenario wherever it is named: colour, dash and marker. */
import type { TemplateResult } from 'lit';
import { lineSample } from '#src/charts/line-sample.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';

/** `index`: of the scenario in the notebook's list. Decoration only: the name beside it speaks. */
export function scenarioSample(index: number): TemplateResult {
  return lineSample(scenarioMark(index));
}
