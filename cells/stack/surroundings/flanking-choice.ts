import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import '#cells/shared/quantity-field.ts';
import type { QuantityEntry } from '#cells/shared/quantity-field.ts';
import { segmented, segmentedStyles } from '#cells/shared/segmented.ts';
import { setFlanking } from '#src/notebook/edits/set-flanking.ts';
import { LIMIT_CURVE } from '#src/notebook/flanking-schema.ts';
import type { Flanking, Notebook } from '#src/notebook/types.ts';
import { FLANKING_CHOICES, FLANKING_WORDS } from './flanking-words.ts';
import { wallsAround } from './new-wall.ts';
import { surroundingsStyles } from './surroundings-styles.ts';
import './wall-rows.ts';

const LIMIT_LABELS = { R500_dB: 'limit at 500 Hz', slope_dB_per_octave: 'more per octave' } as const;

/** Choosing what goes around the floor: nothing, a limit, or every wall by itself. */
@customElement('flanking-choice')
export class FlankingChoice extends LitElement {
  static override styles = [
    controlStyles,
    segmentedStyles,
    surroundingsStyles,
    css`
      .words {
        max-width: var(--reading-width);
        margin: var(--space-3) 0;
      }
      .fields {
        max-width: 24rem;
        margin-bottom: var(--space-3);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  /** Id of the stack whose sides new walls take. */
  @property() stack = '';

  override render() {
    const { flanking } = this.notebook;
    return html`
      ${segmented({
        label: 'What goes around the floor',
        name: 'flanking',
        choices: FLANKING_CHOICES,
        value: flanking.kind,
        onChange: (kind) => this.#choose(kind as Flanking['kind']),
      })}
      <p class="words">${FLANKING_WORDS[flanking.kind]}</p>
      ${flanking.kind === 'own' ? this.#renderLimit(flanking) : nothing}
      ${
        flanking.kind === 'by the walls'
          ? html`<wall-rows .notebook=${this.notebook} .stack=${this.stack}></wall-rows>`
          : nothing
      }
      <p class="note">This holds for every stack and every scenario of the notebook.</p>
    `;
  }

  #renderLimit(flanking: Flanking) {
    return html`<div class="fields">
      ${(['R500_dB', 'slope_dB_per_octave'] as const).map(
        (field) => html`<quantity-field
          .label=${LIMIT_LABELS[field]}
          .quantity=${'level'}
          .min=${LIMIT_CURVE[field].min}
          .max=${LIMIT_CURVE[field].max}
          .value=${flanking[field]}
          .units=${this.notebook.units}
          @quantity-entry=${(event: QuantityEntry) =>
            this.#edit(`flanking: ${LIMIT_LABELS[field]}`, { [field]: event.value })}
        ></quantity-field>`,
      )}
    </div>`;
  }

  /** Whoever asks for the walls the first time gets one for each side of the floor. */
  #choose(kind: Flanking['kind']): void {
    const first = kind === 'by the walls' && !this.notebook.flanking.walls?.length;
    this.#edit(`flanking: ${kind}`, { kind, ...(first && { walls: wallsAround(this.notebook, this.stack) }) });
  }

  #edit(label: string, patch: Partial<Flanking>): void {
    this.dispatchEvent(new NotebookEdit(label, (n) => setFlanking(n, { ...n.flanking, ...patch })));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'flanking-choice': FlankingChoice;
  }
}
