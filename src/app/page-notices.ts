import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controlStyles } from '#cells/shared/controls.ts';
import { icon } from '#cells/shared/icons.ts';

export interface Notice {
  /** A newer notice of the same id takes the older one's place. */
  readonly id: string;
  readonly tone: 'info' | 'problem';
  readonly text: string;
  readonly details?: readonly string[];
  readonly action?: { readonly label: string; run(): void };
}

/** The wish to take a notice away. */
export class NoticeDismissed extends Event {
  readonly id: string;

  constructor(id: string) {
    super('notice-dismissed');
    this.id = id;
  }
}

const DETAILS_SHOWN = 100;

/** What happened, in the corner of the page; spoken by screen readers. Stays until it is dismissed or overtaken. */
@customElement('page-notices')
export class PageNotices extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        position: fixed;
        z-index: 20;
        inset: auto var(--space-4) var(--space-4) auto;
        width: min(28rem, calc(100vw - 2 * var(--space-4)));
        pointer-events: none;
      }
      .notice {
        pointer-events: auto;
        margin-top: var(--space-2);
        padding: var(--space-2) var(--space-2) var(--space-2) var(--space-3);
        border: 1px solid var(--hairline-strong);
        border-left: 3px solid var(--ink);
        border-radius: var(--radius);
        background: var(--paper-raised);
        box-shadow: 0 2px 12px rgb(0 0 0 / 14%);
      }
      .problem {
        border-left-color: var(--error-ink);
      }
      .line {
        display: flex;
        align-items: center;
        gap: var(--space-2);
      }
      .line p {
        flex: 1;
        margin: 0;
        overflow-wrap: anywhere;
      }
      ul {
        max-height: 14rem;
        margin: var(--space-2) 0 var(--space-1);
        padding-left: var(--space-4);
        overflow-y: auto;
        font-size: var(--size-small);
        overflow-wrap: anywhere;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) notices: readonly Notice[] = [];

  override render() {
    const of = (tone: Notice['tone']) => this.notices.filter((n) => n.tone === tone);
    return html`<div role="status">${this.#list(of('info'))}</div>
      <div role="alert">${this.#list(of('problem'))}</div>`;
  }

  #list(notices: readonly Notice[]) {
    return repeat(
      notices,
      (n) => n.id,
      ({ id, tone, text, details = [], action }) => html`<div class="notice ${tone}">
        <div class="line">
          <p>${text}</p>
          ${
            action
              ? html`<button
                  @click=${() => {
                    this.dispatchEvent(new NoticeDismissed(id));
                    action.run();
                  }}
                >
                  ${action.label}
                </button>`
              : nothing
          }
          <button
            class="quiet icon"
            aria-label="Dismiss: ${text}"
            @click=${() => this.dispatchEvent(new NoticeDismissed(id))}
          >
            ${icon('close')}
          </button>
        </div>
        ${
          details.length === 0
            ? nothing
            : html`<ul tabindex="0" aria-label="Details">
                ${details.slice(0, DETAILS_SHOWN).map((line) => html`<li>${line}</li>`)}
                ${details.length > DETAILS_SHOWN ? html`<li>and ${details.length - DETAILS_SHOWN} more</li>` : nothing}
              </ul>`
        }
      </div>`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'page-notices': PageNotices;
  }
  interface HTMLElementEventMap {
    'notice-dismissed': NoticeDismissed;
  }
}
