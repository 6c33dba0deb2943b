import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { editableTitle, grownTextStyles } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';
import { segmented, segmentedStyles } from '#cells/shared/segmented.ts';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import type { Choice, Notebook, UnitSystem } from '#src/notebook/types.ts';
import { pageHeaderStyles } from './page-header-styles.ts';
import { PageWish, type Wish } from './page-wish.ts';

const UNIT_CHOICES: readonly (Choice & { readonly value: UnitSystem })[] = [
  { value: 'SI', label: 'SI' },
  { value: 'inch-pound', label: 'inch-pound' },
];

/** The notebook's title and what is done with the notebook as a whole. */
@customElement('page-header')
export class PageHeader extends LitElement {
  static override styles = [controlStyles, grownTextStyles, segmentedStyles, pageHeaderStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) undoLabel: string | undefined;
  @property({ attribute: false }) redoLabel: string | undefined;
  /** One line on where the work is kept. */
  @property() kept = '';
  @property({ type: Boolean }) readOnly = false;

  override render() {
    const { notebook, readOnly } = this;
    return html`<header>
      <div class="bar">
        <span class="mark">
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M2.5 4.5h19v4h-19zM12 8.5l-4 1.5l8 2l-8 2l8 2l-4 1.5M2.5 20h19" />
          </svg>
          Slab &amp; Spring
        </span>
        <button class="quiet" @click=${() => this.#wish({ do: 'show-shelf' })}>Notebooks</button>
        <button class="quiet" @click=${this.#chooseFile}>Open a file</button>
        <input
          type="file"
          accept=".json,.slabspring.json,application/json"
          aria-label="Notebook file"
          tabindex="-1"
          @change=${this.#onFile}
        />
        <button class="quiet" @click=${() => this.#wish({ do: 'save-file' })}>Save a file</button>
        <button class="quiet" @click=${() => this.#wish({ do: 'print' })}>Print</button>
        <span class="gap"></span>
        ${
          readOnly
            ? nothing
            : html`<button
                  class="quiet icon"
                  aria-label=${this.undoLabel ? `Undo: ${this.undoLabel}` : 'Undo'}
                  title=${this.undoLabel ? `Undo: ${this.undoLabel}` : 'Nothing to undo'}
                  ?disabled=${this.undoLabel === undefined}
                  @click=${() => this.#wish({ do: 'undo' })}
                >
                  ${icon('undo')}
                </button>
                <button
                  class="quiet icon"
                  aria-label=${this.redoLabel ? `Redo: ${this.redoLabel}` : 'Redo'}
                  title=${this.redoLabel ? `Redo: ${this.redoLabel}` : 'Nothing to redo'}
                  ?disabled=${this.redoLabel === undefined}
                  @click=${() => this.#wish({ do: 'redo' })}
                >
                  ${icon('redo')}
                </button>`
        }
      </div>
      ${
        readOnly
          ? html`<h1>${notebook.title}</h1>`
          : editableTitle(html`<h1>${notebook.title}</h1>`, {
              name: 'Title of the notebook',
              value: notebook.title,
              onChange: (title) => this.dispatchEvent(new NotebookEdit('title', (n) => setTitle(n, title))),
            })
      }
      <div class="under">
        ${segmented({
          label: 'Units',
          name: 'units',
          choices: UNIT_CHOICES,
          value: notebook.units,
          disabled: readOnly,
          onChange: (units) => void this.#setUnits(units as UnitSystem),
        })}
        <p class="note">${this.kept}</p>
      </div>
    </header>`;
  }

  #wish(wish: Wish): void {
    this.dispatchEvent(new PageWish(wish));
  }

  /** An empty notebook begins anew, with numbers that are round in these units. */
  async #setUnits(units: UnitSystem): Promise<void> {
    const { inUnits } = await import('./new-notebook.ts');
    this.dispatchEvent(new NotebookEdit('units', (n) => inUnits(n, units)));
  }

  #chooseFile = (): void => {
    this.renderRoot.querySelector<HTMLInputElement>('input[type="file"]')!.click();
  };

  #onFile = (event: Event): void => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    input.value = '';
    if (file) this.#wish({ do: 'open-file', file });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'page-header': PageHeader;
  }
}
