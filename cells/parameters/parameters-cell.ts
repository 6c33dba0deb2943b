import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { entryKey } from '#cells/shared/entry-key.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import { describeValue } from '#src/notebook/describe-changes.ts';
import { resetParameter } from '#src/notebook/edits/reset-parameter.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { type FieldUse, fieldsUsing } from '#src/notebook/field-use.ts';
import { findScenario } from '#src/notebook/find.ts';
import type {
  ChoiceParameter,
  Notebook,
  Parameter,
  ParametersCell as ParametersCellModel,
  ParameterValue,
  QuantityParameter,
  Scenario,
} from '#src/notebook/types.ts';
import { inheritedValues, type Values, valuesOf } from '#src/notebook/values.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { type CellProperties, FieldReveal, NotebookEdit, type ResultsView } from '../contract.ts';
import { controlStyles } from '../shared/controls.ts';
import { icon } from '../shared/icons.ts';
import { scenarioSample } from '../shared/scenario-sample.ts';
import { segmented, segmentedStyles } from '../shared/segmented.ts';
import { answeringStack } from './answering-stack.ts';
import { MOST_ABREAST } from './floor-answer.ts';
import './parameters-editor.ts';
import { parametersStyles } from './parameters-styles.ts';
import { isUntouched, readEntry } from './read-entry.ts';
import { sliderScale } from './slider-scale.ts';
import { SwipeGuard } from './swipe-guard.ts';

/** More choices than this are a list instead of a strip. */
const CHOICES_IN_A_STRIP = 4;

/** What is being typed into a field, and why it could not be read: it stays while results come and go. */
interface Draft {
  readonly text: string;
  readonly message?: string;
}

/** Sliders, typed entry and choices for the active scenario; beside them the values of all shown ones. */
@customElement('parameters-cell')
export class ParametersCell extends LitElement implements CellProperties<ParametersCellModel> {
  static override styles = [controlStyles, segmentedStyles, parametersStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: ParametersCellModel;
  @property({ attribute: false }) results!: ResultsView;

  @state() private drafts: ReadonlyMap<string, Draft> = new Map();
  @state() private arranging = false;
  /** The parameter that was moved last: its floor answers. */
  @state() private moved: string | undefined;
  /** Counts drags, so that each one is a step of undo. */
  #drag = 0;
  readonly #swipe = new SwipeGuard();

  /** What is being typed was meant for the value that stood there, and a bare number for the units of then. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('notebook');
    if (!before || this.drafts.size === 0) return;
    const [then, now] = [before, this.notebook].map((n) => valuesOf(n, n.active)) as [Values, Values];
    const sameUnits = before.units === this.notebook.units;
    this.drafts = new Map([...this.drafts].filter(([key]) => sameUnits && then[key] === now[key]));
  }

  override render() {
    const { notebook } = this;
    const parameters = this.#parameters();
    const shown = notebook.shown.map((id) => ({
      scenario: findScenario(notebook, id),
      values: valuesOf(notebook, id),
    }));
    const columns = shown.length > 1 ? shown : [];
    return html`<div class="host">
      ${
        parameters.length === 0
          ? html`<p class="note">
              ${
                notebook.parameters.length === 0
                  ? 'This notebook has no parameters yet. Turn a field of a stack into a parameter, and its slider stands here.'
                  : 'No parameter is chosen for this cell.'
              }
            </p>`
          : html`<div
              class="rows ${columns.length > MOST_ABREAST ? 'crowded' : ''}"
              style="--columns: ${columns.length}"
              ${fadeWhereMore()}
            >
              ${this.#heads(columns.map((c) => c.scenario))}
              ${repeat(
                parameters,
                (p) => p.key,
                (p) => this.#row(p, columns),
              )}
            </div>`
      }
      ${this.#answer(parameters)}
      <p class="screen-only">
        <button
          class="quiet"
          aria-expanded=${this.arranging}
          @click=${() => {
            this.arranging = !this.arranging;
          }}
        >
          ${icon('edit')} Arrange parameters
        </button>
      </p>
      ${
        this.arranging
          ? html`<parameters-editor
              class="screen-only"
              .notebook=${notebook}
              .cell=${this.cell}
            ></parameters-editor>`
          : nothing
      }
    </div>`;
  }

  #parameters(): readonly Parameter[] {
    const { parameters } = this.notebook;
    if (this.cell.parameters.length === 0) return parameters;
    return this.cell.parameters.flatMap((key) => parameters.find((p) => p.key === key) ?? []);
  }

  #answer(parameters: readonly Parameter[]) {
    const { notebook, moved } = this;
    const keys = parameters.map((p) => p.key);
    const stack = answeringStack(notebook, moved !== undefined && keys.includes(moved) ? [moved, ...keys] : keys);
    if (!stack) return nothing;
    return html`<floor-answer
      class="screen-only"
      .notebook=${notebook}
      .results=${this.results}
      .stack=${stack}
    ></floor-answer>`;
  }

  #heads(columns: readonly Scenario[]) {
    const { notebook } = this;
    const active = findScenario(notebook, notebook.active);
    return html`<div class="heads" aria-hidden="true">
      <span class="working"
        >Working in ${scenarioSample(active)} <b>${active.name}</b></span
      >
      ${columns.map(
        (scenario) => html`<span class="scenario">${scenarioSample(scenario)} <span>${scenario.name}</span></span>`,
      )}
    </div>`;
  }

  #row(parameter: Parameter, columns: readonly { readonly scenario: Scenario; readonly values: Values }[]) {
    const { notebook } = this;
    return html`<div class="row" role="group" aria-label=${parameter.label}>
      ${this.#control(parameter)}
      ${
        columns.length === 0
          ? nothing
          : html`<ul class="values" aria-label="${parameter.label} in the shown scenarios">
              ${columns.map(({ scenario, values }) => {
                const own = scenario.parent !== null && Object.hasOwn(scenario.changes, parameter.key);
                return html`<li class=${own ? 'own' : ''}>
                  ${scenarioSample(scenario)}
                  <span class="visually-hidden">${scenario.name}: </span
                  ><span class="value">${describeValue(parameter, values[parameter.key]!, notebook.units)}</span>
                  ${own ? html`<span class="mark">${changedFrom(notebook, scenario.parent)}</span>` : nothing}
                </li>`;
              })}
            </ul>`
      }
    </div>`;
  }

  #control(parameter: Parameter) {
    const { notebook } = this;
    const values = valuesOf(notebook, notebook.active);
    const value = values[parameter.key]!;
    return html`<div class="control">
      <div class="label">
        <span
          >${parameter.label}<span class="print-only">: ${describeValue(parameter, value, notebook.units)}</span></span
        >
        ${this.#uses(parameter)}
      </div>
      ${'choices' in parameter ? this.#choice(parameter, String(value)) : this.#quantity(parameter, Number(value))}
      ${this.#changed(parameter)}
    </div>`;
  }

  #uses({ key, label }: Parameter) {
    const uses = fieldsUsing(this.notebook, key);
    if (uses.length === 0) return html`<span class="note">not used yet</span>`;
    const [{ stack, path, label: field }] = uses as [FieldUse];
    const inStack = this.notebook.stacks.length > 1 ? `${stack.name}: ` : '';
    const where = `${inStack}${field}${uses.length > 1 ? ` and ${uses.length - 1} more` : ''}`;
    return html`<button
      class="quiet use"
      aria-label="Show where ${label} is used: ${where}"
      title=${uses.map((u) => `${u.stack.name}: ${u.label}`).join('\n')}
      @click=${() => this.dispatchEvent(new FieldReveal(stack.id, path))}
    >
      ${where}
    </button>`;
  }

  #quantity(parameter: QuantityParameter, value: number) {
    const { key, label, quantity } = parameter;
    const { units } = this.notebook;
    const draft = this.drafts.get(key);
    const text = formatQuantity(value, quantity, units);
    const scale = sliderScale(parameter, units);
    return html`<div class="entry">
        <input
          type="range"
          aria-label=${label}
          aria-valuetext=${text}
          min=${scale.min}
          max=${scale.max}
          step="1"
          .value=${live(String(scale.toPosition(value)))}
          @pointerdown=${(event: PointerEvent) => this.#swipe.down(event)}
          @pointermove=${(event: PointerEvent) => this.#swipe.move(event)}
          @pointerup=${() => this.#swipe.up()}
          @pointercancel=${this.#onSwipe}
          @input=${({ target }: Event) => {
            const { valueAsNumber } = target as HTMLInputElement;
            this.#swipe.take(() => this.#set(parameter, scale.toValue(valueAsNumber), `${key}#${this.#drag}`));
          }}
          @change=${() => {
            this.#drag += 1;
          }}
        />
        <input
          type="text"
          autocomplete="off"
          spellcheck="false"
          aria-label="${label}, typed"
          aria-invalid=${draft?.message ? 'true' : 'false'}
          aria-describedby=${draft?.message ? `error-${key}` : nothing}
          .value=${live(draft?.text ?? text)}
          @input=${(event: Event) => this.#keepDraft(key, { ...draft, text: (event.target as HTMLInputElement).value })}
          @change=${(event: Event) => this.#onTyped(parameter, text, (event.target as HTMLInputElement).value)}
          @keydown=${(event: KeyboardEvent) => this.#onTypedKey(event, key, text)}
        />
      </div>
      ${draft?.message ? html`<p class="error" id="error-${key}" role="alert">${draft.message}</p>` : nothing}`;
  }

  /** The slider that was touched goes back to where it stood. */
  #onSwipe = (): void => {
    this.#swipe.cancel();
    this.requestUpdate();
  };

  #choice(parameter: ChoiceParameter, value: string) {
    const { key, label, choices } = parameter;
    if (choices.length <= CHOICES_IN_A_STRIP)
      return segmented({ label, name: key, choices, value, onChange: (v) => this.#set(parameter, v) });
    return html`<select
      aria-label=${label}
      .value=${live(value)}
      @change=${(event: Event) => this.#set(parameter, (event.target as HTMLSelectElement).value)}
    >
      ${choices.map(
        (choice) => html`<option value=${choice.value} ?selected=${choice.value === value}>${choice.label}</option>`,
      )}
    </select>`;
  }

  #changed(parameter: Parameter) {
    const { notebook } = this;
    const active = findScenario(notebook, notebook.active);
    if (active.parent === null || !Object.hasOwn(active.changes, parameter.key)) return nothing;
    const before = inheritedValues(notebook, active.id)[parameter.key]!;
    return html`<p class="changed note">
      <span>
        ${findScenario(notebook, active.parent).name} has ${describeValue(parameter, before, notebook.units)}
      </span>
      <button
        class="quiet"
        aria-label="Reset ${parameter.label}"
        @click=${() => {
          this.#dropDraft(parameter.key);
          this.dispatchEvent(
            new NotebookEdit(`reset ${parameter.label}`, (n) => resetParameter(n, parameter.key, active.id)),
          );
        }}
      >
        ${icon('reset')} Reset
      </button>
    </p>`;
  }

  #set({ key, label }: Parameter, value: ParameterValue, merge?: string): void {
    this.#dropDraft(key);
    this.moved = key;
    const merged = merge && `${merge}@${this.notebook.active}`;
    // A cell that was out of sight may not have heard yet which scenario is worked in; the notebook knows.
    this.dispatchEvent(new NotebookEdit(label, (n) => setParameter(n, key, value, n.active), merged));
  }

  /** A text that nobody typed keeps the value it stands for, which may have more digits. */
  #onTyped(parameter: QuantityParameter, shownText: string, text: string): void {
    if (!this.drafts.has(parameter.key) && isUntouched(text, shownText)) {
      this.#dropDraft(parameter.key);
      return;
    }
    const limitsFrom = 'its range, which “Arrange parameters” changes';
    const entry = readEntry({ ...parameter, limitsFrom }, text, this.notebook.units);
    if (entry.ok) this.#set(parameter, entry.value);
    else this.#keepDraft(parameter.key, { text, message: entry.message });
  }

  #onTypedKey(event: KeyboardEvent, key: string, shownText: string): void {
    entryKey(event, () => {
      (event.target as HTMLInputElement).value = shownText;
      this.#dropDraft(key);
    });
  }

  #keepDraft(key: string, draft: Draft): void {
    this.drafts = new Map(this.drafts).set(key, draft);
  }

  #dropDraft(key: string): void {
    if (!this.drafts.has(key)) return;
    const drafts = new Map(this.drafts);
    drafts.delete(key);
    this.drafts = drafts;
  }
}

/** Not from the reference, which may be another scenario: so it is said. */
function changedFrom({ scenarios }: Notebook, parent: string | null): string {
  return `changed from ${scenarios.find((s) => s.id === parent)?.name ?? 'where it was forked'}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'parameters-cell': ParametersCell;
  }
}
