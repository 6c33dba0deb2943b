import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type Edit, NotebookEdit } from '#cells/contract.ts';
import { controlStyles } from '#cells/shared/controls.ts';
import { grownText, grownTextStyles } from '#cells/shared/grown-text.ts';
import { icon } from '#cells/shared/icons.ts';
import { type DescribedChange, describeChanges } from '#src/notebook/describe-changes.ts';
import { duplicateScenario } from '#src/notebook/edits/duplicate-scenario.ts';
import { mergeAllChanges, mergeChange } from '#src/notebook/edits/merge-change.ts';
import { moveScenario } from '#src/notebook/edits/move-scenario.ts';
import { removeScenario } from '#src/notebook/edits/remove-scenario.ts';
import { renameScenario } from '#src/notebook/edits/rename-scenario.ts';
import { resetParameter } from '#src/notebook/edits/reset-parameter.ts';
import { setReference } from '#src/notebook/edits/set-reference.ts';
import { findParameter, findScenario } from '#src/notebook/find.ts';
import type { Notebook, Scenario } from '#src/notebook/types.ts';
import { isUsualValue } from '#src/notebook/usual-value.ts';
import { freshScenario } from './fresh-scenario.ts';
import { scenarioActionsStyles } from './scenario-actions-styles.ts';

/** What can be done with one scenario beyond forking it: name, changes one by one, reference, order, removal. */
@customElement('scenario-actions')
export class ScenarioActions extends LitElement {
  static override styles = [controlStyles, grownTextStyles, scenarioActionsStyles];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) scenario!: Scenario;

  override render() {
    const { notebook, scenario } = this;
    const { id, name } = scenario;
    const isBase = scenario.parent === null;
    const index = notebook.scenarios.indexOf(scenario);
    const changes = describeChanges(notebook, id, isUsualValue);
    return html`<div class="more" role="group" aria-label="More for ${name}">
      <div class="field">
        <label for="rename">Name</label>
        <div id="rename">
          ${grownText({
            name: `Name of the scenario ${name}`,
            value: name,
            maxLength: 80,
            onChange: (text) => this.#edit(`rename “${name}”`, (n) => renameScenario(n, id, text)),
          })}
        </div>
      </div>
      ${changes.length === 0 || isBase ? nothing : this.#changeList(scenario, changes)}
      <div class="row">
        <button
          ?disabled=${notebook.reference === id}
          @click=${() => this.#edit(`reference “${name}”`, (n) => setReference(n, id))}
        >
          Make it the reference
        </button>
        <button @click=${() => this.#duplicate()}>Duplicate, independent</button>
        <button
          ?disabled=${index < 2}
          aria-label="Move ${name} up"
          @click=${() => this.#move(index - 1)}
        >
          ${icon('up')} Up
        </button>
        <button
          ?disabled=${isBase || index === notebook.scenarios.length - 1}
          aria-label="Move ${name} down"
          @click=${() => this.#move(index + 1)}
        >
          ${icon('down')} Down
        </button>
        <button
          class="danger"
          ?disabled=${isBase}
          aria-label="Remove ${name}"
          @click=${() => this.#edit(`remove “${name}”`, (n) => removeScenario(n, id))}
        >
          ${icon('remove')} Remove
        </button>
      </div>
    </div>`;
  }

  #changeList({ id, name, parent }: Scenario, changes: readonly DescribedChange[]) {
    const parentName = findScenario(this.notebook, parent!).name;
    return html`<ul class="change-list" aria-label="What ${name} changes">
        ${changes.map(
          ({ key, text }) => html`<li>
            <span>${text}</span>
            <span class="row">
              <button
                class="quiet"
                aria-label="Merge into ${parentName}: ${this.#label(key)}"
                @click=${() =>
                  this.#edit(`merge ${this.#label(key)} into “${parentName}”`, (n) => mergeChange(n, id, key))}
              >
                Merge into ${parentName}
              </button>
              <button
                class="quiet"
                aria-label="Take back ${this.#label(key)}"
                @click=${() => this.#edit(`take back ${this.#label(key)}`, (n) => resetParameter(n, key, id))}
              >
                Take back
              </button>
            </span>
          </li>`,
        )}
      </ul>
      ${
        changes.length < 2
          ? nothing
          : html`<button
              class="quiet all"
              @click=${() => this.#edit(`merge all of “${name}” into “${parentName}”`, (n) => mergeAllChanges(n, id))}
            >
              Merge all into ${parentName}
            </button>`
      }`;
  }

  #label(key: string): string {
    return findParameter(this.notebook, key).label;
  }

  #duplicate(): void {
    const { id, name } = this.scenario;
    const created = freshScenario(this.notebook, name);
    this.#edit(`duplicate “${name}”`, (n) => duplicateScenario(n, id, created));
  }

  #move(to: number): void {
    const { id, name } = this.scenario;
    this.#edit(`move “${name}”`, (n) => moveScenario(n, id, to));
  }

  #edit(label: string, edit: Edit): void {
    this.dispatchEvent(new NotebookEdit(label, edit));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'scenario-actions': ScenarioActions;
  }
}
