import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { CELL_KINDS, type CellKindInfo } from '#cells/cell-registry.ts';
import { NotebookEdit, type ResultsView } from '#cells/contract.ts';
import { bringIntoView } from '#cells/shared/bring-into-view.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { icon } from '#cells/shared/icons.ts';
import { addCell } from '#src/notebook/edits/add-cell.ts';
import { moveCell } from '#src/notebook/edits/move-cell.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import type { Notebook } from '#src/notebook/types.ts';
import './cell-frame.ts';
import { cellColumnStyles } from './cell-column-styles.ts';
import { type CellFrame, type CellWanted, DRAGGED_CELL } from './cell-frame.ts';
import { cellTitle } from './cell-title.ts';
import { LONGEST_WAIT_MS } from './until-laid-out.ts';

/** The cells under each other; a new one is added at the end, or where a cell's own menu asks for it. */
@customElement('cell-column')
export class CellColumn extends LitElement {
  static override styles = [controlStyles, cellColumnStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) results!: ResultsView;
  @property({ type: Boolean }) readOnly = false;

  /** Where a new cell is about to be put in. */
  @state() private choosingAt: number | undefined;
  @state() private dropAt: number | undefined;
  /** The notebook has just come: its cells show one after the other, from the top. */
  @state() private opening = false;
  #opened: ReturnType<typeof setTimeout> | undefined;
  /** Id of a cell that was asked for here and is not on the page yet. */
  #added: string | undefined;
  /** Where the focus was before an update. */
  #focused: { readonly frame: Element; readonly index: number; readonly inner: Element } | undefined;

  override render() {
    const { cells } = this.notebook;
    return html`<div
      class=${this.opening ? 'opening' : ''}
      @dragover=${this.#onDragOver}
      @drop=${this.#onDrop}
      @cell-drag-end=${this.#onDragEnd}
      @cell-wanted=${this.#onWanted}
      @keydown=${this.#onKey}
    >
      ${cells.length === 0 ? this.#empty() : nothing} ${this.#place(0)}
      ${repeat(
        cells,
        (cell) => cell.id,
        (cell, i) => html`<cell-frame
            data-cell=${cell.id}
            .notebook=${this.notebook}
            .cell=${cell}
            .results=${this.results}
            .readOnly=${this.readOnly}
          ></cell-frame>
          ${this.#place(i + 1)}`,
      )}
    </div>`;
  }

  /** Brings the first cell that shows a stack into view, and the field in it. */
  reveal(stack: string, path: FieldPath): void {
    const frame = this.#frames.find(({ cell }) => cell.kind === 'stack' && cell.stack === stack);
    if (frame) bringIntoView(frame, 'start');
    frame?.revealField(path);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('notebook') && changed.get('notebook')?.id !== this.notebook.id) this.#open();
    const frame = (this.renderRoot as ShadowRoot).activeElement;
    this.#focused =
      frame?.localName === 'cell-frame'
        ? { frame, index: this.#frames.indexOf(frame as CellFrame), inner: deepestFocus(frame) }
        : undefined;
  }

  /** Moving a cell takes the focus away from it, deleting it leaves none: the work goes on where it was. */
  protected override updated(changed: PropertyValues): void {
    if (this.#added) this.#showAdded(this.#added);
    if (changed.has('choosingAt')) this.#showChoice();
    if (!this.#focused || (this.renderRoot as ShadowRoot).activeElement) return;
    const { frame, index, inner } = this.#focused;
    if (!frame.isConnected) this.#focusNear(index);
    else if (inner instanceof HTMLElement) inner.focus();
    if (frame.isConnected && !(this.renderRoot as ShadowRoot).activeElement) (frame as CellFrame).focusActions();
  }

  #open(): void {
    this.opening = true;
    clearTimeout(this.#opened);
    this.#opened = setTimeout(() => {
      this.opening = false;
    }, LONGEST_WAIT_MS);
  }

  get #frames(): CellFrame[] {
    return [...this.renderRoot.querySelectorAll('cell-frame')];
  }

  /** To the cell that took the place of one that is gone, or where one can be added. */
  #focusNear(index: number): void {
    const frame = this.#frames[Math.min(index, this.#frames.length - 1)];
    if (frame) frame.focusActions();
    else this.renderRoot.querySelector<HTMLElement>('.place button')?.focus();
  }

  /** What was asked for from a menu may open out of sight. */
  #showChoice(): void {
    const choice = this.renderRoot.querySelector('.choose');
    choice?.scrollIntoView({ block: 'nearest' });
    if (this.choosingAt !== this.notebook.cells.length) choice?.querySelector<HTMLElement>('button.kind')?.focus();
  }

  #onWanted = ({ index }: CellWanted): void => {
    this.choosingAt = index;
  };

  #showAdded(cellId: string): void {
    const frame = this.renderRoot.querySelector<CellFrame>(`cell-frame[data-cell="${cellId}"]`);
    if (!frame) return;
    this.#added = undefined;
    frame.scrollIntoView({ block: 'nearest' });
    void frame.updateComplete.then(() => frame.focusActions());
  }

  #empty() {
    return html`<p class="empty">
      This notebook has no cells yet. Parameters give sliders, a stack shows the floor-ceiling in section, curves show
      what comes through it. Add one below.
    </p>`;
  }

  #place(index: number) {
    const open = this.choosingAt === index && !this.readOnly;
    const last = index === this.notebook.cells.length && !this.readOnly;
    return html`<div class="place ${this.dropAt === index ? 'drop' : ''}" data-place=${index}>
        ${last ? this.#atTheEnd(index, open) : nothing}
      </div>
      ${open ? this.#choose(index) : nothing}`;
  }

  #atTheEnd(index: number, open: boolean) {
    return html`<button
      class="screen-only"
      aria-expanded=${open}
      aria-label="Add a cell at the end"
      @click=${() => {
        this.choosingAt = open ? undefined : index;
      }}
    >
      Add a cell
    </button>`;
  }

  #choose(index: number) {
    return html`<div class="choose screen-only" role="group" aria-label="Kind of the new cell">
      <p>
        What shall it show?
        <button
          class="quiet icon"
          aria-label="Add nothing"
          @click=${this.#chooseNothing}
        >
          ${icon('close')}
        </button>
      </p>
      <div>
        ${CELL_KINDS.map(
          (info) => html`<button
            class="kind"
            ?disabled=${info.start(this.notebook, '') === undefined}
            @click=${() => this.#add(info, index)}
          >
            <b>${info.label}</b><span class="note">${info.about}</span>
          </button>`,
        )}
      </div>
    </div>`;
  }

  #add(info: CellKindInfo, index: number): void {
    const id = freshId(
      Math.random,
      this.notebook.cells.map((c) => c.id),
    );
    const cell = info.start(this.notebook, id);
    this.choosingAt = undefined;
    if (!cell) return;
    this.#added = id;
    this.dispatchEvent(new NotebookEdit(`add ${info.label.toLowerCase()}`, (n) => addCell(n, cell, index)));
  }

  #chooseNothing = (): void => {
    const place = this.choosingAt;
    this.choosingAt = undefined;
    if (place === undefined || place === this.notebook.cells.length)
      this.renderRoot.querySelector<HTMLElement>('.place button')?.focus();
    else this.#focusNear(place);
  };

  #onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && this.choosingAt !== undefined) {
      this.#chooseNothing();
      return;
    }
    const step = ({ ArrowUp: -1, ArrowDown: 1 } as const)[event.key as 'ArrowUp'];
    if (!event.altKey || !step || this.readOnly) return;
    const path = event.composedPath();
    if (path.some((n) => n instanceof Element && n.matches('textarea, input:not([type="range"]), select'))) return;
    const frame = path.find((n) => n instanceof Element && n.localName === 'cell-frame');
    if (!frame) return;
    event.preventDefault();
    (frame as CellFrame).moveByKey(step);
  };

  #onDragOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes(DRAGGED_CELL)) return;
    event.preventDefault();
    this.dropAt = this.#placeAt(event.clientY);
  };

  #onDragEnd = (): void => {
    this.dropAt = undefined;
  };

  #onDrop = (event: DragEvent): void => {
    const id = event.dataTransfer?.getData(DRAGGED_CELL);
    const from = this.notebook.cells.findIndex((c) => c.id === id);
    const place = this.#placeAt(event.clientY);
    this.dropAt = undefined;
    if (!id || from < 0) return;
    event.preventDefault();
    const to = place > from ? place - 1 : place;
    if (to === from) return;
    const title = cellTitle(this.notebook, this.notebook.cells[from]!);
    this.dispatchEvent(new NotebookEdit(`move “${title}”`, (n) => moveCell(n, id, to)));
  };

  /** The place nearest to a height on the page: before every cell whose middle lies below it. */
  #placeAt(y: number): number {
    const frames = this.#frames;
    const below = frames.findIndex((frame) => {
      const { top, height } = frame.getBoundingClientRect();
      return y < top + height / 2;
    });
    return below < 0 ? frames.length : below;
  }
}

function deepestFocus(element: Element): Element {
  const inner = element.shadowRoot?.activeElement;
  return inner ? deepestFocus(inner) : element;
}

declare global {
  interface HTMLElementTagNameMap {
    'cell-column': CellColumn;
  }
}
