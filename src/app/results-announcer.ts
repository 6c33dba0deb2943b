import { html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ResultsView } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { wholeNumber } from '#cells/shared/number-words.ts';
import { ratedName, ratedResult } from '#cells/shared/rated-result.ts';
import { findScenario, findStack } from '#src/notebook/find.ts';
import type { Notebook } from '#src/notebook/types.ts';

/** Nobody wants every step of a drag read out: the numbers must have stood still for so long, ms. */
const STILL_MS = 1200;

/** Tells screen readers the new ratings of the active scenario once they have settled. Not visible. */
@customElement('results-announcer')
export class ResultsAnnouncer extends LitElement {
  static override styles = controlStyles;

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) results!: ResultsView;

  @state() private told = '';
  #heard = '';
  #timer: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
  }

  protected override willUpdate(): void {
    const words = ratingsInWords(this.notebook, this.results);
    if (words === undefined || words === this.#heard) return;
    const first = this.#heard === '';
    this.#heard = words;
    clearTimeout(this.#timer);
    // What stands there when the page opens is read with the page.
    if (first) return;
    this.#timer = setTimeout(() => {
      this.told = words;
    }, STILL_MS);
  }

  override render() {
    return html`<div class="visually-hidden" role="status">${this.told}</div>`;
  }
}

/** Undefined while something is still computed. */
function ratingsInWords(notebook: Notebook, results: ResultsView): string | undefined {
  const stacks = new Set(notebook.cells.flatMap((cell) => ('stack' in cell ? [cell.stack] : [])));
  const sentences: string[] = [];
  for (const stack of stacks) {
    const result = ratedResult(notebook, results, notebook.active, stack);
    if (result.state === 'computing') return undefined;
    const { name } = findStack(notebook, stack);
    const { prediction } = result;
    sentences.push(
      result.state === 'failed' || !prediction
        ? `${name} could not be computed.`
        : `${name}: ${ratedName(notebook, stack, 'airborne', 'STC')} ${wholeNumber(prediction.ratings.STC)}, ${ratedName(notebook, stack, 'impact', 'IIC')} ${wholeNumber(prediction.ratings.IIC)}.`,
    );
  }
  if (sentences.length === 0) return undefined;
  return `${findScenario(notebook, notebook.active).name}. ${sentences.join(' ')}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'results-announcer': ResultsAnnouncer;
  }
}
