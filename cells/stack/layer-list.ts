import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { grownText, grownTextStyles } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';
import '#cells/shared/pop-menu.ts';
import { DECLARED_UNDER_kg_m2 } from '#src/acoustics/mat-under-load.ts';
import { renameStack } from '#src/notebook/edits/edit-stacks.ts';
import { renameLayer } from '#src/notebook/edits/rename-layer.ts';
import { setMatSource } from '#src/notebook/edits/set-mat-source.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { fillName } from '#src/notebook/field-specs.ts';
import { fillPath, fillsOf } from '#src/notebook/fill-places.ts';
import { findScenario, findStack } from '#src/notebook/find.ts';
import { presenceByScenario } from '#src/notebook/layer-presence.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { OPTIONAL_CAVITY_FIELDS } from '#src/notebook/optional-cavity-fields.ts';
import type { CavityLayer, Layer, LeafLayer, MatLayer, Notebook, Stack } from '#src/notebook/types.ts';
import { fieldsOfSupport } from '#src/notebook/usual-support.ts';
import { fieldValue, type Values, valuesOf } from '#src/notebook/values.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { fillCutOff } from './fill-cut-off.ts';
import { HELD_AT_EDGES, isLayerHeldAtEdges } from './held-at-edges.ts';
import { moveFillEdit, moveLayerTo, moveSheetEdit, putLayerInto } from './layer-edits.ts';
import { layerListStyles } from './layer-list-styles.ts';
import { addMenu, interlayerMenu, matMenu, nextFill, stackMenu } from './layer-menus.ts';
import { fillRemoval, layerRemoval, type RemovalFrom, sheetRemoval } from './layer-removal.ts';
import { knownMat } from './material-source.ts';
import { isIn, othersWith, type Presence } from './presence.ts';
import { hasReach, type Reach, reachChoice, usualReach } from './reach.ts';
import { moveButton, rowActions } from './row-actions.ts';
import type { Origin } from './section/section.ts';
import { LayerPoint, sameOrigin } from './section/section-drawing.ts';
import './stack-field.ts';

const DRAGGED_LAYER = 'application/x-slab-and-spring-layer';
const KINDS: Readonly<Record<Layer['kind'], string>> = { leaf: 'leaf', mat: 'between: mat', cavity: 'between: cavity' };

/** The layers of a stack as rows from the upper room down, each with its fields; rows and drawing light each other up. */
@customElement('layer-list')
export class LayerList extends LitElement {
  static override styles = [controlStyles, grownTextStyles, layerListStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property() stack = '';
  @property({ attribute: false }) lit: Origin | undefined;

  /** Index of the layer that a dragged one would change places with. */
  @state() private dropAt: number | undefined;
  /** Where the reader wants layers to be added and removed, and in which scenario that was said. */
  @state() private chosen: { readonly scenario: string; readonly reach: Reach } | undefined;
  #dragged: number | undefined;
  #presence: Presence = new Map();
  /** Field to go to once what was added is there. */
  #added: FieldPath | undefined;
  /** The new place of a row that was moved by a button, which is where the focus belongs then. */
  #moved: { readonly row: string; readonly direction: 'up' | 'down' } | undefined;

  protected override willUpdate(): void {
    this.#presence = presenceByScenario(this.notebook, this.stack);
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('notebook')) return;
    const added = this.#added;
    const moved = this.#moved;
    this.#added = undefined;
    this.#moved = undefined;
    if (moved) moveButton(this.renderRoot, moved.row, moved.direction)?.focus();
    if (added) void this.reveal(added);
  }

  override render() {
    const stack = findStack(this.notebook, this.stack);
    return html`
      <div class="floor">
        <div class="stack-name">
          <span class="note">stack</span>
          ${grownText({
            name: 'Name of the stack',
            value: stack.name,
            onChange: (name) => this.#edit('name of the stack', (n) => renameStack(n, stack.id, name)),
          })}
          <pop-menu .label=${`More for ${stack.name}`} .items=${stackMenu(this.notebook, stack, this.#send)}
            >${icon('more')}</pop-menu
          >
        </div>
        <div class="fields">${this.#fields([['length_m'], ['width_m'], ['covering']])}</div>
      </div>
      ${
        hasReach(this.notebook)
          ? html`<p class="note moves screen-only">
              Moving a layer, sheet or fill, and making a mat a cavity or the other way round, changes every scenario.
            </p>`
          : nothing
      }
      <ol aria-label="Layers from the upper room down">
        ${repeat(
          stack.layers,
          (layer) => layer.id,
          (layer, i) => this.#renderLayer(stack, layer, i),
        )}
      </ol>
    `;
  }

  /** Opens what hides a field and puts the focus in it. */
  async reveal(path: FieldPath): Promise<void> {
    await this.updateComplete;
    const field = [...this.renderRoot.querySelectorAll('stack-field')].find((f) => f.path.join('/') === path.join('/'));
    if (!field) return;
    const hidden = field.closest('details');
    if (hidden) hidden.open = true;
    await field.updateComplete;
    field.scrollIntoView({ block: 'center' });
    field.focus();
  }

  #renderLayer(stack: Stack, layer: Layer, index: number) {
    const lit = this.lit?.layer === index && this.lit.sheet === undefined;
    const classes = ['layer', layer.kind, lit ? 'lit' : '', this.dropAt === index ? 'drop' : ''].join(' ');
    return html`
      <li
        class=${classes}
        data-layer=${index}
        @pointerenter=${() => this.#point({ layer: index })}
        @pointerleave=${() => this.#point(undefined)}
        @focusin=${() => this.#point({ layer: index })}
        @dragover=${(event: DragEvent) => this.#onDragOver(event, index)}
        @drop=${(event: DragEvent) => this.#onDrop(event, stack, index)}
      >
        ${this.#renderHead(stack, layer, index)} ${this.#renderFields(layer, index)}
      </li>
    `;
  }

  #renderHead(stack: Stack, layer: Layer, index: number) {
    const { notebook } = this;
    const { name } = layer;
    const where = { notebook, stackId: stack.id, reach: this.#reach };
    const to = (place: number) =>
      stack.layers[place]
        ? () => this.#move(moveLayerTo(notebook, stack.id, layer, place), `${place}`, place < index)
        : undefined;
    const partner = layer.kind === 'leaf' ? 'leaf' : 'layer between leaves';
    const adds = layer.kind === 'leaf' || nextFill(layer) !== undefined;
    const menu = html`
      ${
        adds
          ? html`<pop-menu
              class="add"
              .label=${`Add at ${name}`}
              .head=${this.#reachChoice('What is added stands', this.#reach)}
              .items=${addMenu(where, layer, this.#add)}
              >${icon('add')} Add</pop-menu
            >`
          : nothing
      }
      ${
        layer.kind === 'leaf'
          ? nothing
          : html`<pop-menu .label=${`More for ${name}`} .items=${interlayerMenu(where, layer, this.#send)}
              >${icon('more')}</pop-menu
            >`
      }
    `;
    const removal = stack.layers.length > 1 ? layerRemoval(this.#removalFrom, layer) : undefined;
    return html`
      <div class="head">
        <span
          class="grip"
          draggable="true"
          title="Drag to change places with another ${partner}${movedIn(notebook)}"
          aria-hidden="true"
          @dragstart=${(event: DragEvent) => this.#onDragStart(event, index)}
          @dragend=${this.#onDragEnd}
          >${icon('grip')}</span
        >
        <div class="name">
          ${grownText({
            name: `Name of ${name}`,
            value: name,
            onChange: (text) => this.#edit(`name of ${name}`, (n) => renameLayer(n, stack.id, layer.id, text)),
          })}
        </div>
        <span class="note kind">${KINDS[layer.kind]}</span>
        ${rowActions({
          name,
          row: `${index}`,
          onUp: to(index - 2),
          onDown: to(index + 2),
          movedIn: movedIn(notebook),
          menu,
          removal,
        })}
      </div>
      ${this.#absence(stack, layer, index)}
    `;
  }

  /** A layer that the active scenario has not says so, and can be put in as another scenario has it. */
  #absence(stack: Stack, layer: Layer, index: number) {
    const { notebook } = this;
    const { active } = notebook;
    const isHere = (i: number) => isIn(this.#presence, active, i);
    if (isHere(index)) return nothing;
    const [like] = othersWith(this.#presence, notebook, index);
    const comesAlone = layer.kind === 'leaf' || [index - 1, index + 1].every(isHere);
    const onPut = () => this.#send(putLayerInto(notebook, stack.id, layer, like!));
    return html`<p class="note absence">
      Not in “${findScenario(notebook, active).name}”.
      ${
        like && comesAlone
          ? html`<button type="button" class="quiet" @click=${onPut}>
              Put ${layer.name} in, as in “${findScenario(notebook, like).name}”
            </button>`
          : nothing
      }
    </p>`;
  }

  get #removalFrom(): RemovalFrom {
    const { notebook } = this;
    return {
      where: { notebook, stackId: this.stack, reach: this.#reach },
      presence: this.#presence,
      ask: (label, reach) => this.#reachChoice(label, reach),
      send: this.#send,
    };
  }

  #reachChoice(label: string, reach: Reach) {
    const { notebook } = this;
    const onChange = (chosen: Reach) => {
      this.chosen = { scenario: notebook.active, reach: chosen };
    };
    return reachChoice({ notebook, reach, label, onChange });
  }

  /** What was chosen holds for the scenario it was chosen in. */
  get #reach(): Reach {
    return this.chosen?.scenario === this.notebook.active ? this.chosen.reach : usualReach(this.notebook);
  }

  #renderFields(layer: Layer, index: number) {
    switch (layer.kind) {
      case 'leaf':
        return this.#renderLeaf(layer, index);
      case 'mat':
        return this.#renderMat(layer, index);
      case 'cavity':
        return this.#renderCavity(layer, index);
    }
  }

  #renderLeaf(leaf: LeafLayer, index: number) {
    const contact = html`<div class="fields">${this.#fields([['layers', index, 'contact']])}</div>`;
    return html`
      <ul aria-label="Sheets of ${leaf.name}">
        ${leaf.sheets.map((_, k) => this.#renderSheet(leaf, index, k))}
      </ul>
      ${leaf.sheets.length > 1 ? contact : nothing}
    `;
  }

  #renderSheet(leaf: LeafLayer, index: number, k: number) {
    const origin = { layer: index, sheet: k };
    const row = (place: number) => `${index}/${place}`;
    const to = (place: number) =>
      leaf.sheets[place]
        ? () => this.#move(moveSheetEdit(this.stack, leaf, k, place), row(place), place < k)
        : undefined;
    const actions = rowActions({
      name: `sheet ${k + 1} of ${leaf.name}`,
      row: row(k),
      onUp: to(k - 1),
      onDown: to(k + 1),
      movedIn: movedIn(this.notebook),
      removal: sheetRemoval(this.#removalFrom, leaf, k),
    });
    return html`
      <li
        class="sheet ${sameOrigin(this.lit, origin) ? 'lit' : ''}"
        @pointerenter=${() => this.#point(origin)}
        @pointerleave=${() => this.#point({ layer: index })}
        @focusin=${(event: Event) => {
          event.stopPropagation();
          this.#point(origin);
        }}
      >
        <div class="fields">
          ${this.#fields(['material', 'thickness_m', 'density_kg_m3'].map((f) => ['layers', index, 'sheets', k, f]))}
        </div>
        ${leaf.sheets.length > 1 ? actions : html`<div class="actions"></div>`}
      </li>
    `;
  }

  #renderMat(mat: MatLayer, index: number) {
    const known = knownMat(mat);
    return html`
      <div class="fields">
        ${this.#fields(['thickness_m', 'dynamicStiffness_N_m3', 'lossFactor'].map((f) => ['layers', index, f]))}
        ${known && !mat.source ? nothing : this.#renderMatSource(mat)}
      </div>
      <div class="product note">
        <pop-menu .label=${`Take a known mat for ${mat.name}`} .items=${matMenu(this.stack, index, this.#send)}
          >Take a known mat</pop-menu
        >
        ${known ? html`<span>${known.name}. ${known.source}</span>` : nothing}
      </div>
      <p class="note">
        Stiffness as declared, under ${formatQuantity(DECLARED_UNDER_kg_m2, 'surface-mass', this.notebook.units)}.
        Under a lighter floor the mat is softer, by the cube root of what it carries; this is computed.
      </p>
    `;
  }

  /** In words, for every scenario; it may be left open, and is then printed as not stated. */
  #renderMatSource({ id, name, source = '' }: MatLayer) {
    const take = (input: HTMLInputElement) => {
      const text = input.value.trim();
      if (text !== source) this.#edit(`source of ${name}`, (n) => setMatSource(n, this.stack, id, text));
    };
    return html`<div class="field mat-source">
      <label for="source-${id}">where its numbers come from</label>
      <input
        id="source-${id}"
        maxlength=${LIMITS.source}
        placeholder="not stated"
        .value=${live(source)}
        @change=${(event: Event) => take(event.target as HTMLInputElement)}
      />
    </div>`;
  }

  #renderCavity(cavity: CavityLayer, index: number) {
    const values = valuesOf(this.notebook, this.notebook.active);
    const read = fieldsOfSupport(fieldValue(cavity.joists, values), fieldValue(cavity.support, values));
    const offered = OPTIONAL_CAVITY_FIELDS.filter((name) => read.has(name) || cavity[name] !== undefined);
    const at = (name: string): FieldPath => ['layers', index, name];
    const several = fillsOf(cavity).length > 1;
    return html`
      <div class="fields">
        ${this.#fields(['joists', 'depth_m', 'joistWidth_m', 'joistSpacing_m'].map(at))}
        ${this.#field(at('support'), isLayerHeldAtEdges(cavity, values) ? HELD_AT_EDGES : undefined)}
        ${several ? nothing : this.#fields(['fill', 'fillThickness_m'].map(at))}
      </div>
      ${several ? this.#renderFills(cavity, index, values) : nothing}
      <details>
        <summary>More about the support</summary>
        <div class="fields">
          ${offered.map((name) =>
            this.#field(at(name), read.has(name) ? undefined : 'Not used by this kind of support.'),
          )}
        </div>
        <p class="note">
          An empty field means what is usual for the kind of support.
          ${
            read.has('supportStiffness_N_m')
              ? html`Stiffness is that of one support (a crossing of channel and joist, a clip, a hanger) at audio
                  frequencies, which is higher than what a weight hung from it shows: a static value would make the ceiling
                  look softer than it is.`
              : nothing
          }
        </p>
      </details>
    `;
  }

  /** Several fills stand as rows, the upper one first, as they lie. */
  #renderFills(cavity: CavityLayer, index: number, values: Values) {
    const places = [...fillsOf(cavity).keys()].toReversed();
    return html`
      <ul aria-label="Fills of ${cavity.name} from the upper one down">
        ${places.map((place) => this.#renderFill(cavity, index, place, values))}
      </ul>
      <p class="note">The first fill lies on the leaf below, every further one on the one before.</p>
    `;
  }

  #renderFill(cavity: CavityLayer, index: number, place: number, values: Values) {
    const row = (at: number) => `${index}/${at}`;
    const to = (at: number) =>
      fillsOf(cavity)[at]
        ? () => this.#move(moveFillEdit(this.stack, cavity, place, at), row(at), at > place)
        : undefined;
    return html`<li class="sheet">
      <div class="fields">
        ${this.#field(fillPath(index, place, 'fill'))}
        ${this.#field(fillPath(index, place, 'fillThickness_m'), fillCutOff(this.notebook, cavity, place, values))}
      </div>
      ${rowActions({
        name: `${fillName(place)} of ${cavity.name}`,
        row: row(place),
        onUp: to(place + 1),
        onDown: to(place - 1),
        movedIn: movedIn(this.notebook),
        removal: fillRemoval(this.#removalFrom, cavity, place),
      })}
    </li>`;
  }

  #fields(paths: readonly FieldPath[]): readonly TemplateResult[] {
    return paths.map((path) => this.#field(path));
  }

  #field(path: FieldPath, remark?: string): TemplateResult {
    return html`<stack-field
      class=${String(path.at(-1))}
      .notebook=${this.notebook}
      .stack=${this.stack}
      .path=${path}
      .remark=${remark}
    ></stack-field>`;
  }

  #point(origin: Origin | undefined): void {
    this.dispatchEvent(new LayerPoint(origin));
  }

  #edit(label: string, edit: (notebook: Notebook) => Notebook): void {
    this.#send(new NotebookEdit(label, edit));
  }

  #send = (edit: NotebookEdit | undefined): void => {
    if (edit) this.dispatchEvent(edit);
  };

  #move(edit: NotebookEdit | undefined, row: string, isUp: boolean): void {
    this.#moved = { row, direction: isUp ? 'up' : 'down' };
    this.#send(edit);
  }

  /** What is new is of the most usual material: the choice of it is taken to at once. */
  #add = (edit: NotebookEdit, material: FieldPath): void => {
    this.#added = material;
    this.#send(edit);
  };

  #onDragStart(event: DragEvent, index: number): void {
    this.#dragged = index;
    event.dataTransfer?.setData(DRAGGED_LAYER, String(index));
    if (event.dataTransfer) event.dataTransfer.effectAllowed = 'move';
  }

  /** Leaves change places with leaves, what lies between them with what lies between others. */
  #onDragOver(event: DragEvent, index: number): void {
    if (this.#dragged === undefined || (this.#dragged - index) % 2 !== 0) return;
    event.preventDefault();
    event.stopPropagation();
    this.dropAt = index;
  }

  #onDrop(event: DragEvent, stack: Stack, index: number): void {
    const layer = this.#dragged === undefined ? undefined : stack.layers[this.#dragged];
    if (!layer) return;
    event.preventDefault();
    event.stopPropagation();
    this.#send(moveLayerTo(this.notebook, stack.id, layer, index));
    this.#onDragEnd();
  }

  #onDragEnd = () => {
    this.#dragged = undefined;
    this.dropAt = undefined;
  };
}

/** The order of layers and sheets is the same in every scenario: what can differ is whether one is there. */
function movedIn(notebook: Notebook): string {
  return hasReach(notebook) ? ' in every scenario' : '';
}

declare global {
  interface HTMLElementTagNameMap {
    'layer-list': LayerList;
  }
}
