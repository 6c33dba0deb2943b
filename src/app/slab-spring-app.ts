import { css, html, LitElement, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { FieldReveal, NotebookEdit, ResultsView } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { type History, record, redo, redoLabel, startHistory, undo, undoLabel } from '#src/notebook/history.ts';
import type { Notebook } from '#src/notebook/types.ts';
import './cell-column.ts';
import './page-header.ts';
import './page-notices.ts';
import type { Notice, NoticeDismissed } from './page-notices.ts';
import type { PageWish, Wish } from './page-wish.ts';
import { predictionSender } from './prediction-sender.ts';
import { NO_RESULTS, ResultsService } from './results.ts';
import './scenario-rail.ts';

/** The page: holds the notebook and its history, sends what must be computed, and lays everything out. */
@customElement('slab-spring-app')
export class SlabSpringApp extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        min-height: 100vh;
        background: var(--paper);
      }
      .page {
        max-width: 84rem;
        margin: 0 auto;
        padding: 0 var(--space-5) var(--space-7);
      }
      .columns {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--space-4);
      }
      scenario-rail {
        min-width: 0;
      }
      @media (min-width: 75rem) {
        .columns {
          grid-template-columns: 17rem minmax(0, 1fr);
          gap: var(--space-6);
        }
        scenario-rail {
          position: sticky;
          top: var(--space-4);
          align-self: start;
          max-height: calc(100vh - 2 * var(--space-4));
          overflow-y: auto;
          scrollbar-width: thin;
        }
      }
      @media (max-width: 40rem) {
        .page {
          padding-inline: var(--space-4);
        }
      }
      @media print {
        .page {
          max-width: none;
          padding: 0;
        }
        .columns {
          display: block;
        }
        scenario-rail {
          position: static;
          max-height: none;
          overflow: visible;
        }
      }
    `,
  ];

  @state() private history: History | undefined;
  @state() private results: ResultsView = NO_RESULTS;
  @state() private notices: readonly Notice[] = [];

  readonly #service = new ResultsService({
    sender: predictionSender((why) => this.#onWorkerDeath(why)),
    onView: (view) => {
      this.results = view;
    },
    nextFrame: (draw) => requestAnimationFrame(draw),
  });

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('keydown', this.#onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this.#onKey);
  }

  open(notebook: Notebook): void {
    this.#take(startHistory(notebook));
  }

  override render() {
    if (!this.history) return html`<main class="page" aria-busy="true"></main>`;
    const { present: notebook } = this.history;
    return html`<div
      class="page"
      @notebook-edit=${this.#onEdit}
      @page-wish=${(event: PageWish) => this.#fulfil(event.wish)}
      @field-reveal=${this.#onReveal}
    >
      <page-header
        .notebook=${notebook}
        .undoLabel=${undoLabel(this.history)}
        .redoLabel=${redoLabel(this.history)}
      ></page-header>
      <div class="columns">
        <scenario-rail .notebook=${notebook}></scenario-rail>
        <main><cell-column .notebook=${notebook} .results=${this.results}></cell-column></main>
      </div>
      <page-notices .notices=${this.notices} @notice-dismissed=${this.#onDismissed}></page-notices>
      ${nothing}
    </div>`;
  }

  #take(history: History): void {
    this.history = history;
    this.#service.update(history.present);
  }

  #onEdit = ({ edit, label, merge }: NotebookEdit): void => {
    if (!this.history) return;
    this.#take(record(this.history, edit(this.history.present), label, merge));
  };

  #onReveal = (_: FieldReveal): void => {};

  #fulfil(wish: Wish): void {
    if (!this.history) return;
    if (wish.do === 'undo') this.#take(undo(this.history));
    if (wish.do === 'redo') this.#take(redo(this.history));
  }

  #onKey = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const wish = key === 'z' ? (event.shiftKey ? 'redo' : 'undo') : key === 'y' ? 'redo' : undefined;
    if (!wish || editsText(event)) return;
    event.preventDefault();
    this.#fulfil({ do: wish });
  };

  #onWorkerDeath(why: Error): void {
    this.#notify({
      id: 'worker',
      tone: 'problem',
      text: `The calculation stopped and was started again: ${why.message}.`,
    });
  }

  #notify(notice: Notice): void {
    this.notices = [...this.notices.filter((n) => n.id !== notice.id), notice];
  }

  #onDismissed = ({ id }: NoticeDismissed): void => {
    this.notices = this.notices.filter((n) => n.id !== id);
  };
}

/** Fields have an undo of their own. */
function editsText(event: Event): boolean {
  const [target] = event.composedPath();
  return target instanceof Element && target.matches('textarea, input:not([type]), input[type="text"]');
}

declare global {
  interface HTMLElementTagNameMap {
    'slab-spring-app': SlabSpringApp;
  }
}
