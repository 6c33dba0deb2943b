import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { removeParameter } from '#src/notebook/edits/remove-parameter.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { updateParameter } from '#src/notebook/edits/update-parameter.ts';
import { fieldsUsing } from '#src/notebook/field-use.ts';
import { movedTo } from '#src/notebook/lists.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import { RANGE_WORDS } from '#src/notebook/range-words.ts';
import type { Notebook, Parameter, ParametersCell, QuantityParameter } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { type Edit, NotebookEdit } from '../contract.ts';
import { controlStyles } from '../shared/controls.ts';
import { icon } from '../shared/icons.ts';
import { type Limit, rangeEntry } from './range-entry.ts';
import { isUntouched } from './read-entry.ts';

const LIMITS: readonly Limit[] = ['min', 'max', 'step'];

/** What could not be taken: the text stays where it was typed. */
interface Refusal {
  readonly field: 'label' | Limit;
  readonly text: string;
  readonly message: string;
}

/** Which parameters a cell shows and in what order; their names, ranges and steps. */
@customElement('parameters-editor')
export class ParametersEditor extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        padding: var(--space-3);
        border: 1px solid var(--hairline);
        border-radius: var(--radius);
        background: var(--paper-raised);
      }
      ol {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: grid;
        gap: var(--space-2);
        padding: var(--space-2) 0;
        border-bottom: 1px solid var(--hairline);
      }
      .line {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-2) var(--space-3);
      }
      .line .name {
        flex: 1 1 7rem;
        min-width: 0;
      }
      .limits input {
        width: 6.5rem;
        text-align: right;
      }
      .limits label {
        display: inline-flex;
        align-items: center;
        gap: var(--space-2);
        color: var(--ink-soft);
        font-size: var(--size-small);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: ParametersCell;

  /** By key of the parameter. */
  @state() private refusals: ReadonlyMap<string, Refusal> = new Map();

  override render() {
    const shown = this.#shown();
    const { parameters } = this.notebook;
    const hidden = parameters.filter((p) => !shown.includes(p.key));
    const inOrder = [...shown.map((key) => parameters.find((p) => p.key === key)!), ...hidden];
    return html`<ol>
      ${inOrder.map((p, i) => this.#item(p, i, shown))}
    </ol>`;
  }

  /** A bare number means another size in other units. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('notebook');
    if (before && before.units !== this.notebook.units) this.refusals = new Map();
  }

  /** Keys that the cell shows; an empty list in the cell stands for all. */
  #shown(): readonly string[] {
    const known = this.notebook.parameters.map((p) => p.key);
    return this.cell.parameters.length === 0 ? known : this.cell.parameters.filter((key) => known.includes(key));
  }

  #item(parameter: Parameter, index: number, shown: readonly string[]) {
    const { key, label } = parameter;
    const isShown = shown.includes(key);
    const refusal = this.refusals.get(key);
    return html`<li>
      <div class="line">
        <label
          ><input
            type="checkbox"
            aria-label="Show ${label} in this cell"
            .checked=${live(isShown)}
            ?disabled=${isShown && shown.length === 1}
            @change=${() => this.#show(key, !isShown, shown)}
        /></label>
        <input
          class="name"
          type="text"
          aria-label="Name of ${label}"
          maxlength="80"
          .value=${live(this.#draft(key, 'label') ?? label)}
          aria-invalid=${this.#draft(key, 'label') === undefined ? 'false' : 'true'}
          @change=${(event: Event) => this.#rename(parameter, (event.target as HTMLInputElement).value)}
        />
        <button
          class="quiet icon"
          aria-label="Move ${label} up"
          ?disabled=${!isShown || index === 0}
          @click=${() => this.#move(index, index - 1, shown)}
        >
          ${icon('up')}
        </button>
        <button
          class="quiet icon"
          aria-label="Move ${label} down"
          ?disabled=${!isShown || index === shown.length - 1}
          @click=${() => this.#move(index, index + 1, shown)}
        >
          ${icon('down')}
        </button>
        <button
          class="quiet icon"
          aria-label="Remove ${label} from the notebook"
          title=${
            fieldsUsing(this.notebook, key).length > 0
              ? 'In use: set its fields to plain values first'
              : 'Remove from the notebook'
          }
          ?disabled=${fieldsUsing(this.notebook, key).length > 0}
          @click=${() => this.#edit(`remove ${label}`, (n) => removeParameter(n, key))}
        >
          ${icon('remove')}
        </button>
      </div>
      ${'choices' in parameter ? nothing : this.#limits(parameter)}
      ${refusal ? html`<p class="error" role="alert">${refusal.message}</p>` : nothing}
    </li>`;
  }

  #limits(parameter: QuantityParameter) {
    const { units } = this.notebook;
    return html`<div class="line limits">
      ${LIMITS.map(
        (limit) => html`<label
          >${RANGE_WORDS[limit]}
          <input
            type="text"
            aria-label="${parameter.label}, ${RANGE_WORDS[limit]}"
            .value=${live(
              this.#draft(parameter.key, limit) ?? formatQuantity(parameter[limit], parameter.quantity, units),
            )}
            aria-invalid=${this.#draft(parameter.key, limit) === undefined ? 'false' : 'true'}
            @change=${(event: Event) => this.#setLimit(parameter, limit, (event.target as HTMLInputElement).value)}
        /></label>`,
      )}
    </div>`;
  }

  #draft(key: string, field: Refusal['field']): string | undefined {
    const refusal = this.refusals.get(key);
    return refusal?.field === field ? refusal.text : undefined;
  }

  #rename({ key, label }: Parameter, text: string): void {
    const name = text.trim();
    if (name) this.#try(key, 'label', text, `name of ${label}`, (n) => updateParameter(n, key, { label: name }));
    else this.#refuse(key, { field: 'label', text, message: 'A parameter needs a name.' });
  }

  #setLimit(parameter: QuantityParameter, limit: Limit, text: string): void {
    const { key, label, quantity } = parameter;
    const entry = rangeEntry(this.notebook, parameter, limit, text);
    if (isUntouched(text, formatQuantity(parameter[limit], quantity, this.notebook.units))) this.#accept(key);
    else if (!entry.ok) this.#refuse(key, { field: limit, text, message: entry.message });
    else this.#try(key, limit, text, `range of ${label}`, (n) => updateParameter(n, key, { [limit]: entry.value }));
  }

  #show(key: string, show: boolean, shown: readonly string[]): void {
    this.#arrange(show ? [...shown, key] : shown.filter((k) => k !== key));
  }

  #move(from: number, to: number, shown: readonly string[]): void {
    this.#arrange(movedTo(shown, from, to));
  }

  #arrange(parameters: readonly string[]): void {
    const { id } = this.cell;
    this.#edit('arrange parameters', (n) => updateCell(n, id, 'parameters', { parameters }));
  }

  /** Tries the edit on the notebook at hand first, so that a refusal stands beside the field. */
  #try(key: string, field: Refusal['field'], text: string, label: string, edit: Edit): void {
    try {
      edit(this.notebook);
    } catch (error) {
      this.#refuse(key, { field, text, message: messageOf(error) });
      return;
    }
    this.#accept(key);
    this.#edit(label, edit);
  }

  #accept(key: string): void {
    const refusals = new Map(this.refusals);
    refusals.delete(key);
    this.refusals = refusals;
  }

  #refuse(key: string, refusal: Refusal): void {
    this.refusals = new Map(this.refusals).set(key, refusal);
  }

  #edit(label: string, edit: Edit): void {
    this.dispatchEvent(new NotebookEdit(label, edit));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'parameters-editor': ParametersEditor;
  }
}
