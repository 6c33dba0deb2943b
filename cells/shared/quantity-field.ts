import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { isUntouched, readEntry } from '#cells/parameters/read-entry.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '#src/quantities/kinds.ts';
import { controlStyles } from './controls.ts';
import { entryKey } from './entry-key.ts';

/** A quantity was typed and accepted. SI. */
export class QuantityEntry extends Event {
  static readonly type = 'quantity-entry';
  readonly value: number;

  constructor(value: number) {
    super(QuantityEntry.type);
    this.value = value;
  }
}

/**
 * A labelled field for a quantity with its unit; what cannot be read stays in it, with the reason below. One that is
 * optional may be empty: its value then is undefined, and `quantity-cleared` tells so.
 */
@customElement('quantity-field')
export class QuantityField extends LitElement {
  static override styles = [
    controlStyles,
    css`
      input {
        width: 100%;
      }
      .error {
        margin: 0;
      }
    `,
  ];

  @property() label = '';
  @property() quantity: QuantityKind = 'length';
  @property({ type: Number }) min = 0;
  @property({ type: Number }) max = 1;
  @property({ type: Number }) value: number | undefined = 0;
  @property({ type: Boolean }) optional = false;
  /** What holds while the field is empty. */
  @property() placeholder = '';
  @property() units: UnitSystem = 'SI';

  @state() private draft: { readonly text: string; readonly message?: string } | undefined;

  /** A bare number means another size in other units. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('units')) this.draft = undefined;
  }

  override render() {
    const { draft, label } = this;
    return html`
      <div class="field">
        <label for="control">${label}</label>
        <input
          id="control"
          autocomplete="off"
          spellcheck="false"
          placeholder=${this.placeholder}
          aria-invalid=${draft?.message ? 'true' : 'false'}
          aria-describedby=${draft?.message ? 'error' : nothing}
          .value=${live(draft?.text ?? this.#text)}
          @input=${(event: Event) => {
            this.draft = { ...draft, text: (event.target as HTMLInputElement).value };
          }}
          @change=${(event: Event) => this.#onText((event.target as HTMLInputElement).value)}
          @keydown=${(event: KeyboardEvent) =>
            entryKey(event, () => {
              this.draft = undefined;
            })}
        />
        ${draft?.message ? html`<p id="error" class="error" role="alert">${draft.message}</p>` : nothing}
      </div>
    `;
  }

  get #text(): string {
    return this.value === undefined ? '' : formatQuantity(this.value, this.quantity, this.units);
  }

  #onText(text: string): void {
    if (!this.draft && isUntouched(text, this.#text)) {
      this.draft = undefined;
      return;
    }
    if (this.optional && text.trim() === '') {
      this.draft = undefined;
      this.dispatchEvent(new Event('quantity-cleared'));
      return;
    }
    const entry = readEntry(this, text, this.units);
    this.draft = entry.ok ? undefined : { text, message: entry.message };
    if (entry.ok) this.dispatchEvent(new QuantityEntry(entry.value));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quantity-field': QuantityField;
  }
  interface HTMLElementEventMap {
    'quantity-entry': QuantityEntry;
  }
}
