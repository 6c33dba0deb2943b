import { html, LitElement } from 'lit';
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
import type { Notebook, Stack, StackLeak } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';
import '../stack-field.ts';
import { namedRow } from './named-row.ts';
import { surroundingsStyles } from './surroundings-styles.ts';

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
        <button type="button" @click=${() => this.#add(newHole(stack))}>${icon('add')} Add a hole</button>
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
      </li>
    `;
  }

  #add(leak: StackLeak): void {
    this.#edit(`add ${leak.name}`, (n) => addLeak(n, this.stack, leak));
  }

  #edit(label: string, edit: (notebook: Notebook) => Notebook): void {
    this.dispatchEvent(new NotebookEdit(label, edit));
  }
}

/** A crack along one side of the floor, a millimetre wide. */
function newSlit(notebook: Notebook, stack: Stack): StackLeak {
  const length_m = fieldValue(stack.length_m, valuesOf(notebook, notebook.active));
  return { kind: 'slit', id: freshLeakId(stack), name: 'gap at the wall', width_m: 0.001, length_m, depth_m: 0.1 };
}

function newHole(stack: Stack): StackLeak {
  return { kind: 'hole', id: freshLeakId(stack), name: 'pipe penetration', diameter_m: 0.02, depth_m: 0.3 };
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
