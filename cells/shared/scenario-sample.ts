import type { TemplateResult } from 'lit';
import { lineSample } from '#src/charts/line-sample.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';

/**
 * The short piece of line that stands for a scenario wherever it is named. Decoration only: the name beside it speaks.
 *
 * @param index Of the scenario in the notebook's list.
 */
export function scenarioSample(index: number): TemplateResult {
  return lineSample(scenarioMark(index));
}
