import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { grownTextStyles } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';
import '#cells/shared/quantity-field.ts';
import type { QuantityEntry } from '#cells/shared/quantity-field.ts';
import { addWall, removeWall, updateWall } from '#src/notebook/edits/edit-walls.ts';
import type { Choice, FlankingWall, Notebook, WallJunctionKind, WallMaterial } from '#src/notebook/types.ts';
import { JUNCTION_LABELS, WALL_FIELDS, type WallField } from '#src/notebook/wall-fields.ts';
import { WALL_MATERIALS } from '#src/notebook/wall-materials.ts';
import { namedRow } from './named-row.ts';
import { oneMoreWall } from './new-wall.ts';
import { surroundingsStyles } from './surroundings-styles.ts';
import { massAndRating, wallInWords } from './wall-words.ts';

const RATED = 'rated';
const MADE_OF: readonly Choice[] = [
  ...Object.entries(WALL_MATERIALS).map(([value, { label }]) => ({ value, label })),
  { value: RATED, label: 'another wall, by its mass and Rw' },
];
const JUNCTIONS: readonly Choice[] = Object.entries(JUNCTION_LABELS).map(([value, label]) => ({ value, label }));

const JOISTS_WORDS =
  '“Joists against a heavy wall” is meant for walls that go on through and have more than three times the mass of the floor.';

/** What a wall is given when its kind changes and nothing is known of it yet. */
const NEW_THICKNESS_M = 0.24;

/** The walls beside the floor as rows of fields. */
@customElement('wall-rows')
export class WallRows extends LitElement {
  static override styles = [controlStyles, grownTextStyles, surroundingsStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property() stack = '';

  override render() {
    const walls = this.notebook.flanking.walls ?? [];
    return html`
      ${walls.length === 0 ? html`<p class="note">No wall is described: nothing goes around the floor.</p>` : nothing}
      ${walls.some((wall) => wall.junction === 'joists') ? html`<p class="note">${JOISTS_WORDS}</p>` : nothing}
      <ul aria-label="Walls beside the floor">
        ${repeat(
          walls,
          (wall) => wall.id,
          (wall) => this.#renderWall(wall),
        )}
      </ul>
      <div class="add"><button type="button" @click=${this.#onAdd}>${icon('add')} Add a wall</button></div>
    `;
  }

  #renderWall(wall: FlankingWall) {
    const { id, name, junction } = wall;
    const fields: readonly WallField[] = [
      ...(wall.kind === 'rated' ? (['surfaceMass_kg_m2', 'Rw_dB'] as const) : (['thickness_m'] as const)),
      'junctionLength_m',
      'height_m',
      ...(junction === 'measured' ? (['straightK_dB', 'cornerK_dB'] as const) : []),
    ];
    return html`
      <li>
        ${namedRow({
          name,
          kind: wallInWords(wall, this.notebook.units),
          onRename: (text) => this.#change(wall, `name of ${name}`, { ...wall, name: text }),
          onRemove: () => this.dispatchEvent(new NotebookEdit(`remove ${name}`, (n) => removeWall(n, id))),
        })}
        <div class="fields" role="group" aria-label=${name}>
          ${this.#select(wall, 'made of', MADE_OF, wall.kind === 'rated' ? RATED : wall.material, (value) =>
            madeOf(wall, value),
          )}
          ${fields.map((field) => this.#field(wall, field))}
          ${this.#select(wall, 'meets the floor as', JUNCTIONS, junction, (value) => ({
            ...wall,
            junction: value as WallJunctionKind,
          }))}
        </div>
      </li>
    `;
  }

  #select(
    wall: FlankingWall,
    label: string,
    choices: readonly Choice[],
    value: string,
    changed: (value: string) => FlankingWall,
  ) {
    const id = `${label.replaceAll(' ', '-')}-${wall.id}`;
    return html`<div class="field wide">
      <label for=${id}>${label}</label>
      <select
        id=${id}
        @change=${(event: Event) =>
          this.#change(wall, `${wall.name}: ${label}`, changed((event.target as HTMLSelectElement).value))}
      >
        ${choices.map(
          (choice) =>
            html`<option value=${choice.value} .selected=${live(choice.value === value)}>${choice.label}</option>`,
        )}
      </select>
    </div>`;
  }

  #field(wall: FlankingWall, field: WallField) {
    const { label, quantity, min, max } = WALL_FIELDS[field];
    return html`<quantity-field
      .label=${label}
      .quantity=${quantity}
      .min=${min}
      .max=${max}
      .value=${wall[field as keyof FlankingWall] as unknown as number}
      .units=${this.notebook.units}
      @quantity-entry=${(event: QuantityEntry) =>
        this.#change(wall, `${wall.name}: ${label}`, { ...wall, [field]: event.value })}
    ></quantity-field>`;
  }

  #change(before: FlankingWall, label: string, wall: FlankingWall): void {
    if (wall !== before) this.dispatchEvent(new NotebookEdit(label, (n) => updateWall(n, wall)));
  }

  #onAdd = () => {
    const wall = oneMoreWall(this.notebook, this.stack);
    this.dispatchEvent(new NotebookEdit('add a wall', (n) => addWall(n, wall)));
  };
}

/** The same wall of something else; mass and Rw start from what the old one had. */
function madeOf(wall: FlankingWall, value: string): FlankingWall {
  const { id, name, junctionLength_m, height_m, junction, straightK_dB, cornerK_dB } = wall;
  const common = { id, name, junctionLength_m, height_m, junction, straightK_dB, cornerK_dB };
  if (value === RATED) return { ...common, kind: 'rated', ...massAndRating(wall) };
  const thickness_m = wall.kind === 'homogeneous' ? wall.thickness_m : NEW_THICKNESS_M;
  return { ...common, kind: 'homogeneous', material: value as WallMaterial, thickness_m };
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-rows': WallRows;
  }
}
