import { html, type TemplateResult } from 'lit';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import type { Scenario } from '#src/notebook/types.ts';
import { scenarioSample } from '../shared/scenario-sample.ts';

/** A table of values that may scroll sideways: one column a scenario, what each value is in the last. */
export function columnTable(
  label: string,
  columns: readonly { readonly scenario: Scenario }[],
  bodies: TemplateResult,
): TemplateResult {
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${label} ${fadeWhereMore()}>
    <table style="--columns: ${columns.length}">
      <thead>
        <tr>
          <th scope="col"><span class="visually-hidden">Value</span></th>
          ${columns.map(
            ({ scenario }) => html`<th scope="col" class="number">${scenarioSample(scenario)} ${scenario.name}</th>`,
          )}
          <th scope="col" class="about">what it is</th>
        </tr>
      </thead>
      ${bodies}
    </table>
  </div>`;
}
