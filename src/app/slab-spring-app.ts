import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { FieldReveal, NotebookEdit, ResultsView } from '#cells/contract.ts';
import type { NumberStudyRequest } from '#cells/number-study-request.ts';
import { aroundKind } from '#cells/shared/around-counted.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { OnceAFrame } from '#src/charts/once-a-frame.ts';
import { type History, redoLabel, undoLabel } from '#src/notebook/history.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { countsAround } from '#src/notebook/walls-counted.ts';
import { claimNotebook } from '#src/store/notebook-claim.ts';
import type { NotebookStore } from '#src/store/notebook-store.ts';
import { openNotebookStore } from '#src/store/open-store.ts';
import type { ShelfEntry } from '#src/store/shelf.ts';
import { storeNotices } from '#src/store/store-notices.ts';
import { notebookInAddress, putInAddress } from './address.ts';
import { appStyles } from './app-styles.ts';
import './cell-column.ts';
import { DEMO_NOTEBOOKS } from './demo-notebooks.ts';
import { editCheck } from './edit-check.ts';
import { FileDesk } from './file-desk.ts';
import { FileDrop } from './file-drop.ts';
import { keptWords } from './kept-words.ts';
import './page-header.ts';
import type { Notice, NoticeDismissed } from './page-notices.ts';
import type { PageWish, Wish } from './page-wish.ts';
import { predictionSender } from './prediction-sender.ts';
import { ResultsService } from './results.ts';
import { NO_RESULTS } from './results-view.ts';
import './scenario-rail.ts';
import { Session, type SessionState } from './session.ts';
import { troubleNotice } from './trouble-words.ts';
import { undoKey } from './undo-key.ts';
import { viewPace } from './view-pace.ts';

/** How long a deleted notebook can be brought back, ms. */
const BIN_KEPT_MS = 30 * 24 * 3600 * 1000;

/** The page: opens a notebook, sends what must be computed, and lays everything out. */
@customElement('slab-spring-app')
export class SlabSpringApp extends LitElement {
  static override styles = [controlStyles, appStyles];

  /** Where notebooks are kept; another one for tests. */
  @property({ attribute: false }) store: NotebookStore = openNotebookStore();

  /** What is shown; in a drag that is what there are results for. */
  @state() private open: SessionState | undefined;
  @state() private results: ResultsView = NO_RESULTS;
  @state() private notices: readonly Notice[] = [];
  @state() private entries: readonly ShelfEntry[] = [];
  @state() private shelfProblem = '';
  @state() private shelfOpen = false;

  #latest: SessionState | undefined;
  #session: Session | undefined;
  #files: FileDesk | undefined;
  readonly #fileDrop = new FileDrop(this, (file) => void this.#files?.open(file));
  readonly #frames = new OnceAFrame();
  readonly #service = new ResultsService({
    sender: predictionSender((why) => this.#onWorkerDeath(why)),
    onView: () => this.#showLatest(),
    pace: viewPace(() => this.#frames.turn()),
  });

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('keydown', this.#onKey);
    window.addEventListener('pagehide', this.#onHide);
    document.addEventListener('visibilitychange', this.#onHide);
    void this.#start();
    void loadLateParts();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this.#onKey);
    window.removeEventListener('pagehide', this.#onHide);
    document.removeEventListener('visibilitychange', this.#onHide);
    void this.#session?.close();
    this.#session = undefined;
  }

  override render() {
    return html`${this.open ? this.#page(this.open) : html`<p class="page starting" aria-busy="true">Opening …</p>`}
      <notebook-shelf
        .opened=${this.shelfOpen}
        .entries=${this.entries}
        .problem=${this.shelfProblem}
        .currentId=${this.open?.history.present.id ?? ''}
        @page-wish=${this.#onWish}
        @shelf-closed=${() => {
          this.shelfOpen = false;
        }}
        >${this.shelfOpen ? this.#noticed() : nothing}</notebook-shelf
      >
      ${this.shelfOpen ? nothing : this.#noticed()}
      ${
        this.#fileDrop.over
          ? html`<div class="file-over" aria-hidden="true">Drop the notebook to open it</div>`
          : nothing
      }`;
  }

  #page(open: SessionState) {
    const { history, access } = open;
    const { present: notebook } = history;
    const readOnly = access === 'reading';
    return html`<div
      class="page"
      @notebook-edit=${this.#onEdit}
      @page-wish=${this.#onWish}
      @field-reveal=${this.#onReveal}
      @number-study-request=${(event: NumberStudyRequest) => this.#onStudy(event, notebook)}
    >
      <button class="skip screen-only" @click=${this.#skip}>Skip to the cells</button>
      <page-header
        .notebook=${notebook}
        .undoLabel=${undoLabel(history)}
        .redoLabel=${redoLabel(history)}
        .kept=${readOnly ? '' : keptWords(open, new Date())}
        .readOnly=${readOnly}
      ></page-header>
      <printed-stamp></printed-stamp>
      ${readOnly ? this.#banner() : nothing}
      <div class="columns">
        <scenario-rail .notebook=${notebook} .readOnly=${readOnly}></scenario-rail>
        <main tabindex="-1">
          <cell-column .notebook=${notebook} .results=${this.results} .readOnly=${readOnly}></cell-column>
          ${cautions(notebook)}
          <printed-record .notebook=${notebook}></printed-record>
        </main>
      </div>
      <results-announcer .notebook=${notebook} .results=${this.results}></results-announcer>
    </div>`;
  }

  #noticed() {
    return html`<page-notices .notices=${this.notices} @notice-dismissed=${this.#onDismissed}></page-notices>`;
  }

  #banner() {
    return html`<div class="banner caution screen-only" role="region" aria-label="Read only">
      <p>This notebook is being worked on in another tab. Here it can be read and follows what happens there.</p>
      <button @click=${() => void this.#session?.workOnCopy()}>Work on a copy</button>
      <button @click=${() => this.#session?.takeOver()}>Work here instead</button>
    </div>`;
  }

  async #start(): Promise<void> {
    const session = new Session({
      store: this.store,
      claim: claimNotebook,
      notices: storeNotices,
      now_ms: Date.now,
      random: Math.random,
      applyEdit: editCheck(async () => {
        await afterFirstCurve();
        return (await import('#src/notebook/apply-edit.ts')).applyEdit;
      }),
      isExample: async (notebook) => (await import('./is-example.ts')).isExample(notebook),
      onChange: (state) => this.#show(state),
      onShelf: (entries, problem) => {
        this.entries = entries;
        this.shelfProblem = problem;
      },
      onTrouble: (trouble) =>
        this.#notify(
          troubleNotice(trouble, {
            saveFile: () => void this.#files?.save(),
            workOnCopy: () => void session.workOnCopy(),
            rescue: (id) => void this.#files?.rescue(id),
          }),
        ),
    });
    const files = new FileDesk(
      session,
      this.store,
      (notice) => this.#notify(notice),
      (id) => this.#dismiss(id),
    );
    this.#session = session;
    this.#files = files;
    void this.store.forgetRemovedBefore(Date.now() - BIN_KEPT_MS);
    if (await session.openLast(notebookInAddress(location))) return;
    const [first] = DEMO_NOTEBOOKS;
    if (!first || !(await files.openDemo(first.url))) await session.create();
  }

  #show(state: SessionState): void {
    const { history } = state;
    const notebook = history.present;
    if (this.#latest?.history.present !== notebook) this.#service.update(notebook);
    this.#latest = state;
    if (this.#isDrag(history) && this.#service.computing) this.ariaBusy = 'true';
    else this.#showLatest();
    document.title = `${notebook.title} · Slab & Spring`;
    putInAddress(notebook.id);
  }

  #showLatest(): void {
    this.open = this.#latest;
    this.results = this.#service.view;
    this.ariaBusy = 'false';
  }

  /**
   * A value is being dragged. Showing it with its results, a moment later, is one picture instead of two: half the work
   * of the page while a slider moves (measured).
   */
  #isDrag({ merge, present }: History): boolean {
    const shown = this.open?.history.present;
    return merge !== null && present.cells === shown?.cells && present.active === shown.active;
  }

  #onEdit = ({ edit, label, merge }: NotebookEdit): void => {
    if (this.open?.access === 'reading')
      this.#notify({
        id: 'read-only',
        tone: 'info',
        text: 'This notebook can only be read here: another tab is working on it.',
        action: { label: 'Work on a copy', run: () => void this.#session?.workOnCopy() },
      });
    else this.#session?.edit(edit, label, merge);
  };

  #onStudy(request: NumberStudyRequest, notebook: Notebook): void {
    request.answer = import('./number-studies.ts').then(({ answerStudy }) => answerStudy(notebook, request));
  }

  #onWish = ({ wish }: PageWish): void => {
    void this.#fulfil(wish);
  };

  async #fulfil(wish: Wish): Promise<void> {
    const session = this.#session;
    const files = this.#files;
    if (!session || !files) return;
    switch (wish.do) {
      case 'undo':
        session.undo();
        break;
      case 'redo':
        session.redo();
        break;
      case 'print':
        window.print();
        break;
      case 'save-file':
        await files.save();
        break;
      case 'open-file':
        await files.open(wish.file);
        break;
      case 'show-shelf':
        await Promise.all([import('./notebook-shelf.ts'), session.flush()]);
        await session.refreshShelf();
        this.shelfOpen = true;
        break;
      case 'new':
        await this.#leaveShelf(() => session.create());
        break;
      case 'open':
        await this.#leaveShelf(() => session.open(wish.id));
        break;
      case 'open-demo':
        await this.#leaveShelf(() => files.openDemo(wish.url));
        break;
      case 'duplicate':
        await this.#leaveShelf(() => session.duplicate(wish.id));
        break;
      case 'delete':
        await this.#deleteNotebook(wish.id);
        break;
      case 'work-on-copy':
        await session.workOnCopy();
        break;
      case 'take-over':
        session.takeOver();
        break;
    }
  }

  async #leaveShelf(work: () => Promise<unknown>): Promise<void> {
    this.shelfOpen = false;
    await work();
    scrollTo(0, 0);
  }

  async #deleteNotebook(id: string): Promise<void> {
    const title = this.entries.find((e) => e.id === id)?.title ?? '';
    if (!(await this.#session?.remove(id))) return;
    this.#notify({
      id: 'deleted',
      tone: 'info',
      text: `“${title}” was deleted.`,
      action: { label: 'Undo', run: () => void this.#session?.restore(id) },
    });
  }

  #onReveal = ({ stack, path }: FieldReveal): void => {
    this.renderRoot.querySelector('cell-column')?.reveal(stack, path);
  };

  #skip = (): void => {
    this.renderRoot.querySelector('main')?.focus();
  };

  #onKey = (event: KeyboardEvent): void => {
    const wish = undoKey(event);
    if (!wish || this.shelfOpen) return;
    event.preventDefault();
    void this.#fulfil({ do: wish });
  };

  #onHide = (): void => {
    if (document.visibilityState === 'hidden') void this.#session?.flush();
  };

  #onWorkerDeath(why: Error): void {
    this.#notify({
      id: 'worker',
      tone: 'problem',
      text: `A calculation stopped (${why.message}). It was started again.`,
      action: { label: 'Compute again', run: () => this.#service.retry() },
    });
  }

  #notify(notice: Notice): void {
    this.notices = [...this.notices.filter((n) => n.id !== notice.id), notice];
  }

  #dismiss(id: Notice['id']): void {
    this.notices = this.notices.filter((n) => n.id !== id);
  }

  #onDismissed = ({ id }: NoticeDismissed): void => this.#dismiss(id);
}

/** Stands under every notebook, on screen and on paper. */
function cautions(notebook: Notebook) {
  const what = countsAround(notebook)
    ? `Predictions are of a floor as a laboratory would find it, with what this notebook counts around it by the walls
        (${aroundKind(notebook.flanking)}); a building may be worse by its joints and its workmanship.`
    : `Predictions are laboratory-like: in a building sound also goes around by the walls, and it comes out worse.`;
  return html`<aside class="cautions" aria-label="What the numbers are">
    ${what} Nothing here is a verdict on load, fire or health; local codes and licensed practice decide.
  </aside>`;
}

/**
 * What tells of troubles, what reads ratings out once they changed, and what stands on paper only, come late; where they
 * cannot be fetched the page is still there to be read.
 */
async function loadLateParts(): Promise<void> {
  await afterFirstCurve();
  await Promise.allSettled([
    import('./page-notices.ts'),
    import('./results-announcer.ts'),
    // It may be asked for once the network is gone.
    import('./new-notebook.ts'),
    import('./printed-stamp.ts'),
    import('./printed-record.ts'),
  ]);
}

/**
 * What is not needed at once is not in the way of the first picture. A function and no constant: the page's element begins
 * while its class is being defined, before the constants below it are there.
 */
function afterFirstCurve(): Promise<void> {
  return new Promise((done) => setTimeout(done, 500));
}

declare global {
  interface HTMLElementTagNameMap {
    'slab-spring-app': SlabSpringApp;
  }
}
