import { Task, TaskStatus } from '@lit/task';
import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Result, ResultsView } from '#cells/contract.ts';
import { NumberStudyRequest, type StudyProgress } from '#cells/number-study-request.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import type { NumberStudy } from '#src/acoustics/number-study.ts';
import type { Prediction, Sound } from '#src/acoustics/prediction.ts';
import { bandLabel } from '#src/charts/band-axis.ts';
import { levelText } from '#src/charts/band-data.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import { findScenario, findStack } from '#src/notebook/find.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { orAborted } from '#workers/or-aborted.ts';
import { changeNote } from './change-note.ts';
import { changeStyles } from './change-styles.ts';
import { type ChangeRow, type ChangeTable, changeTable, isSeen, LOW_BANDS_Hz, type Studied } from './change-table.ts';
import { studyStatus } from './study-status.ts';

/** A study starts when the floor has stood still for so long: while a slider moves none does. */
const PAUSE_ms = 200;

/** A study that takes longer shows what it has so far, as often as that, the strongest first: no rows race. */
const SO_FAR_EVERY_ms = 1000;

/** Rows that stand there before all are asked for. */
const FIRST_ROWS = 8;

/** Where the keyboard goes when the button that it was on has gone: to the first of these that is there. */
const NEXT_FOCUS = ['.error button', '.status button', '.scroll', '.status'];

/** A study as far as it has come, and the floor that it is of. */
interface SoFar extends Studied, StudyProgress {
  readonly prediction: Prediction;
}

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
  /** What the table shows, of this stack in this scenario: it stays until the next study is there, or some of it. */
  @state() private studied: SoFar | undefined;
  /** How far the study of the floor as it is now has come. */
  @state() private told: SoFar | undefined;
  /** That the reader ended the present study. */
  @state() private stopped = false;
  /** That the present study follows one that was stopped. */
  @state() private resumed = false;

  #table: ChangeTable | undefined;
  #end: (() => void) | undefined;

  /** Starts anew with every prediction that is ready; one that is computed again ends it. */
  readonly #task = new Task(this, {
    args: () => [this.#prediction, this.scenario, this.stack] as const,
    task: async ([prediction, scenario, stack], { signal }) => {
      this.#begin(prediction);
      if (!prediction) return;
      const { notebook } = this;
      const construction = resolveStack(notebook, scenario, stack);
      const of = { prediction, construction, stack: findStack(notebook, stack) };
      const [ending, end] = endedBy(signal);
      this.#end = end;
      try {
        await pause(PAUSE_ms, ending);
        let shown_ms = performance.now();
        const study = await this.#ask(scenario, stack, ending, (progress) => {
          if (ending.aborted) return;
          this.told = { ...of, ...progress };
          if (progress.done === 0 || performance.now() - shown_ms < SO_FAR_EVERY_ms) return;
          shown_ms = performance.now();
          this.studied = this.told;
        });
        ending.throwIfAborted();
        const total = study.numbers.length + study.atTheEdge.length;
        this.studied = this.told = { ...of, study, done: total, total };
      } catch (error) {
        if (!ending.aborted || signal.aborted) throw error;
        this.stopped = true;
        // Nothing of this floor is better than a table of another one that no study will replace.
        this.studied = this.told?.done ? this.told : undefined;
      }
    },
  });

  get #result(): Result {
    return this.results.of(this.scenario, this.stack);
  }

  /** Of the floor as it is now. */
  get #prediction(): Prediction | undefined {
    const result = this.#result;
    return result.state === 'ready' ? result.prediction : undefined;
  }

  get #pending(): boolean {
    return this.#task.status === TaskStatus.PENDING;
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
    if (this.hasUpdated && (changed.has('scenario') || changed.has('stack'))) {
      this.studied = this.told = undefined;
      this.stopped = false;
    }
    const unitsChanged = changed.has('notebook') && changed.get('notebook')?.units !== this.notebook.units;
    if (unitsChanged || ['studied', 'sound', 'scenario', 'stack'].some((name) => changed.has(name)))
      this.#table = this.studied && changeTable(this.studied, this.sound, this.notebook.units);
  }

  protected override update(changed: PropertyValues): void {
    const root = this.shadowRoot;
    const heldFocus = root?.activeElement?.matches('.status button, .error button');
    super.update(changed);
    if (!root || !heldFocus) return;
    for (const place of NEXT_FOCUS) if (!root.activeElement) root.querySelector<HTMLElement>(place)?.focus();
  }

  override render() {
    const table = this.#table;
    return html`${this.#renderProblem()} ${table ? this.#renderExplanation() : nothing} ${this.#renderStatus()}
    ${table ? this.#renderTable(table) : nothing}`;
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

  /** In one place whether or not there is a table yet, so that its button is the same one and keeps the keyboard. */
  #renderStatus() {
    const { told, stopped, resumed } = this;
    const { state } = this.#result;
    const alone = this.#table === undefined;
    if (this.#task.status === TaskStatus.ERROR) return nothing;
    if (alone && state === 'failed') return html`<p class="empty">It stands here once the floor can be computed.</p>`;
    const waiting = state === 'computing';
    if (!(waiting || this.#pending || stopped || told)) return nothing;
    return studyStatus({
      state: waiting ? 'waiting' : stopped ? 'stopped' : this.#pending ? 'running' : 'done',
      alone,
      atOnce: resumed,
      done: told?.done,
      total: told?.total,
      onStop: () => this.#end?.(),
      onGoOn: () => void this.#task.run(),
    });
  }

  #renderExplanation() {
    const { name } = findScenario(this.notebook, this.scenario);
    return html`<p class="note">
      By how many decibels ${this.#symbol} of ${name} changes if one number of the floor grows by 10 %, along the slope
      around its present value: good for small changes, no promise for large ones.
      <span class="sample up" style="--share: 0.6">Blue</span> is quieter below,
      <span class="sample down" style="--share: 0.6">orange</span> louder. What matters most from ${LOW_BANDS_Hz.first} to
      ${LOW_BANDS_Hz.last} Hz stands first.
    </p>`;
  }

  get #symbol() {
    return this.sound === 'impact' ? html`L<sub>n</sub>` : html`R`;
  }

  #renderTable(table: ChangeTable) {
    const { study, done, total, prediction } = this.studied!;
    const { name } = findScenario(this.notebook, this.scenario);
    const shown = this.all ? table.rows : table.rows.slice(0, FIRST_ROWS);
    const more = table.rows.length - FIRST_ROWS;
    const busy = this.#result.state === 'computing' || this.#pending;
    const outdated = prediction !== this.#prediction;
    const assumed = done < total ? `the ± of the ${study.numbers.length} so far` : 'all that is assumed in ±';
    const caption = `What 10 % more of each number changes in ${name}, ${this.sound} sound`;
    return html`
      <div class=${outdated ? 'awaited' : ''} aria-busy=${busy}>
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

  /** What is known of this very floor stays: it is where the study goes on. */
  #begin(prediction: Prediction | undefined): void {
    this.told = [this.told, this.studied].find((soFar) => soFar && soFar.prediction === prediction);
    this.resumed = this.stopped;
    this.stopped = false;
  }

  #onAll = () => {
    this.all = !this.all;
  };

  #ask(scenario: string, stack: string, signal: AbortSignal, tell: NumberStudyRequest['tell']): Promise<NumberStudy> {
    const request = new NumberStudyRequest(scenario, stack, signal, tell);
    this.dispatchEvent(request);
    if (!request.answer) return Promise.reject(new Error('nobody here can work it out'));
    return orAborted(request.answer, signal);
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
