import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controlStyles } from '#cells/shared/controls.ts';
import { icon } from '#cells/shared/icons.ts';
import type { ShelfEntry } from '#src/store/shelf.ts';
import { dayWords } from './day-words.ts';
import { DEMO_NOTEBOOKS } from './demo-notebooks.ts';
import { titleOfDemo } from './demo-titles.ts';
import { notebookShelfStyles } from './notebook-shelf-styles.ts';
import { PageWish, type Wish } from './page-wish.ts';
import { numbersOfSameTitles } from './same-titles.ts';

/**
 * The notebooks of this browser, in a dialog: open, new, duplicate, delete; and those that come with the page. What is slotted
 * stands within the dialog: the rest of the page cannot be reached while it is open.
 */
@customElement('notebook-shelf')
export class NotebookShelf extends LitElement {
  static override styles = [controlStyles, notebookShelfStyles];

  @property({ type: Boolean }) opened = false;
  @property({ attribute: false }) entries: readonly ShelfEntry[] = [];
  @property() currentId = '';
  /** Why the list could not be had. */
  @property() problem = '';

  protected override updated(changed: PropertyValues<this>): void {
    const dialog = this.renderRoot.querySelector('dialog')!;
    if (!changed.has('opened')) return;
    if (this.opened && !dialog.open && this.isConnected) dialog.showModal();
    if (!this.opened && dialog.open) dialog.close();
  }

  override render() {
    const numbers = numbersOfSameTitles(this.entries);
    return html`<dialog aria-labelledby="heading" @close=${() => this.dispatchEvent(new Event('shelf-closed'))}>
      <div class="head">
        <h2 id="heading">Notebooks</h2>
        <button class="quiet icon" aria-label="Close" @click=${this.#close}>${icon('close')}</button>
      </div>
      <div class="row">
        <button @click=${() => this.#wish({ do: 'new' })}>${icon('add')} New notebook</button>
      </div>
      <h3>In this browser</h3>
      ${this.problem ? html`<p class="error">${this.problem}</p>` : nothing}
      ${
        this.entries.length === 0
          ? html`<p class="note">Nothing is kept here yet. What you work on is saved by itself.</p>`
          : html`<ul aria-label="Notebooks in this browser">
              ${repeat(
                this.entries,
                (e) => e.id,
                (e) => this.#entry(e, numbers.get(e.id)),
              )}
            </ul>`
      }
      ${
        DEMO_NOTEBOOKS.length === 0
          ? nothing
          : html`<h3>Examples</h3>
              <ul aria-label="Examples">
                ${DEMO_NOTEBOOKS.map(
                  (demo) => html`<li>
                    <button class="title" @click=${() => this.#wish({ do: 'open-demo', url: demo.url })}>
                      ${titleOfDemo(demo)}
                    </button>
                  </li>`,
                )}
              </ul>`
      }
      <slot></slot>
      <p class="note">
        The browser may empty its storage when room is short or the page was not used for long. The copy that lasts is
        the one you save to a file.
      </p>
    </dialog>`;
  }

  /** @param number Where others have the same title. */
  #entry({ id, title, addedAt_ms, savedAt_ms, exportedAt_ms }: ShelfEntry, number: number | undefined) {
    const now = new Date();
    const current = id === this.currentId;
    const own = title || 'Without a title';
    const name = number === undefined ? own : `${own} (${number})`;
    return html`<li>
      <div class="what">
        <button class="title" ?disabled=${current} @click=${() => this.#wish({ do: 'open', id })}>
          <span>${own}${number === undefined ? nothing : html` <span class="which">(${number})</span>`}</span>
        </button>
        <p class="note">
          ${current ? 'open now · ' : ''}${number === undefined ? '' : `here since ${dayWords(addedAt_ms, now)} · `}changed ${dayWords(savedAt_ms, now)} ·
          ${exportedAt_ms === null ? 'not yet saved to a file' : `in a file, ${dayWords(exportedAt_ms, now)}`}
        </p>
      </div>
      <button class="quiet" aria-label="Duplicate ${name}" @click=${() => this.#wish({ do: 'duplicate', id })}>
        ${icon('copy')} Duplicate
      </button>
      <button class="quiet danger" aria-label="Delete ${name}" @click=${() => this.#wish({ do: 'delete', id })}>
        ${icon('remove')} Delete
      </button>
    </li>`;
  }

  #close = (): void => {
    this.renderRoot.querySelector('dialog')!.close();
  };

  #wish(wish: Wish): void {
    this.dispatchEvent(new PageWish(wish));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'notebook-shelf': NotebookShelf;
  }
}
