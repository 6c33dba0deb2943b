import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type Improvement, improvementOf } from '#src/acoustics/improvement.ts';
import { laidOnStandardSlab } from '#src/acoustics/standard-slab.ts';
import { levelText } from '#src/charts/band-data.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { findScenario } from '#src/notebook/find.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, RatingsCell, Scenario } from '#src/notebook/types.ts';
import { NO_VALUE } from '#src/quantities/format-quantity.ts';
import { NotebookEdit, type ResultsView } from '../contract.ts';
import { controlStyles } from '../shared/controls.ts';
import { foldStyles } from '../shared/fold-styles.ts';
import { wholeNumber } from '../shared/number-words.ts';
import { columnTable } from './column-table.ts';
import { columnTableStyles } from './column-table-styles.ts';

interface Column {
  readonly scenario: Scenario;
  readonly computing: boolean;
  /** Absent while it is computed for the first time. */
  readonly improvement: Improvement | undefined;
}

interface Row {
  readonly name: string;
  readonly about: string;
  show(improvement: Improvement): string;
}

const ROWS: readonly Row[] = [
  {
    name: 'ΔLw (CI,Δ)',
    about: 'weighted reduction of impact sound with its term, ISO 717-2; more is better',
    show: ({ dLw, CIdelta }) => `${wholeNumber(dLw)} (${wholeNumber(CIdelta)})`,
  },
  {
    name: 'ΔIIC',
    about: 'improvement of the impact insulation class, ASTM E2179; more is better',
    show: ({ dIIC }) => wholeNumber(dIIC),
  },
  {
    name: 'f0',
    about: 'where what floats bounces on its mat over the slab',
    show: ({ floatingResonance_Hz }) =>
      floatingResonance_Hz === undefined ? NO_VALUE : hertzText(floatingResonance_Hz),
  },
];

/**
 * Folded away under the ratings: what the covering and the leaves on mats take off impact sound by themselves, on the slab that
 * the standards compare them on. Nothing where nothing lies on the shown floors.
 */
@customElement('laid-part')
export class LaidPart extends LitElement {
  static override styles = [
    controlStyles,
    foldStyles,
    columnTableStyles,
    css`
      .group th {
        padding-top: var(--space-3);
        color: var(--ink-soft);
        font-size: var(--size-small);
        font-weight: normal;
        border-bottom-color: var(--hairline-strong);
      }
      .bands :is(td, th[scope='row']) {
        padding-top: 0;
        padding-bottom: 0;
        font-size: var(--size-small);
        border-bottom: 0;
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: RatingsCell;
  @property({ attribute: false }) results!: ResultsView;

  /** Of the shown scenarios, those whose floor something lies on. */
  #laid: readonly string[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('notebook') && !changed.has('cell')) return;
    const { notebook, cell } = this;
    this.#laid = notebook.shown.filter((id) => hasLaid(notebook, id, cell.stack));
  }

  override render() {
    if (this.#laid.length === 0) return nothing;
    const { laidPart: open = false } = this.cell;
    return html`<details ?open=${open}>
      <summary @click=${this.#onSummary}>What lies on the floor, by itself on a concrete slab</summary>
      ${open ? this.#content() : nothing}
    </details>`;
  }

  #content() {
    const columns = this.#laid.map((id) => this.#column(id));
    const { bands_Hz = [] } = columns.find((c) => c.improvement)?.improvement ?? {};
    const bodies = html`<tbody>
        ${ROWS.map((row) => tableRow(row, columns))}
      </tbody>
      <tbody class="bands">
        <tr class="group">
          <th scope="rowgroup" colspan=${columns.length + 2}>ΔL, drop of the impact level in each band, dB</th>
        </tr>
        ${bands_Hz.map((band_Hz, i) => tableRow(bandRow(band_Hz, i), columns))}
      </tbody>`;
    return html`<p class="note">
        Coverings, and floors that float on mats, are compared by what they take off the tapping machine's sound on a bare
        concrete slab of 140 mm (ISO 10140-5). This is predicted here, without the deck, ceiling and walls of this floor. On
        the floor itself, on joists above all, they take off something else: that is in the ratings above.
        ${this.#others()}
      </p>
      ${columnTable('What lies on the floor, on a concrete slab', columns, bodies)}
      <p class="note">
        Screeds and dry floors on mats come within 4 dB of what ISO 12354-2 gives for them. Beyond some 60 dB in a band nobody
        measures it any more.
      </p>
      <p class="caution">
        A prediction is no test report: ask the maker for one. A single bridge of screed to a wall or to the slab takes much
        of this away again.
      </p>`;
  }

  /** Shown scenarios without a column. */
  #others() {
    const { notebook } = this;
    const names = notebook.shown.filter((id) => !this.#laid.includes(id)).map((id) => findScenario(notebook, id).name);
    return names.length === 0 ? nothing : `Nothing of the kind lies on: ${names.join(', ')}.`;
  }

  #column(scenarioId: string): Column {
    const { notebook, cell, results } = this;
    const scenario = findScenario(notebook, scenarioId);
    const [bare, laid] = (['bare-slab', 'laid-on-slab'] as const).map((part) =>
      results.of(scenarioId, cell.stack, { part }),
    );
    return {
      scenario,
      computing: bare!.state === 'computing' || laid!.state === 'computing',
      improvement: bare?.prediction && laid?.prediction && improvementOf(bare.prediction, laid.prediction),
    };
  }

  /** Whether it is open is kept in the cell, since only then it is computed. */
  #onSummary = (event: Event): void => {
    event.preventDefault();
    const { id, laidPart = false } = this.cell;
    this.dispatchEvent(
      new NotebookEdit('what lies on the floor', (n) => updateCell(n, id, 'ratings', { laidPart: !laidPart })),
    );
  };
}

function hasLaid(notebook: Notebook, scenarioId: string, stackId: string): boolean {
  try {
    return laidOnStandardSlab(resolveStack(notebook, scenarioId, stackId)) !== undefined;
  } catch {
    // A floor that cannot be computed is told of above.
    return false;
  }
}

function bandRow(band_Hz: number, index: number): Row {
  return { name: `${band_Hz} Hz`, about: '', show: ({ dL_dB }) => levelText(dL_dB[index], true) };
}

function tableRow({ name, about, show }: Row, columns: readonly Column[]) {
  return html`<tr>
    <th scope="row" title=${about || nothing}>${name}</th>
    ${columns.map(
      ({ improvement, computing }) => html`<td class="number awaited" aria-busy=${computing}>
        ${improvement ? show(improvement) : computing ? '…' : NO_VALUE}
      </td>`,
    )}
    <td class="about">${about}</td>
  </tr>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'laid-part': LaidPart;
  }
}
