import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controlStyles } from '#cells/shared/controls.ts';
import { icon } from '#cells/shared/icons.ts';
import type { ShelfEntry } from '#src/store/shelf.ts';
import { dayWords } from './day-words.ts';
import { DEMO_NOTEBOOKS } from './demo-notebooks.ts';
import { PageWish, type Wish } from './page-wish.ts';

/** The notebooks of this browser, in a dialog: open, new, duplicate, delete; and those that come with the page. */
@customElement('notebook-shelf')
export class NotebookShelf extends LitElement {
  static override styles = [
    controlStyles,
    css`
      dialog {
        width: min(46rem, calc(100vw - 2rem));
        max-height: calc(100vh - 4rem);
        padding: var(--space-5);
        border: 1px solid var(--hairline-strong);
        border-radius: var(--radius);
        background: var(--paper);
        color: var(--ink);
      }
      dialog::backdrop {
        background: rgb(0 0 0 / 35%);
      }
      .head {
        display: flex;
        justify-content: space-between;
        align-items: center;
        margin-bottom: var(--space-3);
      }
      h3 {
        margin: var(--space-5) 0 var(--space-2);
        font-family: var(--sans);
        font-size: var(--size-small);
        color: var(--ink-soft);
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-1) var(--space-2);
        padding: var(--space-2) 0;
        border-top: 1px solid var(--hairline);
      }
      .what {
        flex: 1 1 14rem;
        min-width: 0;
        overflow-wrap: anywhere;
      }
      .what p {
        margin: 0;
      }
      .title {
        min-height: 1.5rem;
        padding: 0;
        border: 0;
        background: none;
        font-family: var(--text);
        font-size: var(--size-body);
        font-weight: 600;
        text-align: left;
        white-space: normal;
      }
      .title:hover:not(:disabled) {
        background: none;
        text-decoration: underline;
        text-underline-offset: 0.2em;
      }
      .title:disabled {
        color: var(--ink);
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-2);
      }
    `,
  ];

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
                (e) => this.#entry(e),
              )}
            </ul>`
      }
      ${
        DEMO_NOTEBOOKS.length === 0
          ? nothing
          : html`<h3>Come with the page</h3>
              <ul aria-label="Notebooks that come with the page">
                ${DEMO_NOTEBOOKS.map(
                  ({ url, name }) => html`<li>
                    <button class="title" @click=${() => this.#wish({ do: 'open-demo', url })}>${name}</button>
                  </li>`,
                )}
              </ul>`
      }
      <p class="note">
        The browser may empty its storage when room is short or the page was not used for long. The copy that lasts is
        the one you save to a file.
      </p>
    </dialog>`;
  }

  #entry({ id, title, savedAt_ms, exportedAt_ms }: ShelfEntry) {
    const now = new Date();
    const current = id === this.currentId;
    const name = title || 'Without a title';
    return html`<li>
      <div class="what">
        <button class="title" ?disabled=${current} @click=${() => this.#wish({ do: 'open', id })}>${name}</button>
        <p class="note">
          ${current ? 'open now · ' : ''}changed ${dayWords(savedAt_ms, now)} ·
          ${exportedAt_ms === null ? 'not yet saved to a file' : `saved to a file ${dayWords(exportedAt_ms, now)}`}
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
