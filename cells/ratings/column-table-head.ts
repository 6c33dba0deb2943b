import { html, type TemplateResult } from 'lit';
import type { Scenario } from '#src/notebook/types.ts';
import { scenarioSample } from '../shared/scenario-sample.ts';

/** Heading of a table of values, one column a scenario, what each value is in the last. */
export function columnTableHead(columns: readonly { readonly scenario: Scenario }[]): TemplateResult {
  return html`<thead>
    <tr>
      <th scope="col"><span class="visually-hidden">Value</span></th>
      ${columns.map(
        ({ scenario }) => html`<th scope="col" class="number">${scenarioSample(scenario)} ${scenario.name}</th>`,
      )}
      <th scope="col" class="about">what it is</th>
    </tr>
  </thead>`;
}
