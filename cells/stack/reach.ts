/** Which scenarios a layer is added to or taken out of: the one that is worked in, or every one. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { findScenario } from '#src/notebook/find.ts';
import type { Notebook } from '#src/notebook/types.ts';

export type Reach = 'this' | 'every';

export function hasReach({ scenarios }: Notebook): boolean {
  return scenarios.length > 1;
}

/**
 * What is done to the reference is taken to be meant for the floor that all scenarios share; in any other scenario it is
 * a change against the reference, and must count as one.
 */
export function usualReach(notebook: Notebook): Reach {
  return hasReach(notebook) && notebook.active !== notebook.reference ? 'this' : 'every';
}

export interface ReachChoice {
  readonly notebook: Notebook;
  readonly reach: Reach;
  /** Of the radio group: "Where it is added". */
  readonly label: string;
  onChange(reach: Reach): void;
}

/** Not there while there is only one scenario. */
export function reachChoice({ notebook, reach, label, onChange }: ReachChoice): TemplateResult | typeof nothing {
  if (!hasReach(notebook)) return nothing;
  const { name } = findScenario(notebook, notebook.active);
  const choice = (value: Reach, words: string) => html`<label
    ><input
      type="radio"
      name="reach"
      .value=${value}
      .checked=${live(value === reach)}
      @change=${() => onChange(value)}
    /><span>${words}</span></label
  >`;
  return html`<fieldset>
    <legend>${label}</legend>
    ${choice('this', `in “${name}” only`)}
    ${reach === 'this' ? html`<p>${forksSaid(notebook, name)}</p>` : nothing} ${choice('every', 'in every scenario')}
  </fieldset>`;
}

/** A scenario that is forked later inherits what its parent has by then; those that were there keep their floor. */
function forksSaid({ scenarios, active }: Notebook, name: string): string {
  const hasForks = scenarios.some(({ parent }) => parent === active);
  const there = hasForks ? 'The forks that it has already stay as they are. ' : '';
  return `${there}Whatever is forked from “${name}” later starts like it.`;
}
