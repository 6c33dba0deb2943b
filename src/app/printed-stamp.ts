import { css, html, LitElement, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { controlStyles } from '#cells/shared/controls.ts';
import { version } from '../../package.json';
import { Printing } from './printing.ts';

/** One line under the title, on paper only: when it was printed, and what computed it. */
@customElement('printed-stamp')
export class PrintedStamp extends LitElement {
  static override styles = [
    controlStyles,
    css`
      p {
        margin: 0 0 var(--space-3);
      }
    `,
  ];

  readonly #printing = new Printing(this);

  override render() {
    const { since } = this.#printing;
    return since ? html`<p class="note">${stampWords(since)}</p>` : nothing;
  }
}

/** "Printed on 28 November 2026 at 23:14. Computed by Slab & Spring 0.1.0." */
export function stampWords(time: Date): string {
  const day = time.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  const clock = time.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  return `Printed on ${day} at ${clock}. Computed by Slab & Spring ${version}.`;
}

declare global {
  interface HTMLElementTagNameMap {
    'printed-stamp': PrintedStamp;
  }
}
