import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type Edit, NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { icon } from '#cells/shared/icons.ts';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import { changesOptionalFields } from '#src/notebook/changes-optional-fields.ts';
import { describeChanges, type IsUsual } from '#src/notebook/describe-changes.ts';
import { forkScenario } from '#src/notebook/edits/fork-scenario.ts';
import { moveScenario } from '#src/notebook/edits/move-scenario.ts';
import { setActive } from '#src/notebook/edits/set-active.ts';
import { showScenario } from '#src/notebook/edits/show-scenario.ts';
import { findScenario } from '#src/notebook/find.ts';
import type { Notebook, Scenario } from '#src/notebook/types.ts';
import { freshScenario } from './fresh-scenario.ts';
import { scenarioRailStyles } from './scenario-rail-styles.ts';

const DRAGGED = 'application/x-slab-and-spring-scenario';

/**
 * The scenarios as a column of cards: which one is worked in, which are shown, which one differences are taken from,
 * and what each changes. Every wish goes out as a `NotebookEdit`.
 */
@customElement('scenario-rail')
export class ScenarioRail extends LitElement {
  static override styles = [controlStyles, scenarioRailStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ type: Boolean }) readOnly = false;

  /** The scenario whose further actions are open. */
  @state() private opened: string | undefined;
  @state() private dropIndex: number | undefined;
  @state() private isUsual: IsUsual | undefined;
  /** The card that held the focus before an update. */
  #focused: string | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('notebook')) return;
    const { activeElement } = this.renderRoot as ShadowRoot;
    this.#focused = activeElement?.closest<HTMLElement>('[data-scenario]')?.dataset.scenario;
    if (!this.notebook.scenarios.some((s) => s.id === this.opened)) this.opened = undefined;
    if (!this.isUsual && changesOptionalFields(this.notebook)) void this.#learnWhatIsUsual();
  }

  /** An edit may move or remove the card that was worked with, or make a new one: the focus stays with the work. */
  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('notebook')) return;
    const before = changed.get('notebook');
    const activeChanged = before?.active !== this.notebook.active || before.id !== this.notebook.id;
    if (activeChanged) this.#scrollToActive();
    if (!before) return;
    if (this.#focused === undefined) return;
    const lost = (this.renderRoot as ShadowRoot).activeElement === null;
    if (!activeChanged && !lost) return;
    const card = (!activeChanged && this.#cardOf(this.#focused)) || this.#cardOf(this.notebook.active);
    card?.querySelector<HTMLElement>('input[type="radio"]')?.focus();
  }

  override render() {
    const { scenarios } = this.notebook;
    return html`<nav aria-labelledby="heading">
      <h2 id="heading">Scenarios</h2>
      ${
        // The cards say the same to who does not see how few of them fit.
        scenarios.length > 1
          ? html`<p class="names screen-only" aria-hidden="true">
              ${scenarios.map(
                (scenario) =>
                  // A short way to its card for a finger; the cards are there for everybody else.
                  html`<span
                    class=${scenario.id === this.notebook.active ? 'working' : ''}
                    @click=${() => this.#cardOf(scenario.id)?.querySelector('input')?.click()}
                    >${scenarioSample(scenario)} ${scenario.name}</span
                  >`,
              )}
            </p>`
          : nothing
      }
      <div role="radiogroup" aria-label="Scenario to work in">
        <ol
          class="both-ways"
          ${fadeWhereMore()}
          @dragover=${this.#onDragOver}
          @dragleave=${this.#onDragLeave}
          @drop=${this.#onDrop}
        >
          ${repeat(
            scenarios,
            (s) => s.id,
            (s, index) => this.#card(s, index),
          )}
        </ol>
      </div>
    </nav>`;
  }

  #card(scenario: Scenario, index: number) {
    const { notebook } = this;
    const active = notebook.active === scenario.id;
    const shown = notebook.shown.includes(scenario.id);
    const opened = this.opened === scenario.id;
    return html`<li
      data-scenario=${scenario.id}
      class=${`${active ? 'active' : ''} ${shown ? '' : 'not-shown'} ${this.dropIndex === index ? 'drop' : ''}`}
      draggable=${this.readOnly || opened || index === 0 ? 'false' : 'true'}
      @dragstart=${(event: DragEvent) => this.#onDragStart(event, scenario)}
      @dragend=${this.#onDragLeave}
    >
      <div class="top">
        <label class="pick">
          <input
            type="radio"
            name="active"
            .checked=${active}
            @change=${() => this.#edit(`work in “${scenario.name}”`, (n) => setActive(n, scenario.id), 'active')}
            @keydown=${(event: KeyboardEvent) => this.#onKey(event, scenario, index)}
            ?disabled=${this.readOnly}
          />
          ${scenarioSample(scenario)}
          <span class="name">${scenario.name}</span>
        </label>
        <button
          class="quiet icon"
          aria-pressed=${shown}
          aria-label="Show ${scenario.name}"
          title=${shown ? 'Shown beside the others: hide it' : 'Hidden: show it beside the others'}
          ?disabled=${this.readOnly || (shown && notebook.shown.length === 1)}
          @click=${() =>
            this.#edit(`${shown ? 'hide' : 'show'} “${scenario.name}”`, (n) => showScenario(n, scenario.id, !shown))}
        >
          ${icon(shown ? 'shown' : 'hidden')}
        </button>
      </div>
      ${this.#words(scenario)}
      ${
        this.readOnly
          ? nothing
          : html`<div class="actions">
              <button class="quiet" aria-label="Fork ${scenario.name}" @click=${() => this.#fork(scenario)}>
                ${icon('fork')} Fork
              </button>
              <button
                class="quiet"
                aria-expanded=${opened}
                aria-label="More for ${scenario.name}"
                @click=${() => this.#open(opened ? undefined : scenario.id)}
              >
                ${icon('more')} More
              </button>
            </div>`
      }
      ${opened ? html`<scenario-actions .notebook=${notebook} .scenario=${scenario}></scenario-actions>` : nothing}
    </li>`;
  }

  /** Where it comes from and what it changes. */
  #words(scenario: Scenario) {
    const { notebook } = this;
    const reference = notebook.reference === scenario.id ? html`<span class="reference">reference</span>` : nothing;
    if (scenario.parent === null) return html`<p class="words">${reference} the start of all others</p>`;
    const changes = describeChanges(notebook, scenario.id, this.isUsual);
    const parent = findScenario(notebook, scenario.parent).name;
    return html`<p class="words">
      ${reference}
      ${
        changes.length === 0
          ? html`the same as ${parent}`
          : html`from ${parent}: <span class="changes">${changes.map((c) => heldTogether(c.text)).join('; ')}</span>`
      }
    </p>`;
  }

  /** The code behind it asks the engine and comes only for notebooks that may need it. */
  async #learnWhatIsUsual(): Promise<void> {
    this.isUsual = (await import('#src/notebook/usual-value.ts')).isUsualValue;
  }

  /** The code behind it comes when it is first asked for. */
  async #open(id: string | undefined): Promise<void> {
    this.opened = id;
    if (id !== undefined) await import('./scenario-actions.ts');
  }

  #cardOf(id: string): HTMLElement | null {
    return this.renderRoot.querySelector(`[data-scenario="${id}"]`);
  }

  /** On narrow pages the cards stand side by side; only their strip may scroll, never the page. */
  #scrollToActive(): void {
    const card = this.#cardOf(this.notebook.active);
    const strip = card?.parentElement;
    if (!card || !strip) return;
    const { left, right } = strip.getBoundingClientRect();
    const place = card.getBoundingClientRect();
    const peek_px = Number.parseFloat(getComputedStyle(strip).scrollPaddingLeft);
    if (place.left < left || place.right > right) strip.scrollLeft += place.left - left - peek_px;
  }

  #edit(label: string, edit: Edit, merge?: string): void {
    this.dispatchEvent(new NotebookEdit(label, edit, merge));
  }

  #fork({ id, name }: Scenario): void {
    const created = freshScenario(this.notebook, name);
    this.#edit(`fork “${name}”`, (n) => forkScenario(n, id, created));
  }

  /** The base stays first; a place out of reach changes nothing. */
  #move({ id, name }: Scenario, to: number): void {
    if (to < 1 || to >= this.notebook.scenarios.length) return;
    this.#edit(`move “${name}”`, (n) => moveScenario(n, id, to));
  }

  #onKey(event: KeyboardEvent, scenario: Scenario, index: number): void {
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (!event.altKey || !step) return;
    event.preventDefault();
    if (index > 0) this.#move(scenario, index + step);
  }

  #onDragStart(event: DragEvent, scenario: Scenario): void {
    event.dataTransfer?.setData(DRAGGED, scenario.id);
    if (event.dataTransfer) event.dataTransfer.effectAllowed = 'move';
  }

  #onDragOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes(DRAGGED)) return;
    event.preventDefault();
    this.dropIndex = this.#indexAt(event);
  };

  #onDragLeave = (): void => {
    this.dropIndex = undefined;
  };

  #onDrop = (event: DragEvent): void => {
    const id = event.dataTransfer?.getData(DRAGGED);
    const scenario = this.notebook.scenarios.find((s) => s.id === id);
    const to = this.#indexAt(event);
    this.dropIndex = undefined;
    if (!scenario || to === undefined) return;
    event.preventDefault();
    this.#move(scenario, to);
  };

  #indexAt(event: DragEvent): number | undefined {
    const card = event.composedPath().find((n) => n instanceof HTMLElement && n.matches('li[data-scenario]'));
    if (!(card instanceof HTMLElement)) return undefined;
    return this.notebook.scenarios.findIndex((s) => s.id === card.dataset.scenario);
  }
}

/** No line break between a number, its arrow and its unit. */
function heldTogether(words: string): string {
  return words.replace(/(?<=[\d→]) | (?=→)/g, '\u00a0');
}

declare global {
  interface HTMLElementTagNameMap {
    'scenario-rail': ScenarioRail;
  }
}
