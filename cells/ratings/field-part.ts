import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import {
  FIELD_VALUE_NAMES,
  type FieldValueName,
  type FieldValues,
  FURNISHED_ROOM_S,
  fieldValues,
} from '#src/acoustics/ratings/field-values.ts';
import { ROOM_LIMITS } from '#src/notebook/cell-schema.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { findScenario } from '#src/notebook/find.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, RatingsCell, Scenario } from '#src/notebook/types.ts';
import { formatQuantity, NO_VALUE } from '#src/quantities/format-quantity.ts';
import { NotebookEdit, type ResultsView } from '../contract.ts';
import { controlStyles } from '../shared/controls.ts';
import { foldStyles } from '../shared/fold-styles.ts';
import { wholeNumber } from '../shared/number-words.ts';
import '../shared/quantity-field.ts';
import type { QuantityEntry } from '../shared/quantity-field.ts';
import { columnTable } from './column-table.ts';
import { columnTableStyles } from './column-table-styles.ts';

type RoomField = 'receivingVolume_m3' | 'reverberationTime_s';

interface Column {
  readonly scenario: Scenario;
  /** Absent while there is no prediction, or none can be had. */
  readonly values: FieldValues | undefined;
}

/** Folded away under the ratings: what would be measured in a building, from the size of the room below. */
@customElement('field-part')
export class FieldPart extends LitElement {
  static override styles = [
    controlStyles,
    foldStyles,
    columnTableStyles,
    css`
      .entries {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(11rem, 14rem));
        gap: var(--space-2) var(--space-4);
        align-items: start;
        margin: var(--space-2) 0 var(--space-3);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) cell!: RatingsCell;
  @property({ attribute: false }) results!: ResultsView;

  @state() private open = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('cell');
    const firstRoom = before?.id !== this.cell.id && this.cell.receivingVolume_m3 !== undefined;
    if (changed.has('cell') && firstRoom) this.open = true;
  }

  override render() {
    const { cell, open } = this;
    const isEmpty = cell.receivingVolume_m3 === undefined;
    return html`<details class=${isEmpty ? 'screen-only' : ''} ?open=${open} @toggle=${this.#onToggle}>
      <summary>As it would be measured in the building</summary>
      ${open ? this.#entries() : nothing}
      ${open && cell.receivingVolume_m3 !== undefined ? this.#table(cell.receivingVolume_m3) : nothing}
    </details>`;
  }

  #entries() {
    const { units } = this.notebook;
    const usual = `${formatQuantity(FURNISHED_ROOM_S, 'time', units)}, as furnished`;
    return html`<p class="note screen-only">
        Type the size of the room below. Levels there depend on its volume and on how long sound stays in it; the floor's
        own area comes from the stack.
      </p>
      <div class="entries">
        ${this.#entry('receivingVolume_m3', 'volume of the room below', 'volume', ROOM_LIMITS.volume_m3)}
        ${this.#entry('reverberationTime_s', 'reverberation time', 'time', ROOM_LIMITS.time_s, usual)}
      </div>`;
  }

  #entry(
    field: RoomField,
    label: string,
    quantity: 'volume' | 'time',
    { min, max }: { min: number; max: number },
    whenEmpty = '',
  ) {
    return html`<quantity-field
      optional
      .label=${label}
      .quantity=${quantity}
      .min=${min}
      .max=${max}
      .value=${this.cell[field]}
      .placeholder=${whenEmpty}
      .units=${this.notebook.units}
      @quantity-entry=${(event: QuantityEntry) => this.#set(field, label, event.value)}
      @quantity-cleared=${() => this.#set(field, label, undefined)}
    ></quantity-field>`;
  }

  #table(receivingVolume_m3: number) {
    const { notebook } = this;
    const columns = notebook.shown.map((id) => this.#column(id, receivingVolume_m3));
    const limits = new Set(columns.flatMap((c) => c.values?.limits ?? []));
    const body = html`<tbody>
      ${FIELD_VALUE_NAMES.map((value) => row(value, columns))}
    </tbody>`;
    return html`${columnTable('Values as measured in the building', columns, body)}
      ${[...limits].map((limit) => html`<p class="note">By the standard, ${limit}.</p>`)}
      <p class="caution">${flankingCaution(notebook)}</p>`;
  }

  #column(scenarioId: string, receivingVolume_m3: number): Column {
    const { notebook, cell } = this;
    const scenario = findScenario(notebook, scenarioId);
    const { prediction } = this.results.of(scenarioId, cell.stack);
    if (!prediction) return { scenario, values: undefined };
    const { length_m, width_m } = resolveStack(notebook, scenarioId, cell.stack);
    const reverberationTime_s = cell.reverberationTime_s ?? FURNISHED_ROOM_S;
    const room = { partitionArea_m2: length_m * width_m, receivingVolume_m3, reverberationTime_s };
    return { scenario, values: fieldValues(prediction, room) };
  }

  #onToggle = (event: ToggleEvent) => {
    this.open = event.newState === 'open';
  };

  /** Without a value the field goes out of the cell. */
  #set(field: RoomField, label: string, value: number | undefined): void {
    const { id } = this.cell;
    this.dispatchEvent(
      new NotebookEdit(label, (n) => {
        if (value !== undefined) return updateCell(n, id, 'ratings', { [field]: value });
        const cells = n.cells.map((c) => (c.id === id ? without(c as RatingsCell, field) : c));
        return { ...n, cells };
      }),
    );
  }
}

function without(cell: RatingsCell, field: RoomField): RatingsCell {
  const { [field]: _gone, ...rest } = cell;
  return rest as RatingsCell;
}

function row({ key, name, about }: FieldValueName, columns: readonly Column[]) {
  return html`<tr>
    <th scope="row" title=${about}>${name}</th>
    ${columns.map(({ values }) => html`<td class="number">${values ? wholeNumber(values[key]) : NO_VALUE}</td>`)}
    <td class="about">${about}</td>
  </tr>`;
}

function flankingCaution({ flanking }: Notebook): string {
  const always = 'Buildings differ by their joints and their workmanship; a measurement decides.';
  if (flanking.kind === 'none')
    return `Nothing goes around the floor in this notebook, and no building is like that: choose what the walls let through under a stack's layers. ${always}`;
  const how = flanking.kind === 'by the walls' ? 'computed wall by wall' : `a limit curve (“${flanking.kind}”)`;
  return `What goes around the floor is ${how}. ${always}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'field-part': FieldPart;
  }
}
