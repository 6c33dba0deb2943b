import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { aroundRecord } from '#cells/record/around-record.ts';
import { floorRecord, type RecordGroup } from '#cells/record/floor-record.ts';
import { type MaterialRecord, materialsRecord } from '#cells/record/materials-record.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import { findScenario, findStack } from '#src/notebook/find.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { Notebook, Scenario, Stack } from '#src/notebook/types.ts';
import { Printing } from './printing.ts';

/** Columns of scenarios that an upright sheet has room for; more go into a further table. */
const SCENARIOS_ABREAST = 5;

/**
 * What the printed numbers were computed from, on paper only: every number of the layers, the materials with their sources,
 * what goes around the floor. Made while the page is being printed and not before.
 */
@customElement('printed-record')
export class PrintedRecord extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        display: none;
        margin-top: var(--space-5);
      }
      @media print {
        :host {
          display: block;
        }
      }
      table {
        margin-bottom: var(--space-3);
        font-size: var(--size-small);
      }
      th,
      td {
        padding-block: 0.1rem;
        vertical-align: top;
      }
      tbody.group {
        break-inside: avoid;
      }
      .layers {
        table-layout: fixed;
      }
      .layers thead td {
        width: 11rem;
      }
      .layers thead svg {
        display: block;
      }
      thead th {
        vertical-align: bottom;
      }
      .group th {
        font-weight: 400;
      }
      .group .name th {
        padding-top: var(--space-2);
        font-weight: 600;
      }
      h3 {
        margin: var(--space-3) 0 var(--space-2);
      }
      p {
        margin: 0 0 var(--space-2);
      }
      ul {
        margin: 0 0 var(--space-3);
        padding-left: var(--space-4);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;

  readonly #printing = new Printing(this);

  override render() {
    const { notebook } = this;
    if (!this.#printing.since) return nothing;
    const ids = new Set(notebook.cells.flatMap((cell) => ('stack' in cell ? [cell.stack] : [])));
    return html`<h2>What was computed</h2>
      ${[...ids].map((id) => floor(notebook, findStack(notebook, id)))}
      ${ids.size > 0 ? around(notebook) : nothing}`;
  }
}

function floor(notebook: Notebook, stack: Stack) {
  try {
    const tables = abreast(notebook.shown).map((ids) => {
      const scenarios = ids.map((id) => findScenario(notebook, id));
      return layersTable(stack, scenarios, floorRecord(notebook, stack, ids));
    });
    return html`<h3>${stack.name}</h3>
      ${tables}
      <p>“Usual”: not stated, but what is taken for a support or material of that kind.</p>
      ${stack.leaks?.length ? nothing : html`<p>No gaps or penetrations.</p>`}
      ${materialsTable(materialsRecord(notebook, stack, notebook.shown))}`;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return html`<h3>${stack.name}</h3>
      <p>${messageOf(error)}</p>`;
  }
}

function abreast(ids: readonly string[]): readonly (readonly string[])[] {
  const tables = Math.ceil(ids.length / SCENARIOS_ABREAST);
  return Array.from({ length: tables }, (_, i) => ids.slice(i * SCENARIOS_ABREAST, (i + 1) * SCENARIOS_ABREAST));
}

function layersTable(stack: Stack, scenarios: readonly Scenario[], groups: readonly RecordGroup[]): TemplateResult {
  const every = scenarios.length > 1 ? ' in each' : '';
  return html`<table class="layers">
    <caption class="visually-hidden">
      Layers of ${stack.name}
    </caption>
    <thead>
      <tr>
        <td></td>
        ${scenarios.map((scenario) => html`<th scope="col">${scenarioSample(scenario)} ${scenario.name}</th>`)}
      </tr>
    </thead>
    ${groups.map(
      ({ name, rows }) => html`<tbody class="group">
        <tr class="name">
          <th scope="rowgroup" colspan=${scenarios.length + 1}>${name}</th>
        </tr>
        ${rows.map(
          ({ label, texts }) => html`<tr>
            <th scope="row">${label}</th>
            ${
              new Set(texts).size === 1
                ? html`<td colspan=${scenarios.length}>${texts[0]}${every}</td>`
                : texts.map((text) => html`<td>${text}</td>`)
            }
          </tr>`,
        )}
      </tbody>`,
    )}
  </table>`;
}

function materialsTable(materials: readonly MaterialRecord[]) {
  return html`<table class="materials">
    <thead>
      <tr>
        <th scope="col">material</th>
        <th scope="col">its numbers, unless stated otherwise above</th>
        <th scope="col">where they come from</th>
      </tr>
    </thead>
    <tbody>
      ${materials.map(
        ({ name, isOwn, numbers, source }) => html`<tr>
          <th scope="row">${name}${isOwn ? ' (this notebook’s own)' : ''}</th>
          <td>${numbers}</td>
          <td>${source}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function around(notebook: Notebook) {
  return html`<h3>Around the floor, in every scenario</h3>
    <ul>
      ${aroundRecord(notebook).map((sentence) => html`<li>${sentence}</li>`)}
    </ul>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'printed-record': PrintedRecord;
  }
}
