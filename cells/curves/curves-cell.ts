import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { type CellProperties, NotebookEdit, type ResultsView } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { pictureCellStyles } from '#cells/shared/picture-cell-styles.ts';
import { type PictureFormat, pictureTools } from '#cells/shared/picture-tools.ts';
import { savePicture } from '#cells/shared/save-picture.ts';
import { segmented, segmentedStyles } from '#cells/shared/segmented.ts';
import { stackPicker } from '#cells/shared/stack-picker.ts';
import '#src/charts/band-chart.ts';
import type { BandChart } from '#src/charts/band-chart.ts';
import { bandCsv, bandTable } from '#src/charts/band-table.ts';
import { toggleOverlay } from '#src/notebook/edits/toggle-overlay.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { CurveOverlay, CurveQuantity, CurvesCell, Notebook } from '#src/notebook/types.ts';
import { needsTools, OVERLAYS } from './curve-overlays.ts';
import { CURVE_QUANTITIES, curveQuantityInfo } from './curve-quantities.ts';
import { curvesStyles } from './curves-styles.ts';
import { type CurvesTools, type CurvesView, curvesView } from './curves-view.ts';
import type { BandsWaiting, MeasuredEditor } from './measured-editor.ts';
import type { MeasuredColumn } from './read-measured.ts';

/** Transmission loss or impact level over frequency, a line per shown scenario, with what explains the lines. */
@customElement('curves-cell')
export class CurvesCellElement extends LitElement implements CellProperties<CurvesCell> {
  static override styles = [controlStyles, segmentedStyles, pictureCellStyles, curvesStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: CurvesCell;
  @property({ attribute: false }) results!: ResultsView;

  @state() private table = false;
  @state() private problem: string | undefined;
  /** A file of bands hovers over the cell. */
  @state() private dropping = false;
  @state() private tools: CurvesTools = {};
  /** Whether the editor of measured bands is open; undefined while nobody has asked for it. */
  @state() private measuring: boolean | undefined;
  /** Measured bands that were read and wait for their source. */
  @state() private waiting: readonly MeasuredColumn[] = [];
  /** Whether the choice of textbook models is open. */
  @state() private comparing = false;
  @query('band-chart') private chart!: BandChart | null;
  @query('measured-editor') private editor!: MeasuredEditor | null;

  #view!: CurvesView;
  readonly #asked = new Set<() => Promise<CurvesTools>>();

  constructor() {
    super();
    this.addEventListener('dragenter', () => void this.#onDragEnter(), { once: true });
  }

  /** Not gains: measured bands and textbook models are levels. */
  get #showsLevels(): boolean {
    return !curveQuantityInfo(this.cell.quantity).relative;
  }

  protected override willUpdate(changed: PropertyValues): void {
    const cell = withWaiting(this.cell, this.waiting);
    if (cell.measured) void this.#loadTools(measuredTools);
    if (needsTools(this.cell)) void this.#loadTools(overlayTools);
    if (SHOWN.some((name) => changed.has(name))) this.#view = curvesView(this.notebook, cell, this.results, this.tools);
  }

  override render() {
    const { cell, notebook } = this;
    const view = this.#view;
    return html`
      <div class="choices screen-only">
        ${segmented({
          label: 'What the curves show',
          name: 'quantity',
          choices: CURVE_QUANTITIES.map(({ quantity, label }) => ({ value: quantity, label })),
          value: cell.quantity,
          onChange: (value) => this.#update('quantity of the curves', { quantity: value as CurveQuantity }),
        })}
        ${stackPicker(notebook, cell.stack, (stack) => this.#update('stack of the curves', { stack }))}
        <label class="low"
          ><input
            type="checkbox"
            .checked=${cell.lowestBand_Hz === 20}
            @change=${() =>
              this.#update('lowest band of the curves', { lowestBand_Hz: cell.lowestBand_Hz === 20 ? 50 : 20 })}
          />from 20 Hz</label
        >
      </div>
      ${
        view.empty === undefined
          ? html`<band-chart
              class=${this.dropping ? 'dropping' : ''}
              .data=${view.data}
              .label=${view.label}
              .busy=${view.busy}
            ></band-chart>`
          : html`<p class="empty" aria-busy=${view.busy}>${view.empty}</p>`
      }
      ${notesOf(view).map((remark) => html`<p class="note remark">${remark}</p>`)}
      ${view.ratings ? this.tools.ratingsTable?.(view.ratings) : nothing}
      ${view.failures.map(({ name, message }) => html`<p class="error" role="status">${name}: ${message}</p>`)}
      ${this.#renderOverlays()}
      ${
        view.empty === undefined
          ? pictureTools({
              table: this.table,
              onTable: () => {
                this.table = !this.table;
              },
              onSave: (format) => this.#save(format),
            })
          : nothing
      }
      ${this.problem ? html`<p class="error" role="alert">${this.problem}</p>` : nothing}
      ${
        this.table && view.empty === undefined
          ? bandTable(view.data, `${cell.title}: ${view.data.valueLabel}`)
          : nothing
      }
    `;
  }

  #renderOverlays() {
    const { cell } = this;
    return html`
      <fieldset class="overlays screen-only">
        <legend>Lay over</legend>
        ${OVERLAYS.filter(({ fits }) => fits(cell.quantity)).map(
          ({ overlay, label }) => html`
            <label
              ><input
                type="checkbox"
                .checked=${cell.overlays.includes(overlay)}
                @change=${() => this.#toggle(overlay)}
              />${label}</label
            >
          `,
        )}
        ${
          this.#showsLevels
            ? [
                opener('Textbook models …', this.comparing, this.#onTextbook),
                opener('Measured bands …', this.measuring ?? false, this.#onMeasured),
              ]
            : nothing
        }
      </fieldset>
      ${
        this.comparing && this.#showsLevels
          ? html`<textbook-choices
              class="screen-only"
              .cell=${cell}
              .floor=${this.#view.focus}
              .units=${this.notebook.units}
            ></textbook-choices>`
          : nothing
      }
      ${
        // Once open it only hides, so that what was begun in it is not lost.
        this.measuring === undefined
          ? nothing
          : html`<measured-editor
              class="screen-only"
              .cell=${cell}
              ?hidden=${!(this.measuring && this.#showsLevels)}
              @bands-waiting=${this.#onWaiting}
            ></measured-editor>`
      }
    `;
  }

  /** The code behind it comes when it is first asked for. */
  #onMeasured = (): Promise<void> => this.#showEditor(!this.measuring);

  async #showEditor(shown: boolean): Promise<void> {
    this.measuring = shown;
    if (!(await this.#loaded(() => import('./measured-editor.ts')))) this.measuring = undefined;
    await this.updateComplete;
  }

  #onWaiting = ({ columns }: BandsWaiting): void => {
    this.waiting = columns;
  };

  #onDragEnter = async (): Promise<void> => {
    const drop = await this.#loaded(() => import('./bands-drop.ts'));
    drop?.receiveBands(this, {
      takes: () => this.#showsLevels,
      onOver: (over) => {
        this.dropping = over;
      },
      onFile: (file) => void this.#onDropped(file),
    });
  };

  async #onDropped(file: File): Promise<void> {
    await this.#showEditor(true);
    await this.editor?.read(file);
  }

  #onTextbook = async (): Promise<void> => {
    this.comparing = !this.comparing;
    if (this.comparing && !(await this.#loaded(() => import('./textbook-choices.ts')))) this.comparing = false;
  };

  async #loadTools(load: () => Promise<CurvesTools>): Promise<void> {
    if (this.#asked.has(load)) return;
    this.#asked.add(load);
    const tools = await this.#loaded(load);
    if (tools) this.tools = { ...this.tools, ...tools };
    // What could not be loaded is tried again with the next change of the cell.
    else this.#asked.delete(load);
  }

  async #loaded<T>(load: () => Promise<T>): Promise<T | undefined> {
    try {
      return await load();
    } catch (error) {
      this.problem = `What lies over the curves could not be loaded: ${messageOf(error)}.`;
      return undefined;
    }
  }

  #toggle(overlay: CurveOverlay): void {
    const { id } = this.cell;
    this.dispatchEvent(new NotebookEdit('what lies over the curves', (n) => toggleOverlay(n, id, overlay)));
  }

  #update(label: string, patch: Parameters<typeof updateCell<'curves'>>[3]): void {
    const { id } = this.cell;
    this.dispatchEvent(new NotebookEdit(label, (notebook) => updateCell(notebook, id, 'curves', patch)));
  }

  async #save(format: PictureFormat): Promise<void> {
    const { notebook, cell, chart } = this;
    const { data, focus } = this.#view;
    const remarks = notesOf(this.#view);
    this.problem = await savePicture(format, {
      names: [notebook.title, cell.title],
      csv: () => bandCsv(data, focus?.scenario.name),
      picture: () => chart?.pictureParts(`${notebook.title}: ${cell.title}`, remarks),
    });
  }
}

/** On screen, on paper and under a saved picture. */
function notesOf({ remarks, around }: CurvesView): readonly string[] {
  return around ? [...remarks, around] : remarks;
}

function opener(label: string, open: boolean, onClick: () => Promise<void>) {
  return html`<button type="button" class="quiet" aria-expanded=${open} @click=${onClick}>${label}</button>`;
}

/** Bands that wait for their source are drawn like the others, but not kept. */
function withWaiting(cell: CurvesCell, waiting: readonly MeasuredColumn[]): CurvesCell {
  if (waiting.length === 0) return cell;
  const drawn = waiting.map((column, i) => ({ ...column, id: `waiting-${i}`, source: 'source not said yet' }));
  return { ...cell, measured: [...(cell.measured ?? []), ...drawn] };
}

const measuredTools = () => import('./measured-tools.ts');
const overlayTools = () => import('./overlay-tools.ts');

/** What the picture is made of. */
const SHOWN = ['notebook', 'cell', 'results', 'tools', 'waiting'];

declare global {
  interface HTMLElementTagNameMap {
    'curves-cell': CurvesCellElement;
  }
}
