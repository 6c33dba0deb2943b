import { css, html, LitElement } from 'lit';
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
    `,
  ];

  /** Accessible name of the button. */
  @property() label = '';
  @property({ attribute: false }) items: readonly MenuItem[] = [];
  @query('[popover]') private list!: HTMLElement;
  @query('button') private button!: HTMLElement;

  override render() {
    return html`
      <button type="button" class="quiet" popovertarget="list" aria-label=${this.label} title=${this.label}>
        <slot></slot>
      </button>
      <div id="list" popover role="group" aria-label=${this.label} @toggle=${this.#onToggle} @keydown=${this.#onKey}>
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
    if (!step) return;
    event.preventDefault();
    event.stopPropagation();
    const buttons = [...this.list.querySelectorAll('button')];
    const at = buttons.indexOf(event.target as HTMLButtonElement);
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
