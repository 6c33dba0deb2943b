import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type CellElement, makeCellElement } from '#cells/cell-registry.ts';
import { type Edit, NotebookEdit, type ResultsView } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { editableTitle, grownTextStyles } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';
import type { MenuItem } from '#cells/shared/pop-menu.ts';
import '#cells/shared/pop-menu.ts';
import { OutOfSight, REST_MS } from '#src/charts/out-of-sight.ts';
import { duplicateCell } from '#src/notebook/edits/duplicate-cell.ts';
import { foldCell } from '#src/notebook/edits/fold-cell.ts';
import { moveCell } from '#src/notebook/edits/move-cell.ts';
import { removeCell } from '#src/notebook/edits/remove-cell.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { Cell, Notebook } from '#src/notebook/types.ts';
import { cellFrameStyles } from './cell-frame-styles.ts';
import { cellTitle, hasOwnTitle } from './cell-title.ts';
import { untilLaidOut } from './until-laid-out.ts';

export const DRAGGED_CELL = 'application/x-slab-and-spring-cell';

/** A new cell is wanted at a place among the cells. */
export class CellWanted extends Event {
  readonly index: number;

  constructor(index: number) {
    super('cell-wanted', { bubbles: true, composed: true });
    this.index = index;
  }
}

/** Title and actions around one cell; loads the cell's element when it first comes. */
@customElement('cell-frame')
export class CellFrame extends LitElement {
  static override styles = [controlStyles, grownTextStyles, cellFrameStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: Cell;
  @property({ attribute: false }) results!: ResultsView;
  @property({ type: Boolean }) readOnly = false;
  @property({ reflect: true }) kind = '';
  /** What is in the cell is not laid out yet: while a notebook opens, what stands below waits for it. */
  @property({ type: Boolean, reflect: true }) pending = true;
  /** Its height is known, so that it need not be laid out while it is out of sight. */
  @property({ type: Boolean, reflect: true }) measured = false;

  @state() private element: CellElement | undefined;
  @state() private problem: string | undefined;

  readonly #sight = new OutOfSight(this);
  #loading = false;
  /** Nothing was handed to the element yet. */
  #isFresh = true;

  constructor() {
    super();
    this.addEventListener('focusin', this.#onFocus);
  }

  protected override willUpdate(): void {
    this.kind = this.cell.kind;
    if (this.cell.folded) {
      this.pending = false;
      return;
    }
    if (!this.element) {
      if (!this.problem) void this.#load();
      return;
    }
    if (this.#isFresh || !this.#sight.mayWait()) this.#hand(this.element);
  }

  /** Who works in a cell that waited out of sight works with what it should show: nothing changes under their hands. */
  #onFocus = (): void => {
    if (this.element && !this.cell.folded) this.#hand(this.element);
  };

  #hand(element: CellElement): void {
    if (this.#isFresh) void this.#settle(element);
    this.#isFresh = false;
    element.notebook = this.notebook;
    element.cell = this.cell;
    element.results = this.results;
  }

  override render() {
    const { cell, notebook } = this;
    const title = cellTitle(notebook, cell);
    const bare = cell.kind === 'commentary' && !cell.folded;
    const editable = !this.readOnly && !cell.folded && hasOwnTitle(cell);
    return html`<section aria-label=${title}>
      <header class=${bare ? 'bare' : ''}>
        ${
          bare
            ? nothing
            : html`<div class="title">
                ${
                  editable
                    ? editableTitle(html`<h2>${title}</h2>`, {
                        name: 'Title of the cell',
                        value: title,
                        onChange: (text) => this.#rename(text),
                      })
                    : html`<h2>${title}</h2>`
                }
              </div>`
        }
        ${this.readOnly ? nothing : this.#actions(title)}
      </header>
      ${cell.folded ? nothing : html`<div class="body">${this.#body()}</div>`}
    </section>`;
  }

  #body() {
    if (this.problem)
      return html`<div class="failed" role="alert">
        <p>This cell could not be loaded: ${this.problem}.</p>
        <button @click=${this.#loadAgain}>Try again</button>
      </div>`;
    return this.element ?? html`<p class="note loading" aria-busy="true">Loading …</p>`;
  }

  #actions(title: string) {
    return html`<div class="actions screen-only" role="group" aria-label="Actions for ${title}">
      ${
        this.cell.folded
          ? html`<button class="quiet" aria-label="Unfold ${title}" @click=${this.#turnFold}>Unfold</button>`
          : nothing
      }
      <pop-menu .label=${`Arrange this cell: ${title}`} .items=${this.#menu()}>Arrange</pop-menu>
      <span
        class="grip"
        title="Drag to move"
        draggable="true"
        aria-hidden="true"
        @dragstart=${this.#onDragStart}
        @dragend=${() => this.dispatchEvent(new Event('cell-drag-end', { bubbles: true, composed: true }))}
        >${icon('grip')}</span
      >
    </div>`;
  }

  #menu(): MenuItem[] {
    const isFirst = this.#index === 0;
    const isLast = this.#index === this.notebook.cells.length - 1;
    return [
      { label: this.cell.folded ? 'Unfold' : 'Fold', choose: this.#turnFold },
      ...(isFirst ? [] : [{ label: 'Move up (Alt + ↑)', choose: () => this.#move(-1) }]),
      ...(isLast ? [] : [{ label: 'Move down (Alt + ↓)', choose: () => this.#move(1) }]),
      { label: 'Add a cell above', choose: () => this.dispatchEvent(new CellWanted(this.#index)) },
      { label: 'Add a cell below', choose: () => this.dispatchEvent(new CellWanted(this.#index + 1)) },
      { label: 'Duplicate', choose: this.#duplicate },
      { label: 'Delete', choose: this.#remove },
    ];
  }

  get #index(): number {
    return this.notebook.cells.findIndex((c) => c.id === this.cell.id);
  }

  async #load(): Promise<void> {
    if (this.#loading) return;
    this.#loading = true;
    await this.#sight.turn();
    try {
      this.element = await makeCellElement(this.cell.kind, this.ownerDocument);
    } catch (error) {
      this.problem = messageOf(error);
      this.pending = false;
    }
    this.#loading = false;
  }

  async #settle(element: CellElement): Promise<void> {
    await untilLaidOut(element);
    this.pending = false;
    // Pictures that are out of sight are drawn when changes rest.
    await new Promise((resolve) => setTimeout(resolve, 2 * REST_MS));
    // Beginning to skip what is seen would let it vanish for a frame.
    await this.#sight.left();
    this.measured = true;
  }

  #loadAgain = (): void => {
    this.problem = undefined;
  };

  #rename(title: string): void {
    const { cell } = this;
    if (hasOwnTitle(cell)) this.#edit('title of the cell', (n) => updateCell(n, cell.id, cell.kind, { title }));
  }

  #move(step: -1 | 1): void {
    const { id } = this.cell;
    const to = this.#index + step;
    if (to < 0 || to >= this.notebook.cells.length) return;
    this.#edit(`move “${cellTitle(this.notebook, this.cell)}”`, (n) => moveCell(n, id, to));
  }

  #turnFold = (): void => {
    const { id, folded } = this.cell;
    const title = cellTitle(this.notebook, this.cell);
    this.#edit(`${folded ? 'unfold' : 'fold'} “${title}”`, (n) => foldCell(n, id, !folded));
  };

  #duplicate = (): void => {
    const { id } = this.cell;
    const newId = freshId(
      Math.random,
      this.notebook.cells.map((c) => c.id),
    );
    this.#edit(`duplicate “${cellTitle(this.notebook, this.cell)}”`, (n) => duplicateCell(n, id, newId));
  };

  #remove = (): void => {
    const { id } = this.cell;
    this.#edit(`delete “${cellTitle(this.notebook, this.cell)}”`, (n) => removeCell(n, id));
  };

  #onDragStart = (event: DragEvent): void => {
    if (!event.dataTransfer) return;
    event.dataTransfer.setData(DRAGGED_CELL, this.cell.id);
    event.dataTransfer.effectAllowed = 'move';
    event.dataTransfer.setDragImage(this, 0, 0);
  };

  /** Goes to the cell's actions. */
  focusActions(): void {
    this.renderRoot.querySelector('pop-menu')?.focus();
  }

  /** For the column: Alt with an arrow moves the cell that holds the focus. */
  moveByKey(step: -1 | 1): void {
    this.#move(step);
  }

  /** Opens the cell if it is folded and hands the wish on to its element. */
  revealField(path: FieldPath): void {
    if (this.cell.folded) this.#turnFold();
    void this.element?.reveal?.(path);
  }

  #edit(label: string, edit: Edit): void {
    this.dispatchEvent(new NotebookEdit(label, edit));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'cell-frame': CellFrame;
  }
}
