import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { grownTextStyles } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';
import { addLeak, removeLeak, renameLeak } from '#src/notebook/edits/edit-leaks.ts';
import { LEAK_FIELDS } from '#src/notebook/field-specs.ts';
import { findStack } from '#src/notebook/find.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, Stack, StackLeak } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { sectionHeight_m } from '../section/section-of.ts';
import '../stack-field.ts';
import { namedRow } from './named-row.ts';
import { surroundingsStyles } from './surroundings-styles.ts';

const A_MILLIMETRE = 0.001;

/** Slits and holes of a stack as rows of fields. */
@customElement('leak-rows')
export class LeakRows extends LitElement {
  static override styles = [controlStyles, grownTextStyles, surroundingsStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property() stack = '';

  override render() {
    const stack = findStack(this.notebook, this.stack);
    return html`
      <ul aria-label="Gaps and penetrations">
        ${repeat(
          stack.leaks ?? [],
          (leak) => leak.id,
          (leak, i) => this.#renderLeak(leak, i),
        )}
      </ul>
      <div class="add">
        <button type="button" @click=${() => this.#add(newSlit(this.notebook, stack))}>
          ${icon('add')} Add a slit
        </button>
        <button type="button" @click=${() => this.#add(newHole(this.notebook, stack))}>${icon('add')} Add a hole</button>
      </div>
    `;
  }

  #renderLeak(leak: StackLeak, index: number) {
    const { id, name, kind } = leak;
    const { stack, notebook } = this;
    return html`
      <li>
        ${namedRow({
          name,
          kind: kind === 'slit' ? 'slit' : 'round hole',
          onRename: (text) => this.#edit(`name of ${name}`, (n) => renameLeak(n, stack, id, text)),
          onRemove: () => this.#edit(`remove ${name}`, (n) => removeLeak(n, stack, id)),
        })}
        <div class="fields">
          ${Object.keys(LEAK_FIELDS[kind]).map(
            (field) => html`<stack-field
              .notebook=${notebook}
              .stack=${stack}
              .path=${['leaks', index, field]}
            ></stack-field>`,
          )}
        </div>
        ${this.#renderHeight(leak)}
      </li>
    `;
  }

  /** The depth of a leak is a number of its own, which does not follow the floor. */
  #renderHeight(leak: StackLeak) {
    const { notebook } = this;
    const height_m = floorHeight_m(notebook, this.stack);
    const depth_m = fieldValue(leak.depth_m, valuesOf(notebook, notebook.active));
    if (!(height_m > 0) || Math.abs(depth_m - height_m) < A_MILLIMETRE) return nothing;
    const height = formatQuantity(height_m, 'length', notebook.units);
    const depth = formatQuantity(depth_m, 'length', notebook.units);
    return html`<p class="note">
      Its depth, ${depth}, does not follow the floor, which is ${height} high in this scenario.
    </p>`;
  }

  #add(leak: StackLeak): void {
    this.#edit(`add ${leak.name}`, (n) => addLeak(n, this.stack, leak));
  }

  #edit(label: string, edit: (notebook: Notebook) => Notebook): void {
    this.dispatchEvent(new NotebookEdit(label, edit));
  }
}

/** A crack along one side of the floor, a millimetre wide, from top to bottom. */
function newSlit(notebook: Notebook, stack: Stack): StackLeak {
  const length_m = fieldValue(stack.length_m, valuesOf(notebook, notebook.active));
  const depth_m = wholeDepth_m(notebook, stack);
  return { kind: 'slit', id: freshLeakId(stack), name: 'gap at the wall', width_m: 0.001, length_m, depth_m };
}

function newHole(notebook: Notebook, stack: Stack): StackLeak {
  const depth_m = wholeDepth_m(notebook, stack);
  return { kind: 'hole', id: freshLeakId(stack), name: 'pipe penetration', diameter_m: 0.02, depth_m };
}

/** Through the whole floor as it is in the active scenario, to the millimetre. */
function wholeDepth_m(notebook: Notebook, { id }: Stack): number {
  const { min, max } = LEAK_FIELDS.hole.depth_m;
  const depth_m = Math.round(floorHeight_m(notebook, id) / A_MILLIMETRE) / 1000;
  return Math.min(Math.max(depth_m, min), max);
}

/** In the active scenario; 0 where nothing is left of it. */
function floorHeight_m(notebook: Notebook, stackId: string): number {
  return sectionHeight_m(resolveStack(notebook, notebook.active, stackId));
}

function freshLeakId({ leaks = [] }: Stack): string {
  return freshId(
    Math.random,
    leaks.map((leak) => leak.id),
  );
}

declare global {
  interface HTMLElementTagNameMap {
    'leak-rows': LeakRows;
  }
}
