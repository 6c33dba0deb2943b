import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { findScenario } from '#src/notebook/find.ts';
import type { Notebook, RatingsCell as RatingsCellModel, Scenario } from '#src/notebook/types.ts';
import { NO_VALUE } from '#src/quantities/format-quantity.ts';
import { type CellProperties, NotebookEdit, type Result, type ResultsView } from '../contract.ts';
import { controlStyles } from '../shared/controls.ts';
import { signed } from '../shared/number-words.ts';
import { scenarioSample } from '../shared/scenario-sample.ts';
import { stackPicker } from '../shared/stack-picker.ts';
import { RATING_ROWS, type RatingRow } from './rating-rows.ts';
import { ratingStory, type StoryLine } from './rating-story.ts';

interface Column {
  readonly scenario: Scenario;
  readonly result: Result;
}

/** The single numbers of the shown scenarios side by side, with what each gains over the reference. */
@customElement('ratings-cell')
export class RatingsCell extends LitElement implements CellProperties<RatingsCellModel> {
  static override styles = [
    controlStyles,
    css`
      .scroll {
        margin-bottom: var(--space-2);
      }
      th[scope="row"] {
        position: sticky;
        left: 0;
        background: var(--paper);
        min-width: 9rem;
      }
      th[scope="row"] button {
        min-height: 1.5rem;
        padding: 0;
        color: var(--ink);
        text-align: left;
        white-space: normal;
        text-decoration: underline dotted var(--hairline-strong);
        text-underline-offset: 0.22em;
      }
      th[scope="row"] button[aria-expanded="true"] {
        font-weight: 600;
        text-decoration-style: solid;
      }
      .group th {
        padding-top: var(--space-3);
        color: var(--ink-soft);
        font-size: var(--size-small);
        border-bottom-color: var(--hairline-strong);
      }
      .ratings {
        min-width: calc(9rem + 7rem * var(--columns));
        table-layout: fixed;
      }
      .ratings :is(th, td):last-child {
        padding-right: 0;
      }
      thead .number {
        white-space: normal;
      }
      thead .line-sample {
        display: block;
        margin: 0 0 var(--space-1) auto;
      }
      td.number {
        line-height: 1.3;
      }
      .difference {
        display: block;
        font-size: var(--size-small);
      }
      .neutral {
        color: var(--ink-soft);
      }
      [aria-busy="true"] .value {
        color: var(--ink-soft);
      }
      .story {
        margin: var(--space-2) 0 var(--space-4);
        padding: var(--space-3) var(--space-4);
        border-left: 2px solid var(--hairline-strong);
      }
      .story p {
        max-width: var(--reading-width);
      }
      .story table {
        width: auto;
        font-size: var(--size-small);
      }
      .story :is(th, td) {
        padding-right: var(--space-2);
      }
      .story th[scope="row"] {
        min-width: 5.5rem;
      }
      .stress {
        color: var(--accent);
        font-weight: 600;
      }
      .note {
        max-width: var(--reading-width);
      }
      .failures {
        margin-top: var(--space-2);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: RatingsCellModel;
  @property({ attribute: false }) results!: ResultsView;

  /** Key of the row whose story is told. */
  @state() private told: string | undefined;

  override render() {
    const { notebook, cell } = this;
    const columns = notebook.shown.map((id) => ({
      scenario: findScenario(notebook, id),
      result: this.results.of(id, cell.stack),
    }));
    const reference = this.results.of(notebook.reference, cell.stack);
    const picker = stackPicker(notebook, cell.stack, (stack) =>
      this.dispatchEvent(new NotebookEdit('stack of the ratings', (n) => updateCell(n, cell.id, 'ratings', { stack }))),
    );
    return html`<div class="screen-only">${picker}</div>
      <div class="scroll" tabindex="0" role="region" aria-label="Ratings of the shown scenarios">
        <table class="ratings" style="--columns: ${columns.length}">
          <thead>
            <tr>
              <th scope="col">${columns.length > 1 ? 'small: against the reference' : ''}</th>
              ${columns.map(({ scenario }) => this.#head(scenario))}
            </tr>
          </thead>
          ${(['Airborne', 'Impact', 'Build-up'] as const).map(
            (group) => html`<tbody>
              <tr class="group">
                <th scope="rowgroup" colspan=${columns.length + 1}>${group}</th>
              </tr>
              ${RATING_ROWS.filter((row) => row.group === group).map((row) => this.#row(row, columns, reference))}
            </tbody>`,
          )}
        </table>
      </div>
      <p class="note">
        Added mass is load that the floor must carry for good: a structural engineer decides, and wet concrete weighs
        more. Ratings are predicted for a laboratory.
      </p>
      ${this.#story()} ${this.#failures(columns)}`;
  }

  #head(scenario: Scenario) {
    const { notebook } = this;
    return html`<th scope="col" class="number">
      ${scenarioSample(notebook.scenarios.indexOf(scenario))} ${scenario.name}
      ${scenario.id === notebook.reference ? html`<br /><span class="neutral">reference</span>` : nothing}
    </th>`;
  }

  #row(row: RatingRow, columns: readonly Column[], reference: Result) {
    const told = this.told === row.key;
    const hasStory = row.group !== 'Build-up';
    return html`<tr>
      <th scope="row" title=${row.about}>
        ${
          hasStory
            ? html`<button
                class="quiet"
                aria-expanded=${told}
                aria-label="How ${row.label} came about"
                @click=${() => {
                  this.told = told ? undefined : row.key;
                }}
              >
                ${row.label}
              </button>`
            : row.label
        }
      </th>
      ${columns.map((column) => this.#value(row, column, reference))}
    </tr>`;
  }

  #value(row: RatingRow, { scenario, result }: Column, reference: Result) {
    const { units } = this.notebook;
    const { prediction } = result;
    if (!prediction)
      return html`<td class="number neutral" aria-busy=${result.state === 'computing'}>
        ${result.state === 'computing' ? '…' : NO_VALUE}
      </td>`;
    const difference =
      reference.prediction && scenario.id !== this.notebook.reference
        ? row.number(prediction) - row.number(reference.prediction)
        : undefined;
    return html`<td class="number" aria-busy=${result.state === 'computing'}>
      <span class="value">${row.show(prediction, units)}</span>
      ${
        difference === undefined
          ? nothing
          : html`<span class="difference ${tone(row, difference)}"
              >${row.showDifference?.(difference, units) ?? signed(difference)}</span
            >`
      }
    </td>`;
  }

  /** Told of the active scenario. */
  #story() {
    const { notebook, told } = this;
    if (told === undefined) return nothing;
    const row = RATING_ROWS.find((r) => r.key === told)!;
    const { prediction } = this.results.of(notebook.active, this.cell.stack);
    const story = prediction && ratingStory(told, prediction);
    if (!story) return nothing;
    const { name } = findScenario(notebook, notebook.active);
    return html`<section class="story" aria-label="How ${row.label} came about in ${name}">
      <h3>${row.label} of ${name}</h3>
      ${story.sentences.map((sentence) => html`<p>${sentence}</p>`)}
      <div class="scroll" tabindex="0" role="region" aria-label="Band by band">
        <table>
          <thead>
            <tr>
              <th scope="col">Hz</th>
              ${story.bands_Hz.map((band) => html`<th scope="col" class="number">${band}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${story.lines.map(storyLine)}
          </tbody>
        </table>
      </div>
    </section>`;
  }

  #failures(columns: readonly Column[]) {
    const failed = columns.flatMap(({ scenario, result }) =>
      result.state === 'failed' ? [html`<p class="error">${scenario.name}: ${result.message}</p>`] : [],
    );
    return failed.length === 0 ? nothing : html`<div class="failures">${failed}</div>`;
  }
}

function storyLine({ label, values_dB, stress }: StoryLine) {
  return html`<tr>
    <th scope="row">${label}</th>
    ${values_dB.map(
      (value) => html`<td class="number ${stress && value > 0 ? 'stress' : ''}">
        ${Number.isNaN(value) ? NO_VALUE : value.toFixed(1).replace('-', '−')}
      </td>`,
    )}
  </tr>`;
}

function tone({ better }: RatingRow, difference: number): 'better' | 'worse' | 'neutral' {
  const rounded = Math.round(difference);
  if (better === 'neither' || rounded === 0 || Number.isNaN(rounded)) return 'neutral';
  return rounded > 0 === (better === 'more') ? 'better' : 'worse';
}

declare global {
  interface HTMLElementTagNameMap {
    'ratings-cell': RatingsCell;
  }
}
