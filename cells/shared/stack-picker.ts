import { html, nothing, type TemplateResult } from 'lit';
import type { Notebook } from '#src/notebook/types.ts';

/** Which stack a cell shows. Not there while the notebook has only the one that is shown. */
export function stackPicker(
  notebook: Notebook,
  stackId: string,
  onChoose: (stackId: string) => void,
): TemplateResult | typeof nothing {
  const known = notebook.stacks.some((s) => s.id === stackId);
  if (known && notebook.stacks.length === 1) return nothing;
  return html`
    <label class="stack-picker note">
      Stack
      <select @change=${(event: Event) => onChoose((event.currentTarget as HTMLSelectElement).value)}>
        ${known ? nothing : html`<option value="" selected disabled>the stack is gone: choose another</option>`}
        ${notebook.stacks.map(({ id, name }) => html`<option value=${id} ?selected=${id === stackId}>${name}</option>`)}
      </select>
    </label>
  `;
}
