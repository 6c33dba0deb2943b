import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controlStyles } from '#cells/shared/controls.ts';
import type { Notebook } from '#src/notebook/types.ts';
import './flanking-choice.ts';
import './leak-rows.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { surroundingsStyles } from './surroundings-styles.ts';

/** The ways past the floor: around by the walls, and through gaps. */
@customElement('stack-surroundings')
export class StackSurroundings extends LitElement {
  static override styles = [
    controlStyles,
    surroundingsStyles,
    css`
      h3 {
        margin: var(--space-4) 0 var(--space-2);
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property() stack = '';

  override render() {
    const { notebook, stack } = this;
    return html`
      <h3>Around the floor</h3>
      <flanking-choice .notebook=${notebook} .stack=${stack}></flanking-choice>
      <h3>Through gaps and penetrations</h3>
      <p class="note">
        Air paths straight through this stack, empty all the way. One that is sealed in one scenario only has width 0
        there. A new one goes through the whole floor as it is in the active scenario. Air that rubs along its walls is
        counted: a crack of a tenth of a millimetre through a whole floor hardly matters, one of a millimetre may rule it.
      </p>
      <leak-rows .notebook=${notebook} .stack=${stack}></leak-rows>
      <p class="caution">
        What lets sound through lets smoke and fire through. Closing a penetration for sound is not fire stopping: a
        fire-rated floor needs a system that is tested for it. Before anyone opens or fills a floor: wiring, gas and
        water, and in old buildings asbestos and lead. Local codes and licensed practice decide.
      </p>
    `;
  }

  /** Puts the focus on what is chosen to go around. */
  async show(): Promise<void> {
    await this.updateComplete;
    const choice = this.renderRoot.querySelector('flanking-choice');
    await choice?.updateComplete;
    choice?.scrollIntoView({ block: 'nearest' });
    choice?.renderRoot.querySelector<HTMLElement>(':checked')?.focus();
  }

  /** Puts the focus in a field of a leak. */
  async reveal(path: FieldPath): Promise<void> {
    await this.updateComplete;
    const rows = this.renderRoot.querySelector('leak-rows');
    await rows?.updateComplete;
    const fields = [...(rows?.renderRoot.querySelectorAll('stack-field') ?? [])];
    const field = fields.find((f) => f.path.join('/') === path.join('/'));
    await field?.updateComplete;
    field?.scrollIntoView({ block: 'center' });
    field?.focus();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'stack-surroundings': StackSurroundings;
  }
}
