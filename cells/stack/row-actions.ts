import { html, nothing, type TemplateResult } from 'lit';
import { icon } from '#cells/shared/icons.ts';

export interface RowActions {
  /** What the row is called: "ceiling", "sheet 2 of ceiling". */
  readonly name: string;
  /** Undefined where the row is at the end already. */
  readonly onUp: (() => void) | undefined;
  readonly onDown: (() => void) | undefined;
  readonly onRemove: (() => void) | undefined;
  readonly menu?: TemplateResult;
}

/** The buttons of a row: move, more, remove. */
export function rowActions({ name, onUp, onDown, onRemove, menu }: RowActions): TemplateResult {
  return html`
    <div class="actions" role="group" aria-label="Actions for ${name}">
      ${action('Move', 'up', name, onUp)} ${action('Move', 'down', name, onDown)} ${menu ?? nothing}
      ${action('Remove', 'remove', name, onRemove)}
    </div>
  `;
}

function action(verb: string, sign: 'up' | 'down' | 'remove', name: string, onClick: (() => void) | undefined) {
  const where = sign === 'remove' ? '' : ` ${sign}`;
  return html`
    <button
      type="button"
      class="quiet icon"
      aria-label="${verb} ${name}${where}"
      title="${verb}${where}"
      ?disabled=${!onClick}
      @click=${onClick}
    >
      ${icon(sign)}
    </button>
  `;
}
