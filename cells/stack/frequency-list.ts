/** Resonances and critical frequencies of one scenario in words. */
import { html, nothing, type TemplateResult } from 'lit';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import type { Notebook } from '#src/notebook/types.ts';
import type { StackColumn } from './stack-columns.ts';

export function frequencyList({ scenario, result }: StackColumn, notebook: Notebook): TemplateResult | typeof nothing {
  const { prediction } = result;
  if (!prediction) return nothing;
  const frequencies = [...prediction.resonances_Hz, ...prediction.criticalFrequencies_Hz].toSorted(
    (a, b) => a.frequency_Hz - b.frequency_Hz,
  );
  if (frequencies.length === 0) return nothing;
  return html`
    <h3>Where it resonates</h3>
    ${
      notebook.shown.length > 1
        ? html`<p class="note who">${scenarioSample(scenario)}<span>${scenario.name}</span></p>`
        : nothing
    }
    <table class="frequencies awaited" aria-busy=${result.state === 'computing'}>
      <caption class="visually-hidden">
        Resonances and critical frequencies of ${scenario.name}
      </caption>
      <tbody>
        ${frequencies.map(
          ({ frequency_Hz, name }) => html`
            <tr>
              <td class="number">${hertzText(frequency_Hz)}</td>
              <td>${name}</td>
            </tr>
          `,
        )}
      </tbody>
    </table>
  `;
}
