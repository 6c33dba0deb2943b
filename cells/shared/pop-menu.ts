import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { controlStyles } from './controls.ts';

export interface MenuItem {
  readonly label: string;
  choose(): void;
}

/** A button that opens a short list of things to do; what stands in the slot is on the button. */
@customElement('pop-menu')
export class PopMenu extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        display: inline-block;
      }
      [popover] {
        position: fixed;
        inset: auto;
        margin: 0;
        padding: var(--space-1);
        border: 1px solid var(--hairline-strong);
        border-radius: var(--radius);
        background: var(--paper-raised);
        color: var(--ink);
        max-width: min(24rem, 92vw);
        max-height: 70vh;
        overflow: auto;
      }
      [popover] button {
        display: block;
        width: 100%;
        border-color: transparent;
        text-align: left;
        white-space: normal;
        height: auto;
        padding: var(--space-1) var(--space-2);
      }
      .head {
        padding: var(--space-1) var(--space-2) var(--space-2);
        font-size: var(--size-small);
        line-height: 1.35;
      }
      .head p,
      .head fieldset {
        margin: 0 0 var(--space-1);
      }
      .head legend {
        padding: 0;
        color: var(--ink-soft);
      }
      .head fieldset {
        display: grid;
        padding: 0;
        border: 0;
        justify-items: start;
      }
      /* More about the choice above it: under its words, not under its button. */
      .head fieldset p {
        padding-left: 1.6rem;
        color: var(--ink-soft);
      }
    `,
  ];

  /** Accessible name of the button. */
  @property() label = '';
  @property({ attribute: false }) items: readonly MenuItem[] = [];
  /** What stands above the items: what to know, or to choose, before taking one. */
  @property({ attribute: false }) head: TemplateResult | typeof nothing = nothing;
  @query('[popover]') private list!: HTMLElement;
  @query('button') private button!: HTMLElement;

  override render() {
    return html`
      <button type="button" class="quiet" popovertarget="list" aria-label=${this.label} title=${this.label}>
        <slot></slot>
      </button>
      <div id="list" popover role="group" aria-label=${this.label} @toggle=${this.#onToggle} @keydown=${this.#onKey}>
        ${this.head === nothing ? nothing : html`<div class="head">${this.head}</div>`}
        ${this.items.map(
          (item) => html`<button type="button" @click=${() => this.#choose(item)}>${item.label}</button>`,
        )}
      </div>
    `;
  }

  override focus(): void {
    this.button.focus();
  }

  /** Below the button, above it where there is no room, and never outside the window. */
  #onToggle = (event: ToggleEvent) => {
    if (event.newState !== 'open') return;
    const at = this.button.getBoundingClientRect();
    const { offsetWidth, offsetHeight } = this.list;
    const below = at.bottom + 2;
    const top = below + offsetHeight > innerHeight ? Math.max(4, at.top - offsetHeight - 2) : below;
    this.list.style.top = `${top}px`;
    this.list.style.left = `${Math.max(4, Math.min(at.left, innerWidth - offsetWidth - 4))}px`;
    this.list.querySelector('button')?.focus();
  };

  #onKey = (event: KeyboardEvent) => {
    const step = ({ ArrowDown: 1, ArrowUp: -1 } as const)[event.key as 'ArrowDown'];
    // Radio buttons of the head keep the arrows for themselves.
    if (!step || !(event.target instanceof HTMLButtonElement)) return;
    event.preventDefault();
    event.stopPropagation();
    const buttons = [...this.list.querySelectorAll('button')];
    const at = buttons.indexOf(event.target);
    buttons[(at + step + buttons.length) % buttons.length]?.focus();
  };

  #choose(item: MenuItem): void {
    this.list.hidePopover();
    this.button.focus();
    item.choose();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pop-menu': PopMenu;
  }
}
