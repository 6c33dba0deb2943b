import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ResultsView } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { foldStyles } from '#cells/shared/fold-styles.ts';
import type { Sound } from '#src/acoustics/prediction.ts';
import type { Notebook } from '#src/notebook/types.ts';

/** Folded away under the paths: what would change the floor, loaded and computed for those only who unfold it. */
@customElement('change-fold')
export class ChangeFold extends LitElement {
  static override styles = [controlStyles, foldStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) results!: ResultsView;
  @property() stack = '';
  @property() scenario = '';
  @property() sound: Sound = 'airborne';

  @state() private open = false;
  @state() private loaded = false;
  @state() private problem: string | undefined;

  override render() {
    return html`<details @toggle=${this.#onToggle}>
      <summary>What would change it</summary>
      ${
        this.open && this.loaded
          ? html`<what-would-change
              .notebook=${this.notebook}
              .results=${this.results}
              .stack=${this.stack}
              .scenario=${this.scenario}
              .sound=${this.sound}
            ></what-would-change>`
          : nothing
      }
      ${this.open && this.problem ? html`<p class="error" role="alert">${this.problem}</p>` : nothing}
    </details>`;
  }

  #onToggle = async (event: ToggleEvent) => {
    this.open = event.newState === 'open';
    if (!this.open) return;
    try {
      await import('./what-would-change.ts');
      this.loaded = true;
      this.problem = undefined;
    } catch {
      this.problem = 'This part could not be loaded. Fold it and unfold it again once the page can be reached.';
    }
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'change-fold': ChangeFold;
  }
}
