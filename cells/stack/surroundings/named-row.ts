import { html, type TemplateResult } from 'lit';
import { grownText } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';

export interface NamedRow {
  readonly name: string;
  /** What it is, beside the name. */
  readonly kind: string;
  onRename(name: string): void;
  onRemove(): void;
}

/** The head of a row: a name to edit, what it is, and the way out. */
export function namedRow({ name, kind, onRename, onRemove }: NamedRow): TemplateResult {
  return html`
    <div class="head">
      <div class="name">${grownText({ name: `Name of ${name}`, value: name, onChange: onRename })}</div>
      <span class="note kind">${kind}</span>
      <button type="button" class="quiet icon" aria-label="Remove ${name}" title="Remove" @click=${onRemove}>
        ${icon('remove')}
      </button>
    </div>
  `;
}
