import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { type CellProperties, NotebookEdit, type ResultsView } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { pictureCellStyles } from '#cells/shared/picture-cell-styles.ts';
import { type PictureFormat, pictureTools } from '#cells/shared/picture-tools.ts';
import { savePicture } from '#cells/shared/save-picture.ts';
import { scenarioChoice, scenarioChoiceStyles } from '#cells/shared/scenario-choice.ts';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import { segmented, segmentedStyles } from '#cells/shared/segmented.ts';
import { stackPicker } from '#cells/shared/stack-picker.ts';
import '#src/charts/share-chart.ts';
import type { BandRead } from '#src/charts/band-pointer.ts';
import { numberTable } from '#src/charts/band-table.ts';
import { PATH_MARKS } from '#src/charts/path-marks.ts';
import type { ShareChart } from '#src/charts/share-chart.ts';
import { shareText } from '#src/charts/share-data.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import type { Notebook, PathsCell } from '#src/notebook/types.ts';
import './change-fold.ts';
import { type PathsView, pathsView, sharesCsv } from './paths-view.ts';

/** Which way the sound takes in every band, and in one sentence per region what rules there. */
@customElement('paths-cell')
export class PathsCellElement extends LitElement implements CellProperties<PathsCell> {
  static override styles = [
    controlStyles,
    segmentedStyles,
    scenarioChoiceStyles,
    pictureCellStyles,
    css`
      ol {
        max-width: var(--reading-width);
        margin: var(--space-4) 0 0;
        padding: 0;
        list-style: none;
        counter-reset: region;
        font-family: var(--text);
        font-size: var(--size-body);
        line-height: var(--leading);
      }
      li {
        position: relative;
        padding: 0.1rem 0 0.1rem 2rem;
        counter-increment: region;
      }
      li::before {
        content: counter(region);
        position: absolute;
        left: 0;
        width: 1.25rem;
        text-align: right;
        font-family: var(--sans);
        font-size: var(--size-ui);
        font-weight: 600;
      }
      /* What the buttons say on screen. */
      .whose {
        display: none;
      }
      @media print {
        .whose {
          display: flex;
          align-items: baseline;
          gap: var(--space-2);
          overflow-wrap: anywhere;
          break-after: avoid;
        }
        ol {
          break-inside: avoid;
        }
      }
      li.lit {
        background: var(--paper-sunk);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: PathsCell;
  @property({ attribute: false }) results!: ResultsView;

  @state() private wished: string | undefined;
  @state() private lit: number | undefined;
  @state() private table = false;
  @state() private problem: string | undefined;
  @query('share-chart') private chart!: ShareChart | null;

  #view!: PathsView;

  protected override willUpdate(changed: PropertyValues): void {
    if (['notebook', 'cell', 'results', 'wished'].some((name) => changed.has(name)))
      this.#view = pathsView(this.notebook, this.cell, this.results, this.wished);
  }

  override render() {
    const { notebook, cell } = this;
    const view = this.#view;
    return html`
      <div class="choices screen-only">
        ${segmented({
          label: 'Sound whose paths are shown',
          name: 'sound',
          choices: [
            { value: 'airborne', label: 'Airborne' },
            { value: 'impact', label: 'Impact' },
          ],
          value: cell.sound,
          onChange: (sound) => this.#update('sound of the paths', { sound: sound as PathsCell['sound'] }),
        })}
        ${stackPicker(notebook, cell.stack, (stack) => this.#update('stack of the paths', { stack }))}
      </div>
      ${scenarioChoice({
        shown: view.shown,
        chosen: view.chosen?.id,
        name: 'scenario',
        onChange: (id) => {
          this.wished = id;
        },
      })}
      ${
        view.chosen
          ? html`<p class="whose">${scenarioSample(view.chosen)}<span>${view.chosen.name}, ${cell.sound} sound</span></p>`
          : nothing
      }
      ${view.failure ? html`<p class="error" role="status">${view.chosen?.name}: ${view.failure}</p>` : nothing}
      ${
        view.empty === undefined
          ? this.#renderPicture(view)
          : html`<p class="empty" aria-busy=${view.busy}>${view.empty}</p>`
      }
      ${
        view.chosen && view.empty === undefined
          ? html`<change-fold
              .notebook=${notebook}
              .results=${this.results}
              .stack=${cell.stack}
              .scenario=${view.chosen.id}
              .sound=${cell.sound}
            ></change-fold>`
          : nothing
      }
    `;
  }

  #renderPicture(view: PathsView) {
    return html`
      <share-chart
        .data=${view.data}
        .label=${view.label}
        .busy=${view.busy}
        .lit=${this.lit}
        @band-read=${this.#onBand}
      ></share-chart>
      <ol class="awaited" aria-busy=${view.busy} aria-label="What rules, from low to high frequencies">
        ${view.sentences.map(
          (sentence, i) => html`
            <li
              class=${this.lit === i ? 'lit' : ''}
              @pointerenter=${() => this.#light(i)}
              @pointerleave=${() => this.#light(undefined)}
            >
              ${unbroken(sentence)}
            </li>
          `,
        )}
      </ol>
      ${view.caution === undefined ? nothing : html`<p class="note">${view.caution}</p>`}
      ${pictureTools({
        table: this.table,
        onTable: () => {
          this.table = !this.table;
        },
        onSave: (format) => this.#save(format),
      })}
      ${this.problem ? html`<p class="error" role="alert">${this.problem}</p>` : nothing}
      ${this.table ? this.#renderTable(view) : nothing}
    `;
  }

  #renderTable({ data, chosen }: PathsView) {
    const columns = data.paths.map(({ path, shares }) => ({
      label: PATH_MARKS[path].label,
      text: (index: number) => shareText(shares[index]),
    }));
    return numberTable(data.bands_Hz, columns, `Share of each path in ${chosen?.name}`);
  }

  #light(index: number | undefined): void {
    this.lit = index;
  }

  /** The sentence of the band that is read. */
  #onBand = ({ index }: BandRead) => {
    const region = this.#view.data.regions.findIndex(({ first, last }) => index >= first && index <= last);
    this.lit = region < 0 ? undefined : region;
  };

  #update(label: string, patch: Parameters<typeof updateCell<'paths'>>[3]): void {
    const { id } = this.cell;
    this.dispatchEvent(new NotebookEdit(label, (notebook) => updateCell(notebook, id, 'paths', patch)));
  }

  async #save(format: PictureFormat): Promise<void> {
    const { notebook, cell, chart } = this;
    const { chosen, sentences, caution, data } = this.#view;
    const title = `${notebook.title}: ${cell.title}, ${chosen?.name}`;
    this.problem = await savePicture(format, {
      names: [notebook.title, cell.title, chosen?.name ?? ''],
      csv: () => sharesCsv(data),
      picture: () => chart?.pictureParts(title, caution === undefined ? sentences : [...sentences, caution]),
    });
  }
}

/** A number and its unit stay on one line. */
function unbroken(sentence: string): string {
  return sentence.replace(/(\d) (?=[A-Za-z%])/g, '$1\u00a0');
}

declare global {
  interface HTMLElementTagNameMap {
    'paths-cell': PathsCellElement;
  }
}
