import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Notebook } from '#src/notebook/types.ts';
import { controlStyles } from '../shared/controls.ts';
import { FORMULAS } from './formulas.ts';
import { LIVE_QUANTITIES, type LiveQuantity, NAME } from './live-quantities.ts';

/** The wish to put a piece of Markdown where the text cursor stands. */
export class TextInsert extends Event {
  readonly text: string;

  constructor(text: string) {
    super('text-insert');
    this.text = text;
  }
}

const FOLDED_ANSWER = '\n\nWhy is that so?\n\n> Answer: the reason\n> Because …\n\n';
const ACTIVE = '';

/** Puts live values, formulas and folded answers into a text, so that nobody has to know how they are written. */
@customElement('insert-bar')
export class InsertBar extends LitElement {
  static override styles = [
    controlStyles,
    css`
      .group {
        display: grid;
        gap: var(--space-2);
      }
      :host {
        margin-bottom: var(--space-3);
      }
      .line {
        display: flex;
        flex-wrap: wrap;
        align-items: end;
        gap: var(--space-2) var(--space-3);
      }
      label {
        display: grid;
        gap: var(--space-1);
        color: var(--ink-soft);
        font-size: var(--size-small);
      }
      select {
        width: 10rem;
        color: var(--ink);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;

  @state() private quantity = LIVE_QUANTITIES[0]!.key;
  @state() private stack = '';
  @state() private scenario = ACTIVE;
  @state() private formula = FORMULAS[0]!.key;

  protected override willUpdate(): void {
    const { stacks, scenarios } = this.notebook;
    if (!stacks.some((s) => s.id === this.stack)) this.stack = stacks[0]?.id ?? '';
    if (!scenarios.some((s) => s.id === this.scenario)) this.scenario = ACTIVE;
  }

  override render() {
    const { stacks, scenarios } = this.notebook;
    const option = (value: string, label: string, taken: string) =>
      html`<option value=${value} ?selected=${value === taken}>${label}</option>`;
    return html`<div class="group" role="group" aria-label="Put into the text">
      <div class="line"><label
        >Value
        <select @change=${(e: Event) => (this.quantity = chosen(e))}>
          ${LIVE_QUANTITIES.map((q) => option(q.key, q.label, this.quantity))}
        </select></label
      >
      <label
        >of
        <select @change=${(e: Event) => (this.stack = chosen(e))}>
          ${stacks.map((s) => option(s.id, s.name, this.stack))}
        </select></label
      >
      <label
        >in
        <select @change=${(e: Event) => (this.scenario = chosen(e))}>
          ${option(ACTIVE, 'the active scenario', this.scenario)}
          ${scenarios.map((s) => option(s.id, s.name, this.scenario))}
        </select></label
      >
      <button ?disabled=${this.stack === ''} @click=${() => this.#insertValue()}>Insert value</button>
      <button
        ?disabled=${this.stack === '' || !this.#chosen.sound}
        title="What the rating is called, as walls are counted in it or not: STC or ASTC"
        @click=${() => this.#insertValue(NAME)}
      >
        Insert its name
      </button></div><div class="line">
      <label
        >Formula
        <select @change=${(e: Event) => (this.formula = chosen(e))}>
          ${FORMULAS.map((f) => option(f.key, f.label, this.formula))}
        </select></label
      >
      <button @click=${this.#insertFormula}>Insert formula</button>
      <button @click=${() => this.#insert(FOLDED_ANSWER)}>Insert folded answer</button></div>
    </div>`;
  }

  get #chosen(): LiveQuantity {
    return LIVE_QUANTITIES.find((q) => q.key === this.quantity)!;
  }

  #insertValue(ending = ''): void {
    const where = this.scenario === ACTIVE ? this.stack : `${this.scenario}/${this.stack}`;
    this.#insert(`[${this.#chosen.label}](value:${where}/${this.quantity}${ending})`);
  }

  #insertFormula = (): void => {
    const { key, label } = FORMULAS.find((f) => f.key === this.formula)!;
    this.#insert(`[${label}](formula:${key})`);
  };

  #insert(text: string): void {
    this.dispatchEvent(new TextInsert(text));
  }
}

function chosen(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}

declare global {
  interface HTMLElementTagNameMap {
    'insert-bar': InsertBar;
  }
}
