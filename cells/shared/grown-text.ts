/** A text field that looks like the text it holds: titles and names, edited where they stand. */
import { css, html, type TemplateResult } from 'lit';
import { hiddenFromSight } from '#src/charts/hidden-from-sight.ts';

export const grownTextStyles = css`
  textarea.grown {
    display: block;
    width: calc(100% + 2 * var(--space-2) + 2px);
    min-height: 0;
    margin: 0 calc(-1 * var(--space-2) - 1px);
    padding: 0.1em var(--space-2);
    border-color: transparent;
    background: none;
    font: inherit;
    line-height: inherit;
    field-sizing: content;
    resize: none;
    overflow: hidden;
  }
  textarea.grown:hover {
    border-color: var(--hairline);
  }
  textarea.grown:focus {
    border-color: var(--hairline-strong);
    background: var(--paper-raised);
  }
  .seen-title {
    font-family: var(--text);
    font-weight: 600;
    line-height: 1.25;
  }
  @media screen {
    .spoken-title {
      ${hiddenFromSight}
    }
  }
  @media print {
    .seen-title {
      display: none;
    }
  }
`;

export interface GrownText {
  readonly name: string;
  readonly value: string;
  readonly maxLength?: number;
  onChange(value: string): void;
}

/** A heading to edit: the heading itself for whoever listens or prints, the field for whoever looks. */
export function editableTitle(heading: TemplateResult, field: GrownText): TemplateResult {
  return html`<div class="spoken-title">${heading}</div>
    <div class="seen-title">${grownText(field)}</div>`;
}

/**
 * Enter and leaving take the text, Escape takes it back; a text left empty is taken back too. The field is written only
 * when the value itself changes: the page may render while somebody types.
 */
export function grownText({ name, value, maxLength = 200, onChange }: GrownText): TemplateResult {
  const take = (field: HTMLTextAreaElement) => {
    const text = field.value.replace(/\s+/g, ' ').trim();
    if (text && text !== value) onChange(text);
    else field.value = value;
  };
  return html`<textarea
    class="grown"
    rows="1"
    spellcheck="false"
    aria-label=${name}
    maxlength=${maxLength}
    .value=${value}
    @change=${(event: Event) => take(event.target as HTMLTextAreaElement)}
    @keydown=${(event: KeyboardEvent) => {
      // While an input method composes a word, its keys are its own.
      if (event.isComposing) return;
      const field = event.target as HTMLTextAreaElement;
      if (event.key === 'Escape') field.value = value;
      if (event.key === 'Enter' || event.key === 'Escape') {
        event.preventDefault();
        field.blur();
      }
    }}
  ></textarea>`;
}
