import { html, LitElement, nothing, type PropertyValues, render } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { CommentaryCell as CommentaryCellModel, Notebook } from '#src/notebook/types.ts';
import { type CellProperties, NotebookEdit, type ResultsView } from '../contract.ts';
import { controlStyles } from '../shared/controls.ts';
import { icon } from '../shared/icons.ts';
import { commentaryStyles } from './commentary-styles.ts';
import { formula } from './formulas.ts';
import './insert-bar.ts';
import type { TextInsert } from './insert-bar.ts';
import { isLiveValue, liveValue, unresolvedText } from './live-value.ts';

type RenderText = typeof import('./render-text.ts')['renderText'];

const FORMULA = 'formula:';

/** A live value in the text: where it stands, what it names, what was written there. */
interface LiveSpot {
  readonly element: HTMLElement;
  readonly destination: string;
  readonly written: string;
}

/**
 * Text with live values, formulas and folded answers; while it is edited, the page of it stands below and follows.
 *
 * The text is parsed only when it changes. New results touch the live values alone.
 */
@customElement('commentary-cell')
export class CommentaryCell extends LitElement implements CellProperties<CommentaryCellModel> {
  static override styles = [controlStyles, commentaryStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: CommentaryCellModel;
  @property({ attribute: false }) results!: ResultsView;

  @state() private editing = false;
  @state() private problem: string | undefined;
  @state() private renderText: RenderText | undefined;
  #page: HTMLElement | undefined;
  #pageOf: string | undefined;
  #spots: readonly LiveSpot[] = [];
  /** Counts visits to the editor, so that each one is a step of undo. */
  #visit = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#load();
  }

  protected override willUpdate(): void {
    if (!this.renderText) return;
    if (this.#pageOf !== this.cell.text) this.#parse(this.renderText);
    for (const spot of this.#spots) this.#fill(spot);
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('editing') && this.editing) this.#field?.focus();
  }

  override render() {
    const empty = this.cell.text.trim() === '';
    return html`${this.editing ? this.#editor() : nothing}
      <div class="page" aria-label=${this.editing ? 'Preview' : nothing} role=${this.editing ? 'region' : nothing}>
        ${
          this.problem
            ? html`<p class="error" role="alert">The text could not be laid out: ${this.problem}.</p>
                <pre>${this.cell.text}</pre>`
            : (this.#page ?? html`<p class="note" aria-busy="true">Loading …</p>`)
        }
        ${
          empty && !this.editing
            ? html`<p class="note screen-only">
                Nothing is written here yet. A text may hold live values, formulas and questions with folded answers.
              </p>`
            : nothing
        }
      </div>
      ${
        this.editing || !(this.#page || this.problem)
          ? nothing
          : html`<p class="screen-only tools">
              <button class="quiet" @click=${this.#edit}>${icon('edit')} Edit the text</button>
            </p>`
      }`;
  }

  #editor() {
    return html`<div class="editor screen-only" @keydown=${this.#onKey}>
      <insert-bar .notebook=${this.notebook} @text-insert=${this.#onInsert}></insert-bar>
      <textarea
        aria-label="Text, in Markdown"
        rows="8"
        maxlength=${LIMITS.commentary}
        .value=${live(this.cell.text)}
        @input=${(event: Event) => this.#change((event.target as HTMLTextAreaElement).value)}
      ></textarea>
      <div class="done">
        <button class="primary" @click=${this.#done}>Done</button>
        <span class="note">Markdown. Links lead to https: and mailto: only; raw HTML stays text. An answer
          prints as it stands: folded without its words, open with them.</span>
      </div>
    </div>`;
  }

  get #field(): HTMLTextAreaElement | null {
    return this.renderRoot.querySelector('textarea');
  }

  async #load(): Promise<void> {
    try {
      this.renderText = (await import('./render-text.ts')).renderText;
    } catch (error) {
      this.problem = messageOf(error);
    }
  }

  #parse(renderText: RenderText): void {
    const page = this.ownerDocument.createElement('div');
    page.append(renderText(this.cell.text, this.ownerDocument));
    const spots: LiveSpot[] = [];
    for (const link of page.querySelectorAll('a')) {
      const destination = link.getAttribute('href') ?? '';
      if (isLiveValue(destination)) spots.push(this.#liveSpot(link, destination));
      else if (destination.startsWith(FORMULA)) this.#putFormula(link, destination.slice(FORMULA.length));
    }
    this.#page = page;
    this.#pageOf = this.cell.text;
    this.#spots = spots;
  }

  #liveSpot(link: HTMLAnchorElement, destination: string): LiveSpot {
    const element = this.ownerDocument.createElement('span');
    link.replaceWith(element);
    return { element, destination, written: link.textContent ?? '' };
  }

  #fill({ element, destination, written }: LiveSpot): void {
    const { state, text, about } = liveValue(this.notebook, this.results, destination, written);
    element.className = `live ${state}`;
    element.title = about;
    element.ariaBusy = String(state === 'computing');
    if (element.textContent !== text) element.textContent = text;
  }

  #putFormula(link: HTMLAnchorElement, key: string): void {
    const found = formula(key);
    const span = this.ownerDocument.createElement('span');
    link.replaceWith(span);
    span.className = found ? 'formula' : 'live missing';
    span.title = found ? `${found.label}: ${found.source}` : `There is no formula "${key}".`;
    if (found) render(found.math, span);
    else span.textContent = unresolvedText(span.title, link.textContent ?? '');
  }

  #edit = (): void => {
    this.#visit += 1;
    this.editing = true;
  };

  #done = (): void => {
    this.editing = false;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.tools button')?.focus());
  };

  #onKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.isComposing) return;
    event.stopPropagation();
    this.#done();
  };

  #change(text: string): void {
    const { id } = this.cell;
    this.dispatchEvent(
      new NotebookEdit('text', (n) => updateCell(n, id, 'commentary', { text }), `text:${id}#${this.#visit}`),
    );
  }

  #onInsert = ({ text }: TextInsert): void => {
    const field = this.#field;
    if (!field) return;
    const { selectionStart, selectionEnd, value } = field;
    const next = value.slice(0, selectionStart) + text + value.slice(selectionEnd);
    if (next.length > LIMITS.commentary) return;
    this.#change(next);
    void this.updateComplete.then(() => {
      field.focus();
      field.setSelectionRange(selectionStart + text.length, selectionStart + text.length);
    });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'commentary-cell': CommentaryCell;
  }
}
