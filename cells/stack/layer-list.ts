import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { grownText, grownTextStyles } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';
import '#cells/shared/pop-menu.ts';
import type { MenuItem } from '#cells/shared/pop-menu.ts';
import { renameStack } from '#src/notebook/edits/edit-stacks.ts';
import { renameLayer } from '#src/notebook/edits/rename-layer.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { findStack } from '#src/notebook/find.ts';
import type { CavityLayer, Layer, LeafLayer, Notebook, Stack } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';
import {
  addCeilingBelow,
  addFloatingSlab,
  addLeafBelowOnMat,
  addSheetEdit,
  moveLayerTo,
  moveSheetEdit,
  removeLayerEdit,
  removeSheetEdit,
  turnInterlayer,
} from './layer-edits.ts';
import { layerListStyles } from './layer-list-styles.ts';
import type { Origin } from './section/section.ts';
import { LayerPoint, sameOrigin } from './section/section-drawing.ts';
import './stack-field.ts';

const DRAGGED_LAYER = 'application/x-slab-and-spring-layer';

/** The layers of a stack as rows from the upper room down, each with its fields; rows and drawing light each other up. */
@customElement('layer-list')
export class LayerList extends LitElement {
  static override styles = [controlStyles, grownTextStyles, layerListStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property() stack = '';
  @property({ attribute: false }) lit: Origin | undefined;

  /** Index of the layer that a dragged one would change places with. */
  @state() private dropAt: number | undefined;
  #dragged: number | undefined;

  override render() {
    const stack = findStack(this.notebook, this.stack);
    return html`
      <div class="floor">
        <div class="stack-name">
          <span class="note">stack</span>
          ${grownText({
            name: 'Name of the stack',
            value: stack.name,
            onChange: (name) =>
              this.#send(new NotebookEdit('name of the stack', (n) => renameStack(n, stack.id, name))),
          })}
        </div>
        <div class="fields">${this.#fields([['length_m'], ['width_m'], ['covering']])}</div>
      </div>
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
    const kinds = { leaf: 'leaf', mat: 'between: mat', cavity: 'between: cavity' };
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
        <div class="head">
          <span
            class="grip"
            draggable="true"
            title="Drag to change places with another ${layer.kind === 'leaf' ? 'leaf' : 'layer between leaves'}"
            aria-hidden="true"
            @dragstart=${(event: DragEvent) => this.#onDragStart(event, index)}
            @dragend=${this.#onDragEnd}
            >${icon('grip')}</span
          >
          <div class="name">
            ${grownText({
              name: `Name of ${layer.name}`,
              value: layer.name,
              onChange: (name) =>
                this.#send(new NotebookEdit(`name of ${layer.name}`, (n) => renameLayer(n, stack.id, layer.id, name))),
            })}
          </div>
          <span class="note kind">${kinds[layer.kind]}</span>
          ${this.#renderActions(stack, layer, index)}
        </div>
        ${layer.kind === 'leaf' ? this.#renderLeaf(layer, index) : nothing}
        ${
          layer.kind === 'mat'
            ? html`<div class="fields">
                ${this.#fields(['thickness_m', 'dynamicStiffness_N_m3', 'lossFactor'].map((f) => ['layers', index, f]))}
              </div>`
            : nothing
        }
        ${layer.kind === 'cavity' ? this.#renderCavity(layer, index) : nothing}
      </li>
    `;
  }

  #renderActions(stack: Stack, layer: Layer, index: number) {
    const { name } = layer;
    const move = (to: number) => this.#send(moveLayerTo(this.notebook, stack.id, layer, to));
    return html`
      <div class="actions" role="group" aria-label="Actions for ${name}">
        <button
          type="button"
          class="quiet icon"
          aria-label="Move ${name} up"
          title="Move up"
          ?disabled=${index < 2}
          @click=${() => move(index - 2)}
        >
          ${icon('up')}
        </button>
        <button
          type="button"
          class="quiet icon"
          aria-label="Move ${name} down"
          title="Move down"
          ?disabled=${index + 2 >= stack.layers.length}
          @click=${() => move(index + 2)}
        >
          ${icon('down')}
        </button>
        <pop-menu .label=${`More for ${name}`} .items=${this.#menu(stack, layer, index)}>${icon('more')}</pop-menu>
        <button
          type="button"
          class="quiet icon"
          aria-label="Remove ${name}"
          title="Remove"
          ?disabled=${stack.layers.length === 1}
          @click=${() => this.#send(removeLayerEdit(stack.id, layer))}
        >
          ${icon('remove')}
        </button>
      </div>
    `;
  }

  #menu(stack: Stack, layer: Layer, index: number): readonly MenuItem[] {
    const { notebook } = this;
    if (layer.kind !== 'leaf')
      return [
        {
          label: layer.kind === 'mat' ? 'Make it a cavity' : 'Make it a mat',
          choose: () => this.#send(turnInterlayer(stack.id, layer)),
        },
      ];
    const leaf = index / 2;
    return [
      { label: 'Add a sheet on top', choose: () => this.#send(addSheetEdit(stack.id, layer, 0)) },
      {
        label: 'Add a sheet underneath',
        choose: () => this.#send(addSheetEdit(stack.id, layer, layer.sheets.length)),
      },
      ...(index === 0
        ? [
            {
              label: 'Add a floating slab on a mat above',
              choose: () => this.#send(addFloatingSlab(notebook, stack.id)),
            },
          ]
        : []),
      {
        label: 'Add a ceiling below, under a cavity',
        choose: () => this.#send(addCeilingBelow(notebook, stack.id, leaf)),
      },
      {
        label: 'Add a deck below, under a mat',
        choose: () => this.#send(addLeafBelowOnMat(notebook, stack.id, leaf)),
      },
    ];
  }

  #renderLeaf(leaf: LeafLayer, index: number) {
    const count = leaf.sheets.length;
    return html`
      <ul aria-label="Sheets of ${leaf.name}">
        ${leaf.sheets.map((_, k) => {
          const origin = { layer: index, sheet: k };
          const name = count > 1 ? `sheet ${k + 1} of ${leaf.name}` : `the sheet of ${leaf.name}`;
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
                ${this.#fields(
                  ['material', 'thickness_m', 'density_kg_m3'].map((f) => ['layers', index, 'sheets', k, f]),
                )}
              </div>
              ${count > 1 ? this.#renderSheetActions(leaf, k, name) : nothing}
            </li>
          `;
        })}
      </ul>
      ${count > 1 ? html`<div class="fields">${this.#fields([['layers', index, 'contact']])}</div>` : nothing}
    `;
  }

  #renderSheetActions(leaf: LeafLayer, k: number, name: string) {
    const last = leaf.sheets.length - 1;
    return html`
      <div class="actions" role="group" aria-label="Actions for ${name}">
        <button
          type="button"
          class="quiet icon"
          aria-label="Move ${name} up"
          title="Move up"
          ?disabled=${k === 0}
          @click=${() => this.#send(moveSheetEdit(this.stack, leaf, k, k - 1))}
        >
          ${icon('up')}
        </button>
        <button
          type="button"
          class="quiet icon"
          aria-label="Move ${name} down"
          title="Move down"
          ?disabled=${k === last}
          @click=${() => this.#send(moveSheetEdit(this.stack, leaf, k, k + 1))}
        >
          ${icon('down')}
        </button>
        <button
          type="button"
          class="quiet icon"
          aria-label="Remove ${name}"
          title="Remove"
          @click=${() => this.#send(removeSheetEdit(this.stack, leaf, k))}
        >
          ${icon('remove')}
        </button>
      </div>
    `;
  }

  #renderCavity(cavity: CavityLayer, index: number) {
    const support = fieldValue(cavity.support, valuesOf(this.notebook, this.notebook.active));
    const at = (name: string): FieldPath => ['layers', index, name];
    return html`
      <div class="fields">
        ${this.#fields(['joists', 'depth_m', 'joistWidth_m', 'joistSpacing_m', 'support', 'fill', 'fillThickness_m'].map(at))}
      </div>
      <details>
        <summary>More about the support</summary>
        <div class="fields">
          ${this.#fields(
            [
              'supportLineSpacing_m',
              'supportPointSpacing_m',
              'supportHeight_m',
              'supportStiffness_N_m',
              ...(support === 'hangers' || cavity.hangerFrequency_Hz !== undefined ? ['hangerFrequency_Hz'] : []),
            ].map(at),
          )}
        </div>
        <p class="note">An empty field means what is usual for the kind of support.</p>
      </details>
    `;
  }

  #fields(paths: readonly FieldPath[]): readonly TemplateResult[] {
    return paths.map(
      (path) => html`<stack-field
        class=${String(path.at(-1))}
        .notebook=${this.notebook}
        .stack=${this.stack}
        .path=${path}
      ></stack-field>`,
    );
  }

  #point(origin: Origin | undefined): void {
    this.dispatchEvent(new LayerPoint(origin));
  }

  #send(edit: NotebookEdit | undefined): void {
    if (edit) this.dispatchEvent(edit);
  }

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

declare global {
  interface HTMLElementTagNameMap {
    'layer-list': LayerList;
  }
}
