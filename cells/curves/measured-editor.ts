import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { NotebookEdit } from '#cells/contract.ts';
import { bringIntoView } from '#cells/shared/bring-into-view.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { icon } from '#cells/shared/icons.ts';
import { lineSample } from '#src/charts/line-sample.ts';
import { measuredMark } from '#src/charts/measured-marks.ts';
import { addMeasured, describeMeasured, removeMeasured } from '#src/notebook/edits/edit-measured.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import type { CurvesCell, MeasuredBands } from '#src/notebook/types.ts';
import { bandWords, type MeasuredColumn, readMeasuredFile } from './read-measured.ts';

/** A file that was read and waits for the word where its numbers come from. */
interface Draft {
  readonly file: string;
  readonly columns: readonly MeasuredColumn[];
  readonly notices: readonly string[];
}

interface Refusal {
  readonly file: string;
  readonly problems: readonly string[];
}

/** Bands were read and wait for their source, or wait no longer: they may be drawn meanwhile. */
export class BandsWaiting extends Event {
  static readonly type = 'bands-waiting';
  readonly columns: readonly MeasuredColumn[];

  constructor(columns: readonly MeasuredColumn[]) {
    super(BandsWaiting.type);
    this.columns = columns;
  }
}

/** Measured bands of a cell of curves: chosen as a file, named, with their source, and taken away again. */
@customElement('measured-editor')
export class MeasuredEditor extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        margin-top: var(--space-3);
        padding: var(--space-3);
        border: 1px solid var(--hairline);
        border-radius: var(--radius);
        overflow-wrap: anywhere;
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      .set {
        display: grid;
        grid-template-columns: 36px minmax(8rem, 1fr) minmax(8rem, 2fr) auto;
        gap: var(--space-1) var(--space-3);
        align-items: end;
        padding-bottom: var(--space-3);
      }
      .set > .line-sample {
        margin-bottom: 0.6rem;
      }
      .set > .note {
        grid-column: 2 / -1;
        margin: 0;
      }
      .draft {
        display: grid;
        gap: var(--space-2);
        margin-top: var(--space-3);
        max-width: var(--reading-width);
      }
      .draft p {
        margin: 0;
      }
      .field input {
        width: 100%;
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-2) var(--space-3);
      }
      .row .note {
        margin: 0;
      }
      .problems {
        margin-top: var(--space-2);
      }
      .problems,
      .draft {
        scroll-margin-block: var(--space-4);
      }
      input[type="file"] {
        display: none;
      }
      @media (max-width: 34rem) {
        .set {
          grid-template-columns: 36px minmax(0, 1fr) auto;
        }
        .set > .source {
          grid-column: 2;
          grid-row: 2;
        }
        .set > button {
          grid-column: 3;
          grid-row: 1;
        }
        .set > .note {
          grid-column: 2;
        }
      }
    `,
  ];

  @property({ attribute: false }) cell!: CurvesCell;

  @state() private draft: Draft | undefined;
  @state() private refusal: Refusal | undefined;
  /** Somebody wanted to lay bands over without saying where they come from. */
  @state() private asked = false;
  @query('.choose') private chooseButton!: HTMLButtonElement;

  protected override updated(changed: PropertyValues): void {
    if (changed.has('draft')) this.dispatchEvent(new BandsWaiting(this.draft?.columns ?? []));
    // A file dropped on the picture is answered below it, often below the window.
    const answer = this.renderRoot.querySelector('.problems');
    if (changed.has('refusal') && answer) bringIntoView(answer);
  }

  override render() {
    return html`
      <ul aria-label="Measured bands of this cell">
        ${repeat(
          this.#measured,
          ({ id }) => id,
          (measured, index) => this.#renderSet(measured, index),
        )}
      </ul>
      <div class="row">
        <button type="button" class="choose" @click=${this.#choose}>Choose a CSV of measured bands …</button>
        <input
          type="file"
          accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
          @change=${this.#onFile}
        />
        <span class="note"
          >Or drop it on this cell. A heading line with f (Hz) and R, TL or Ln; then a band per line, in dB.</span
        >
      </div>
      ${this.refusal ? renderRefusal(this.refusal) : nothing} ${this.draft ? this.#renderDraft(this.draft) : nothing}
    `;
  }

  get #measured(): readonly MeasuredBands[] {
    return this.cell.measured ?? [];
  }

  #renderSet(measured: MeasuredBands, index: number) {
    const { name, quantity } = measured;
    const waits = quantity === this.cell.quantity ? '' : `; lies over the ${quantity} curves`;
    return html`
      <li><div class="set" role="group" aria-label=${name}>
        ${lineSample({ ...measuredMark(index), hollow: true })} ${this.#renderWords(measured, 'name')}
        ${this.#renderWords(measured, 'source')}
        <button
          type="button"
          class="quiet icon"
          aria-label="Remove ${name}"
          title="Remove"
          @click=${() => this.#remove(measured)}
        >
          ${icon('remove')}
        </button>
        <p class="note">${bandWords(measured)}${waits}</p>
      </div></li>
    `;
  }

  #renderWords(measured: MeasuredBands, field: 'name' | 'source') {
    const { id, name } = measured;
    return html`
      <div class="field ${field}">
        <label for="${field}-${id}">${LABELS[field]}</label>
        <input
          id="${field}-${id}"
          maxlength=${LIMITS[field]}
          .value=${live(measured[field])}
          @change=${(event: Event) => {
            const input = event.target as HTMLInputElement;
            const text = input.value.trim();
            if (text)
              this.#edit(`${field} of ${name}`, (n) => describeMeasured(n, this.cell.id, id, { [field]: text }));
            else input.value = measured[field];
          }}
        />
      </div>
    `;
  }

  #renderDraft({ file, columns, notices }: Draft) {
    return html`
      <form class="draft" aria-label="Read from ${file}" novalidate @submit=${this.#onSubmit}>
        <p>Read from “${file}”: ${this.#drawnWords(columns)}</p>
        ${columns.map(
          (column, i) => html`
            <div class="field">
              <label for="new-name-${i}">${LABELS.name} of what was read: ${bandWords(column)}</label>
              <input id="new-name-${i}" name="name" maxlength=${LIMITS.name} .value=${column.name} />
            </div>
          `,
        )}
        ${notices.map((notice) => html`<p class="note">Note: ${notice}.</p>`)}
        <div class="field">
          <label for="new-source">${LABELS.source}</label>
          <input
            id="new-source"
            name="source"
            required
            maxlength=${LIMITS.source}
            aria-invalid=${this.asked ? 'true' : 'false'}
            aria-describedby=${this.asked ? 'missing-source' : nothing}
            @input=${() => {
              this.asked = false;
            }}
          />
          ${
            this.asked
              ? html`<p class="error" id="missing-source">
                  Say where the numbers come from: a test report, a standard’s example, an own measurement.
                </p>`
              : nothing
          }
        </div>
        <div class="row">
          <button class="primary">Lay over the curves</button>
          <button type="button" class="quiet" @click=${this.#drop}>Leave out</button>
        </div>
      </form>
    `;
  }

  #drawnWords(columns: readonly MeasuredColumn[]): string {
    const drawn = columns.filter(({ quantity }) => quantity === this.cell.quantity).length;
    const stay = 'they stay once their source is given.';
    if (drawn === columns.length) return `drawn over the curves already; ${stay}`;
    const others = this.cell.quantity === 'airborne' ? 'impact' : 'airborne';
    return `${drawn === 0 ? 'nothing is drawn yet' : 'drawn in part'}, since ${others} bands lie over the ${others} curves; ${stay}`;
  }

  #choose = (): void => {
    this.renderRoot.querySelector<HTMLInputElement>('input[type="file"]')!.click();
  };

  #onFile = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (file) await this.read(file);
    // The same file may be chosen again once it is mended.
    input.value = '';
  };

  /** Reads a file and asks where its numbers come from, or says what is wrong with it. */
  async read(file: File): Promise<void> {
    if (this.draft) {
      const first = `“${this.draft.file}” is still waiting below: lay it over the curves first, or leave it out.`;
      this.refusal = { file: file.name, problems: [first] };
      return;
    }
    const reading = await readMeasuredFile(file, LIMITS.measured - this.#measured.length);
    this.asked = false;
    this.refusal = reading.ok ? undefined : { file: file.name, problems: reading.problems };
    if (!reading.ok) return;
    this.draft = { file: file.name, ...reading };
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>('#new-source')!.focus({ preventScroll: true });
    bringIntoView(this.renderRoot.querySelector('.draft')!);
  }

  #onSubmit = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    const words = new FormData(form);
    const source = String(words.get('source')).trim();
    if (source === '') {
      this.asked = true;
      form.querySelector<HTMLInputElement>('#new-source')!.focus();
      return;
    }
    const names = words.getAll('name').map((name) => String(name).trim());
    const taken = this.#measured.map(({ id }) => id);
    const added = this.draft!.columns.map((column, i): MeasuredBands => {
      const id = freshId(Math.random, taken);
      taken.push(id);
      return { id, ...column, name: names[i] || column.name, source };
    });
    this.#edit('measured bands over the curves', (n) => addMeasured(n, this.cell.id, added));
    this.#drop();
  };

  #drop = (): void => {
    this.draft = undefined;
    this.refusal = undefined;
    this.chooseButton.focus();
  };

  #remove({ id, name }: MeasuredBands): void {
    this.#edit(`remove ${name}`, (n) => removeMeasured(n, this.cell.id, id));
    this.chooseButton.focus();
  }

  #edit(label: string, edit: NotebookEdit['edit']): void {
    this.dispatchEvent(new NotebookEdit(label, edit));
  }
}

const LABELS = { name: 'name', source: 'where the numbers come from' } as const;

function renderRefusal({ file, problems }: Refusal) {
  return html`
    <div class="problems error" role="alert">
      <p>“${file}” is not laid over the curves:</p>
      <ul>
        ${problems.map((problem) => html`<li>${problem}</li>`)}
      </ul>
    </div>
  `;
}

declare global {
  interface HTMLElementEventMap {
    'bands-waiting': BandsWaiting;
  }
  interface HTMLElementTagNameMap {
    'measured-editor': MeasuredEditor;
  }
}
