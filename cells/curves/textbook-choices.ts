import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { toggleOverlay } from '#src/notebook/edits/toggle-overlay.ts';
import type { CurveOverlay, CurvesCell, UnitSystem } from '#src/notebook/types.ts';
import { type OverlayFocus, TEXTBOOK } from './curve-overlays.ts';
import { TEXTBOOK_MODELS, type TextbookModel } from './textbook-models.ts';

/** The textbook models that can be laid over the curves, each with its source and with what it leaves out. */
@customElement('textbook-choices')
export class TextbookChoices extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        display: block;
        margin-top: var(--space-3);
        padding: var(--space-3);
        border: 1px solid var(--hairline);
        border-radius: var(--radius);
      }
      ul {
        display: grid;
        gap: var(--space-3);
        margin: 0;
        padding: 0;
        list-style: none;
      }
      label {
        color: var(--ink);
      }
      .note {
        margin: var(--space-1) 0 0;
        padding-left: 1.6rem;
        max-width: var(--reading-width);
      }
    `,
  ];

  @property({ attribute: false }) cell!: CurvesCell;
  /** Whose floor the models are tried on; undefined while nothing is predicted. */
  @property({ attribute: false }) floor: (OverlayFocus & { readonly scenario: { readonly name: string } }) | undefined;
  @property({ attribute: false }) units!: UnitSystem;

  override render() {
    const { quantity } = this.cell;
    const models = TEXTBOOK_MODELS.filter(({ overlay }) =>
      TEXTBOOK.some((t) => t.overlay === overlay && t.fits(quantity)),
    );
    return html`<ul aria-label="Textbook models">
      ${models.map((model) => this.#choice(model))}
    </ul>`;
  }

  #choice(model: TextbookModel) {
    const { overlay, label, about } = model;
    const reason = this.#misfit(model);
    return html`<li>
      <label
        ><input
          type="checkbox"
          aria-describedby=${overlay}
          .checked=${this.cell.overlays.includes(overlay)}
          @change=${() => this.#toggle(overlay)}
        />${label}</label
      >
      <p class="note" id=${overlay}>
        ${reason === undefined ? about : html`Not for “${this.floor?.scenario.name}”: ${reason}.`}
      </p>
    </li>`;
  }

  #misfit({ line }: TextbookModel): string | undefined {
    if (!this.floor) return undefined;
    const made = line(this.floor, this.cell.quantity, this.units);
    return typeof made === 'string' ? made : undefined;
  }

  #toggle(overlay: CurveOverlay): void {
    const { id } = this.cell;
    this.dispatchEvent(new NotebookEdit('what lies over the curves', (n) => toggleOverlay(n, id, overlay)));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'textbook-choices': TextbookChoices;
  }
}
