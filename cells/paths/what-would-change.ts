import { Task, TaskStatus } from '@lit/task';
import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Result, ResultsView } from '#cells/contract.ts';
import { NumberStudyRequest, type StudyProgress } from '#cells/number-study-request.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import type { NumberStudy } from '#src/acoustics/number-study.ts';
import { bandLabel } from '#src/charts/band-axis.ts';
import { levelText } from '#src/charts/band-data.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import { findScenario, findStack } from '#src/notebook/find.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { changeNote } from './change-note.ts';
import { changeStyles } from './change-styles.ts';
import { type ChangeRow, type ChangeTable, changeTable, isSeen, LOW_BANDS_Hz, type Studied } from './change-table.ts';
import type { Sound } from './path-shares.ts';
import { studyStatus } from './study-status.ts';

/** A study starts when the floor has stood still for so long: while a slider moves none does. */
const PAUSE_ms = 200;

/** A study that takes longer shows what it has so far, as often as that, the strongest first: no rows race. */
const SO_FAR_EVERY_ms = 1000;

/** Rows that stand there before all are asked for. */
const FIRST_ROWS = 8;

/** Which numbers of the floor move its sound most, band by band, and how sure the prediction is if they are not. */
@customElement('what-would-change')
export class WhatWouldChange extends LitElement {
  static override styles = [controlStyles, changeStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) results!: ResultsView;
  @property() stack = '';
  @property() scenario = '';
  @property() sound: Sound = 'airborne';

  @state() private all = false;
  /** The last good study of this stack in this scenario: it stays until the next is there, or some of it. */
  @state() private studied: Studied | undefined;
  /** How far the present study has come. */
  @state() private told: StudyProgress | undefined;
  /** That the reader ended the present study. */
  @state() private stopped = false;

  #table: ChangeTable | undefined;
  /** That the table is of a floor that is no more. */
  #outdated = false;
  #end: (() => void) | undefined;

  /** Starts anew with every prediction that is ready; one that is computed again ends it. */
  readonly #task = new Task(this, {
    args: () => {
      const result = this.#result;
      return [result.state === 'ready' ? result.prediction : undefined, this.scenario, this.stack] as const;
    },
    task: async ([prediction, scenario, stack], { signal }) => {
      this.#forget();
      if (!prediction) return;
      const { notebook } = this;
      const of = { construction: resolveStack(notebook, scenario, stack), stack: findStack(notebook, stack) };
      const show = (study: NumberStudy) => {
        this.studied = { ...of, study };
        this.#outdated = false;
      };
      const [ending, end] = endedBy(signal);
      this.#end = end;
      try {
        await pause(PAUSE_ms, ending);
        let shown_ms = performance.now();
        const study = await this.#ask(scenario, stack, ending, (told) => {
          if (ending.aborted) return;
          this.told = told;
          if (told.done === 0 || performance.now() - shown_ms < SO_FAR_EVERY_ms) return;
          shown_ms = performance.now();
          show(told.study);
        });
        ending.throwIfAborted();
        show(study);
      } catch (error) {
        if (!ending.aborted || signal.aborted) throw error;
        this.stopped = true;
        if (this.told?.done) show(this.told.study);
        else this.studied = undefined;
      }
    },
  });

  get #result(): Result {
    return this.results.of(this.scenario, this.stack);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // What leaving the page has ended starts again.
    if (this.hasUpdated) void this.#task.run();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#task.abort(new Error('the table has gone'));
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (this.hasUpdated && (changed.has('scenario') || changed.has('stack'))) this.studied = undefined;
    const unitsChanged = changed.has('notebook') && changed.get('notebook')?.units !== this.notebook.units;
    if (unitsChanged || ['studied', 'sound', 'scenario', 'stack'].some((name) => changed.has(name)))
      this.#table = this.studied && changeTable(this.studied, this.sound, this.notebook.units);
  }

  protected override update(changed: PropertyValues): void {
    const heldFocus = this.shadowRoot?.activeElement?.matches('.status button');
    super.update(changed);
    // The button that ends a study goes with it; the keyboard stays where it was.
    if (heldFocus && !this.shadowRoot?.activeElement) this.shadowRoot?.querySelector<HTMLElement>('.scroll')?.focus();
  }

  override render() {
    const table = this.#table;
    return html`${this.#renderProblem()} ${table ? this.#renderTable(table) : this.#renderWaiting()}`;
  }

  #renderProblem() {
    return (
      this.#task.render({
        error: (error) => html`<p class="error" role="alert">
          This could not be worked out: ${messageOf(error)}
          <button type="button" @click=${() => void this.#task.run()}>Try again</button>
        </p>`,
      }) ?? nothing
    );
  }

  #renderWaiting() {
    if (this.#task.error) return nothing;
    if (this.#result.state === 'failed')
      return html`<p class="empty">It stands here once the floor can be computed.</p>`;
    return html`<div class="empty" aria-busy=${!this.stopped}>${this.#renderStatus()}</div>`;
  }

  #renderStatus() {
    const { told, stopped } = this;
    const waiting = this.#result.state === 'computing';
    if (this.#task.error || !(waiting || this.#pending || told)) return nothing;
    return studyStatus({
      state: waiting ? 'waiting' : stopped ? 'stopped' : this.#pending ? 'running' : 'done',
      done: told?.done,
      total: told?.total,
      onStop: () => this.#end?.(),
      onGoOn: () => void this.#task.run(),
    });
  }

  get #pending(): boolean {
    return this.#task.status === TaskStatus.PENDING;
  }

  #renderTable(table: ChangeTable) {
    const { name } = findScenario(this.notebook, this.scenario);
    const shown = this.all ? table.rows : table.rows.slice(0, FIRST_ROWS);
    const more = table.rows.length - FIRST_ROWS;
    const busy = this.#result.state === 'computing' || this.#pending;
    const part = (busy || this.stopped) && !this.#outdated;
    const assumed = part ? `the ± of the ${this.studied?.study.numbers.length} so far` : 'all that is assumed in ±';
    const symbol = this.sound === 'impact' ? html`L<sub>n</sub>` : html`R`;
    const caption = `What 10 % more of each number changes in ${name}, ${this.sound} sound`;
    return html`
      <p class="note">
        By how many decibels ${symbol} of ${name} changes if one number of the floor grows by 10 %, along the slope around
        its present value: good for small changes, no promise for large ones.
        <span class="sample up" style="--share: 0.6">Blue</span> is quieter below,
        <span class="sample down" style="--share: 0.6">orange</span> louder. What matters most from
        ${LOW_BANDS_Hz.first} to ${LOW_BANDS_Hz.last} Hz stands first.
      </p>
      ${this.#renderStatus()}
      <div class=${this.#outdated ? 'awaited' : ''} aria-busy=${busy}>
        <div class="scroll" tabindex="0" role="region" aria-label=${caption} ${fadeWhereMore()}>
          <table>
            <caption class="visually-hidden">${caption}, in dB per band</caption>
            <thead>
              <tr>
                <th scope="col">10 % more of<span class="about">where: value now ± assumed</span></th>
                ${table.bands_Hz.map(
                  (band) =>
                    html`<th scope="col" class="number">
                      ${bandLabel(band)}<span class="visually-hidden"> Hz</span>
                    </th>`,
                )}
              </tr>
            </thead>
            <tbody>
              ${shown.map((row) => this.#renderRow(row, table.largest_dB))}
            </tbody>
            <tfoot>
              ${renderUncertainty(`uncertain by ${assumed}`, table.byTolerances_dB)}
              ${table.byModel_dB ? renderUncertainty('uncertain by model and laboratories', table.byModel_dB) : nothing}
            </tfoot>
          </table>
        </div>
      </div>
      ${
        more > 0
          ? html`<p class="row screen-only">
              <button type="button" class="quiet" aria-expanded=${this.all} @click=${this.#onAll}>
                ${this.all ? `Show the first ${FIRST_ROWS}` : `Show ${more} more`}
              </button>
            </p>`
          : nothing
      }
      ${changeNote(table)}
    `;
  }

  #renderRow({ name, place, value, tolerance, effects_dB }: ChangeRow, largest_dB: number) {
    return html`<tr>
      <th scope="row">${name}<span class="about">${place}: ${value} ${tolerance}</span></th>
      ${effects_dB.map((effect_dB) => this.#renderEffect(effect_dB, largest_dB))}
    </tr>`;
  }

  /** A transmission loss that rises is quieter below, a level that rises is louder. */
  #renderEffect(effect_dB: number, largest_dB: number) {
    const text = levelText(effect_dB, true);
    if (!isSeen(effect_dB)) return html`<td class="number effect nothing">${text}</td>`;
    const quieter = effect_dB > 0 === (this.sound === 'airborne');
    const share = Math.min(Math.abs(effect_dB) / largest_dB, 1);
    return html`<td class="number effect ${quieter ? 'up' : 'down'}" style="--share: ${share.toFixed(2)}">${text}</td>`;
  }

  #forget(): void {
    this.told = undefined;
    this.stopped = false;
    this.#outdated = true;
  }

  #onAll = () => {
    this.all = !this.all;
  };

  #ask(scenario: string, stack: string, signal: AbortSignal, tell: NumberStudyRequest['tell']): Promise<NumberStudy> {
    const request = new NumberStudyRequest(scenario, stack, signal, tell);
    this.dispatchEvent(request);
    return request.answer ?? Promise.reject(new Error('nobody here can work it out'));
  }
}

function renderUncertainty(label: string, standard_dB: readonly number[]) {
  return html`<tr>
    <th scope="row">${label}</th>
    ${standard_dB.map((u) => html`<td class="number">${levelText(u)}</td>`)}
  </tr>`;
}

/** A signal that ends with the given one, or earlier, by the function beside it. */
function endedBy(signal: AbortSignal): [AbortSignal, () => void] {
  const ending = new AbortController();
  signal.addEventListener('abort', () => ending.abort(signal.reason), { once: true });
  return [ending.signal, () => ending.abort(new Error('stopped by the reader'))];
}

/** @throws the signal's reason. */
function pause(ms: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, ms);
    signal.addEventListener('abort', () => {
      clearTimeout(timer);
      reject(signal.reason);
    });
  });
}

declare global {
  interface HTMLElementTagNameMap {
    'what-would-change': WhatWouldChange;
  }
}
