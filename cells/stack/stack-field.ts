import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { NotebookEdit } from '#cells/contract.ts';
import { isUntouched, readEntry } from '#cells/parameters/read-entry.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { entryKey } from '#cells/shared/entry-key.ts';
import { icon } from '#cells/shared/icons.ts';
import '#cells/shared/pop-menu.ts';
import type { MenuItem } from '#cells/shared/pop-menu.ts';
import { clearStackField } from '#src/notebook/edits/clear-stack-field.ts';
import { fixField } from '#src/notebook/edits/fix-field.ts';
import { linkField } from '#src/notebook/edits/link-field.ts';
import { makeParameter } from '#src/notebook/edits/make-parameter.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { useOwnMaterial } from '#src/notebook/edits/use-own-material.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import type { Choice, Notebook, OwnMaterial, ParameterValue, UnitSystem } from '#src/notebook/types.ts';
import { type ChoiceFieldView, type FieldView, fieldView, type NumberFieldView } from './field-view.ts';
import { newMaterial } from './own-material-fields.ts';
import { OWN_MATERIAL, OwnMaterialMade, ownKind } from './own-material-made.ts';

/**
 * One field of a stack: a quantity typed with its unit, or a choice. What is written belongs to the active scenario. The
 * menu behind it turns the field into a parameter and back.
 */
@customElement('stack-field')
export class StackField extends LitElement {
  static override styles = [
    controlStyles,
    css`
      /* Names and controls of fields in a row share two rows of its grid: a name that wraps pushes none of them down. */
      :host {
        display: grid;
        grid-row: span 2;
        grid-template: subgrid / minmax(0, 1fr);
        row-gap: 0;
      }
      .head {
        display: flex;
        align-items: center;
        align-self: end;
        justify-content: space-between;
        gap: var(--space-1);
        min-height: 1.5rem;
        color: var(--ink-soft);
        font-size: var(--size-small);
      }
      .head label {
        min-width: 0;
      }
      pop-menu {
        flex: none;
        font-size: var(--size-small);
      }
      /* It is pressed, and looks like it. */
      .word {
        text-decoration: underline dotted 1px;
        text-underline-offset: 0.25em;
      }
      pop-menu svg {
        width: 0.8em;
        height: 0.8em;
        margin-left: -0.35em;
        fill: none;
        stroke: currentColor;
        stroke-width: 2;
      }
      input,
      select {
        width: 100%;
      }
      .note,
      .error {
        margin: 0.2rem 0 0;
        line-height: 1.3;
      }
      @media (max-width: 30rem) {
        /* Its name and the word "parameter" beside each other. */
        :host([linked]) {
          grid-column: 1 / -1;
        }
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property() stack = '';
  @property({ attribute: false, hasChanged: (a: FieldPath, b?: FieldPath) => a.join('/') !== b?.join('/') })
  path: FieldPath = [];
  /** Stands under the control. */
  @property({ attribute: false }) remark: string | undefined;

  /** What is being typed, or could not be taken: it stays until it is taken, taken back, or the value changes. */
  @state() private draft: { readonly text: string; readonly message?: string } | undefined;
  @query('input, select') private control!: HTMLElement;

  #view: FieldView | undefined;
  #units: UnitSystem | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('notebook') && !changed.has('stack') && !changed.has('path')) return;
    const before = this.#view;
    this.#view = fieldView(this.notebook, this.stack, this.path);
    this.toggleAttribute('linked', this.#view.linked !== undefined);
    const { units } = this.notebook;
    // A bare number means another size in other units, and so does what was said against it.
    if ((before && before.value !== this.#view.value) || this.#units !== units) this.draft = undefined;
    this.#units = units;
  }

  override focus(): void {
    this.control.focus();
  }

  override render() {
    const view = this.#view!;
    return html`
      <div class="head">
        <label for="control">${view.name}</label>
        <pop-menu
          class=${view.linked ? 'linked' : ''}
          .label=${
            view.linked
              ? `${view.label}: parameter “${view.linked.label}”`
              : `${view.label}, fixed: make it a parameter`
          }
          .items=${this.#menu(view)}
          ><span class="word">${view.linked ? 'parameter' : 'fixed'}</span>${view.linked ? nothing : icon('fold-open')}</pop-menu
        >
      </div>
      <div>${view.type === 'number' ? this.#renderNumber(view) : this.#renderChoice(view)}</div>
    `;
  }

  #renderNumber(view: NumberFieldView) {
    const { draft } = this;
    return html`
      <input
        id="control"
        autocomplete="off"
        spellcheck="false"
        placeholder=${view.placeholder}
        aria-invalid=${draft?.message ? 'true' : 'false'}
        aria-describedby=${draft?.message ? 'error' : this.remark ? 'remark' : nothing}
        .value=${live(draft?.text ?? view.text)}
        @input=${this.#onInput}
        @change=${(event: Event) => this.#onText(view, (event.target as HTMLInputElement).value)}
        @keydown=${this.#onKey}
      />
      ${draft?.message ? html`<p id="error" class="error" role="alert">${draft.message}</p>` : nothing}
      ${this.remark ? html`<p id="remark" class="note">${this.remark}</p>` : nothing}
    `;
  }

  #renderChoice(view: ChoiceFieldView) {
    const known = [...view.choices, ...view.own].some((c) => c.value === view.value);
    const option = ({ value, label }: Choice) =>
      html`<option value=${value} .selected=${live(value === view.value)}>${label}</option>`;
    return html`
      <select
        id="control"
        aria-describedby=${view.source ? 'source' : nothing}
        @change=${(event: Event) => this.#onChoice(view, (event.target as HTMLSelectElement).value)}
      >
        ${known ? nothing : html`<option value=${view.value} selected>${view.value}</option>`}
        ${view.choices.map(option)}
        ${view.own.length ? html`<optgroup label="of this notebook">${view.own.map(option)}</optgroup>` : nothing}
        ${ownKind(this.path) ? html`<option value=${OWN_MATERIAL}>Add a material of your own …</option>` : nothing}
      </select>
      ${view.source ? html`<p id="source" class="note">${view.source}</p>` : nothing}
    `;
  }

  #menu(view: FieldView): readonly MenuItem[] {
    const { label, linked, candidates, canBecomeParameter } = view;
    return [
      ...(canBecomeParameter
        ? [
            {
              label: 'Make it a parameter with a slider',
              choose: () => this.#edit(`${label} as a parameter`, (n) => makeParameter(n, this.stack, this.path)),
            },
          ]
        : []),
      ...(linked
        ? [
            {
              label: 'Fix it at its present value, in every scenario',
              choose: () => this.#edit(`fixed ${label}`, (n) => fixField(n, this.stack, this.path)),
            },
          ]
        : []),
      ...candidates.map((parameter) => ({
        label: `Take it from “${parameter.label}”`,
        choose: () =>
          this.#edit(`${label} from “${parameter.label}”`, (n) => linkField(n, this.stack, this.path, parameter.key)),
      })),
    ];
  }

  #onInput = (event: Event) => {
    this.draft = { ...this.draft, text: (event.target as HTMLInputElement).value };
  };

  #onText(view: NumberFieldView, text: string): void {
    if (text.trim() === '' && view.optional) {
      if (view.value !== undefined) this.#edit(`usual ${view.label}`, (n) => clearStackField(n, this.stack, this.path));
      this.draft = undefined;
      return;
    }
    if (!this.draft && isUntouched(text, view.text)) {
      this.draft = undefined;
      return;
    }
    const limitsFrom =
      view.linked &&
      `range of the parameter “${view.linked.label}”: widen it with “Arrange parameters”, or fix the value with the word “parameter” above it`;
    const entry = readEntry({ ...view, ...(limitsFrom && { limitsFrom }) }, text, this.notebook.units);
    if (entry.ok) this.#write(entry.value);
    else this.draft = { text, message: entry.message };
  }

  /** A new material starts as a copy of the one that is chosen, and takes its place. */
  #onChoice(view: ChoiceFieldView, value: string): void {
    const kind = ownKind(this.path);
    if (value === OWN_MATERIAL && kind) this.#addMaterial(newMaterial(this.notebook, kind, view.value));
    else this.#write(value);
  }

  #addMaterial(material: OwnMaterial): void {
    this.#edit(`add ${material.name}`, (n) => useOwnMaterial(n, this.stack, this.path, material));
    this.dispatchEvent(new OwnMaterialMade(material));
    this.requestUpdate();
  }

  #onKey = (event: KeyboardEvent) =>
    entryKey(event, () => {
      this.draft = undefined;
    });

  #write(value: ParameterValue): void {
    this.draft = undefined;
    this.#edit(this.#view!.label, (n) => setStackField(n, this.stack, this.path, value));
  }

  #edit(label: string, edit: (notebook: Notebook) => Notebook): void {
    this.dispatchEvent(new NotebookEdit(label, edit));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'stack-field': StackField;
  }
}
