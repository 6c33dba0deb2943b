import { html, nothing, type TemplateResult } from 'lit';
import { icon } from '#cells/shared/icons.ts';
import '#cells/shared/pop-menu.ts';
import type { MenuItem } from '#cells/shared/pop-menu.ts';

export interface RowActions {
  /** What the row is called: "ceiling", "sheet 2 of ceiling". */
  readonly name: string;
  /** Tells the rows of a list apart, by their places. */
  readonly row: string;
  /** Undefined where the row is at the end already. */
  readonly onUp: (() => void) | undefined;
  readonly onDown: (() => void) | undefined;
  /** What a move changes besides this scenario, in words: " in every scenario"; '' where there is only one. */
  readonly movedIn: string;
  readonly menu?: TemplateResult;
  readonly removal: Removal | undefined;
}

/** How a row is removed: at once, or from a menu where there is something to know or to choose before. */
export interface Removal {
  readonly asksFirst: boolean;
  readonly head: TemplateResult;
  readonly item: MenuItem;
}

/** The buttons of a row: move, more, remove. */
export function rowActions({ name, row, onUp, onDown, movedIn, menu, removal }: RowActions): TemplateResult {
  return html`
    <div class="actions" data-row=${row} role="group" aria-label="Actions for ${name}">
      ${action('Move', 'up', name, onUp, ` up${movedIn}`)} ${action('Move', 'down', name, onDown, ` down${movedIn}`)}
      ${menu ?? nothing}
      ${removalAction(name, removal)}
    </div>
  `;
}

/** Where the focus goes once a row was moved: to the same button of its new place, or the other one at the end. */
export function moveButton(root: ParentNode, row: string, direction: 'up' | 'down'): HTMLButtonElement | undefined {
  const buttons = [...root.querySelectorAll<HTMLButtonElement>(`[data-row="${row}"] > button`)].slice(0, 2);
  const wanted = direction === 'up' ? buttons : buttons.toReversed();
  return wanted.find((button) => !button.disabled);
}

function removalAction(name: string, removal: Removal | undefined): TemplateResult {
  return removal?.asksFirst
    ? html`<pop-menu .label=${`Remove ${name}`} .head=${removal.head} .items=${[removal.item]}
        >${icon('remove')}</pop-menu
      >`
    : action('Remove', 'remove', name, removal && (() => removal.item.choose()));
}

function action(
  verb: string,
  sign: 'up' | 'down' | 'remove',
  name: string,
  onClick: (() => void) | undefined,
  where = '',
) {
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
