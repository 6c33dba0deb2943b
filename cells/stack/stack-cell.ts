import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { type CellProperties, NotebookEdit, type ResultsView } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { outsideCheckedNote, outsideCheckedStyles } from '#cells/shared/outside-checked.ts';
import { ownJoistsCaution } from '#cells/shared/own-joists-caution.ts';
import { pictureCellStyles } from '#cells/shared/picture-cell-styles.ts';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import { stackPicker } from '#cells/shared/stack-picker.ts';
import { OutOfSight } from '#src/charts/out-of-sight.ts';
import { WidthKeeper } from '#src/charts/width-keeper.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import type { Notebook, Stack, StackCell } from '#src/notebook/types.ts';
import { columnSection } from './column-section.ts';
import { frequencyList } from './frequency-list.ts';
import './layer-list.ts';
import type { LayerList } from './layer-list.ts';
import type { OwnMaterialMade } from './own-material-made.ts';
import './own-materials.ts';
import { hasReach } from './reach.ts';
import { scaleBar } from './section/scale-bar.ts';
import type { Origin } from './section/section.ts';
import './section/section-drawing.ts';
import type { LayerPoint } from './section/section-drawing.ts';
import { layOut } from './section/section-layout.ts';
import { focusColumn, type StackColumn, stackColumns } from './stack-columns.ts';
import { stackTotals } from './stack-totals.ts';
import { aroundInWords, aroundNote } from './surroundings/around-words.ts';
import type { StackSurroundings } from './surroundings/stack-surroundings.ts';

/** The floor-ceiling drawn to scale in every shown scenario, with its layers, masses and resonances. */
@customElement('stack-cell')
export class StackCellElement extends LitElement implements CellProperties<StackCell> {
  static override styles = [
    controlStyles,
    pictureCellStyles,
    outsideCheckedStyles,
    css`
      .drawings {
        display: grid;
        gap: 0 var(--space-4);
      }
      figure {
        display: grid;
        grid-row: span 2;
        grid-template-rows: subgrid;
        align-items: end;
        margin: 0 0 var(--space-4);
        min-width: 0;
        break-inside: avoid;
      }
      figcaption,
      .who {
        display: flex;
        align-items: flex-start;
        gap: var(--space-2);
        overflow-wrap: anywhere;
      }
      figcaption {
        align-self: start;
        margin-top: var(--space-2);
        font-size: var(--size-small);
        line-height: 1.35;
      }
      figcaption svg,
      .who svg {
        margin-top: 0.2em;
      }
      .scale {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-1) var(--space-4);
        margin: 0 0 var(--space-5);
      }
      .totals table {
        width: auto;
        max-width: 52rem;
      }
      .totals th[scope="row"] {
        min-width: 9rem;
      }
      .totals :is(th[scope="row"], thead th:first-child) {
        position: sticky;
        left: 0;
        background-color: var(--paper);
      }
      .narrow {
        display: none;
      }
      @media screen and (max-width: 30rem) {
        .narrow {
          display: block;
          margin: var(--space-1) 0 0;
        }
      }
      @media (max-width: 30rem) {
        .totals {
          font-size: var(--size-small);
        }
        .totals th,
        .totals td {
          padding-right: var(--space-2);
        }
        .totals th[scope="row"] {
          min-width: 6.5rem;
        }
        /* Beside it there is no room for a name. */
        .totals .who {
          flex-direction: column;
          gap: 0;
        }
      }
      .caution {
        max-width: var(--reading-width);
        margin: var(--space-3) 0 var(--space-5);
      }
      .around {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        column-gap: var(--space-4);
      }
      .around button {
        margin-left: calc(-1 * var(--space-2));
      }
      .frequencies {
        max-width: var(--reading-width);
        margin: 0 0 var(--space-4);
      }
      .frequencies td:first-child {
        width: 7rem;
      }
      details.layers > summary {
        padding: var(--space-1) 0;
        font-weight: 600;
      }
      details.own {
        padding: var(--space-3) 0;
        border-top: 1px solid var(--hairline);
      }
      @media print {
        .totals,
        .frequencies {
          break-inside: avoid;
        }
        .who {
          break-after: avoid;
        }
        details.layers {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: StackCell;
  @property({ attribute: false }) results!: ResultsView;

  @state() private lit: Origin | undefined;
  @state() private editing = false;
  @state() private springs = false;
  @state() private around = false;
  @query('layer-list') private list!: LayerList | null;
  @query('stack-surroundings') private surroundings!: StackSurroundings | null;

  #columns: readonly StackColumn[] = [];
  readonly #size = new WidthKeeper(this);
  readonly #sight = new OutOfSight(this);

  protected override shouldUpdate(): boolean {
    return !this.hasUpdated || !this.#sight.mayWait();
  }

  protected override willUpdate(): void {
    this.#columns = this.#stack ? stackColumns(this.notebook, this.cell.stack, this.results) : [];
  }

  async reveal(path: FieldPath): Promise<void> {
    this.editing = true;
    if (path[0] === 'leaks') await this.#openSurroundings();
    await this.updateComplete;
    await (path[0] === 'leaks' ? this.surroundings : this.list)?.reveal(path);
  }

  override render() {
    const { notebook, cell } = this;
    const stack = this.#stack;
    const picker = stackPicker(notebook, cell.stack, (chosen) => this.#choose(chosen));
    if (!stack) return html`<p class="empty">The stack that stood here is no longer in the notebook.</p>${picker}`;
    const focus = focusColumn(this.#columns, notebook.active);
    return html`
      ${picker}
      ${
        this.#columns.length === 0
          ? html`<p class="empty">No scenario is shown. Show one, and its section appears here.</p>`
          : this.#renderDrawings(stack)
      }
      ${
        this.#columns.length === 0
          ? nothing
          : stackTotals({
              columns: this.#columns,
              reference: this.results.of(notebook.reference, cell.stack).prediction,
              referenceId: notebook.reference,
              units: notebook.units,
              caution: ownJoistsCaution(notebook, cell.stack),
            })
      }
      ${outsideCheckedNote(notebook, cell.stack)} ${aroundNote(notebook, stack, () => void this.#changeAround())}
      ${focus ? frequencyList(focus, notebook) : nothing}
      ${this.#columns.length ? this.#renderSwing(stack) : nothing}
      <details class="layers" ?open=${this.editing} @toggle=${this.#onToggle}>
        <summary>Layers and their fields</summary>
        ${this.editing ? this.#renderLayers(stack) : nothing}
      </details>
    `;
  }

  get #stack(): Stack | undefined {
    return this.notebook.stacks.find((s) => s.id === this.cell.stack);
  }

  #renderDrawings(stack: Stack) {
    const { notebook } = this;
    if (this.#size.width === 0) return nothing;
    const constructions = this.#columns.flatMap((c) => c.construction ?? []);
    const layout = layOut(constructions, this.#columns.length, this.#size.width);
    return html`
      <div
        class="drawings"
        style="grid-template-columns: repeat(${layout.columns}, minmax(0, 1fr))"
        @layer-point=${this.#onPoint}
      >
        ${this.#columns.map((column) => {
          const drawn = columnSection(notebook, stack, column, layout.width_m);
          const { scenario } = column;
          return html`
            <figure>
              ${
                'section' in drawn
                  ? html`<section-drawing
                      .section=${drawn.section}
                      .scale=${layout.scale}
                      .units=${notebook.units}
                      .lit=${this.lit}
                      .label=${`Section of ${scenario.name}: ${drawn.words}.`}
                    ></section-drawing>`
                  : html`<p class="error">${drawn.problem}</p>`
              }
              <figcaption>
                ${scenarioSample(scenario)}
                <span
                  >${scenario.name}${
                    'words' in drawn ? html`<span class="print-only">: ${drawn.words}.</span>` : nothing
                  }</span
                >
              </figcaption>
            </figure>
          `;
        })}
      </div>
      <p class="scale note">
        ${scaleBar(layout.scale, notebook.units)}
        <span
          >To scale. Dimensions in ${notebook.units === 'SI' ? 'millimetres' : 'inches'}. Dashed hardware is a
          sign, not a size.</span
        >
      </p>
    `;
  }

  /** The code behind it comes when it is first asked for. */
  #renderSwing(stack: Stack) {
    return html`
      <p class="screen-only">
        <button type="button" aria-expanded=${this.springs} @click=${this.#onSprings}>
          ${this.springs ? 'Hide the masses on springs' : 'Show as masses on springs'}
        </button>
      </p>
      ${
        this.springs
          ? html`<swing-row .columns=${this.#columns} .stack=${stack} .units=${this.notebook.units}></swing-row>`
          : nothing
      }
    `;
  }

  #renderLayers(stack: Stack) {
    const active = this.notebook.scenarios.find((s) => s.id === this.notebook.active);
    return html`
      <p class="note">
        A value written here belongs to “${active?.name}”, the scenario that is worked in${
          hasReach(this.notebook)
            ? html`; its forks follow, unless they change it themselves. Where a layer or sheet is added or removed, you choose
              whether that is for this scenario only or for every one.`
            : '.'
        }
      </p>
      <layer-list
        .notebook=${this.notebook}
        .stack=${stack.id}
        .lit=${this.lit}
        @layer-point=${this.#onPoint}
        @own-material-made=${this.#onMaterialMade}
      ></layer-list>
      <details
        class="own"
        ?open=${this.around}
        @toggle=${this.#onAround}
      >
        <summary>Ways past the floor (${aroundInWords(this.notebook, stack)})</summary>
        ${
          this.around
            ? html`<stack-surroundings .notebook=${this.notebook} .stack=${stack.id}></stack-surroundings>`
            : nothing
        }
      </details>
      <details class="own materials">
        <summary>Materials of this notebook's own (${this.notebook.materials.length})</summary>
        <own-materials .notebook=${this.notebook}></own-materials>
      </details>
    `;
  }

  #onPoint = (event: LayerPoint) => {
    this.lit = event.origin;
    if (event.chosen && event.origin) void this.reveal(fieldOf(this.#stack!, event.origin));
  };

  #onSprings = async () => {
    this.springs = !this.springs;
    await import('./swing/swing-row.ts');
  };

  /** The code behind it comes when it is first asked for. */
  async #openSurroundings(): Promise<void> {
    this.around = true;
    await import('./surroundings/stack-surroundings.ts');
  }

  async #changeAround(): Promise<void> {
    this.editing = true;
    await this.#openSurroundings();
    await this.updateComplete;
    await this.surroundings?.show();
  }

  #onAround = async (event: Event) => {
    if ((event.currentTarget as HTMLDetailsElement).open) await this.#openSurroundings();
    else this.around = false;
  };

  /** Its numbers and their source are to be written next. */
  #onMaterialMade = async ({ material }: OwnMaterialMade) => {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLDetailsElement>('details.materials')!.open = true;
    await this.renderRoot.querySelector('own-materials')?.reveal(material);
  };

  #onToggle = (event: Event) => {
    this.editing = (event.currentTarget as HTMLDetailsElement).open;
  };

  #choose(stack: string): void {
    const { id } = this.cell;
    this.dispatchEvent(new NotebookEdit('stack that is drawn', (n) => updateCell(n, id, 'stack', { stack })));
  }
}

/** The first field of what was clicked in the drawing. */
function fieldOf({ layers }: Stack, { layer, sheet }: Origin): FieldPath {
  if (layer === undefined) return ['covering'];
  const kind = layers[layer]?.kind;
  if (kind === 'leaf') return ['layers', layer, 'sheets', sheet ?? 0, 'thickness_m'];
  return ['layers', layer, kind === 'mat' ? 'thickness_m' : 'depth_m'];
}

declare global {
  interface HTMLElementTagNameMap {
    'stack-cell': StackCellElement;
  }
}
