/** Resonances and critical frequencies of one scenario in words. */
import { html, nothing, type TemplateResult } from 'lit';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import type { NamedFrequency } from '#src/acoustics/prediction.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import type { Notebook } from '#src/notebook/types.ts';
import type { StackColumn } from './stack-columns.ts';

/** As the curves and the table above call them. */
const SYMBOLS: Partial<Readonly<Record<NamedFrequency['kind'], string>>> = {
  'mass-spring-mass': 'f0',
  floating: 'f0',
  critical: 'fc',
};

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
          ({ frequency_Hz, name, kind }) => html`
            <tr>
              <td class="number">${SYMBOLS[kind] ? html`<span class="note">${SYMBOLS[kind]}</span> ` : nothing}${hertzText(frequency_Hz)}</td>
              <td>${name}</td>
            </tr>
          `,
        )}
      </tbody>
    </table>
  `;
}
