/** Which of the shown scenarios a cell is about: radio buttons, each with the scenario's line sample. */
import { css, html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Scenario } from '#src/notebook/types.ts';
import { scenarioSample } from './scenario-sample.ts';

export interface ScenarioChoice {
  readonly shown: readonly Scenario[];
  readonly chosen: string | undefined;
  /** Of the radio group; once per shadow root. */
  readonly name: string;
  onChange(id: string): void;
}

/** Not there while there is nothing to choose. */
export function scenarioChoice(options: ScenarioChoice): TemplateResult | typeof nothing {
  const { shown, chosen, name, onChange } = options;
  if (shown.length < 2) return nothing;
  return html`
    <fieldset class="scenario-choice screen-only">
      <legend class="visually-hidden">Scenario that is shown</legend>
      ${shown.map(
        (scenario) => html`
          <label
            ><input
              type="radio"
              name=${name}
              .value=${scenario.id}
              .checked=${live(scenario.id === chosen)}
              @change=${() => onChange(scenario.id)}
            />${scenarioSample(scenario)}<span>${scenario.name}</span></label
          >
        `,
      )}
    </fieldset>
  `;
}

export const scenarioChoiceStyles = css`
  .scenario-choice {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-1) var(--space-5);
    min-width: 0;
    margin: 0 0 var(--space-4);
    padding: 0;
    border: 0;
  }
  /* Beside the first line of the name, 1.4 em high. */
  fieldset.scenario-choice > label {
    align-items: flex-start;
  }
  .scenario-choice input {
    flex: none;
    margin-top: calc(0.7em - 0.5rem);
  }
  .scenario-choice .line-sample {
    margin-top: calc(0.7em - 6px);
  }
  .scenario-choice span {
    overflow-wrap: anywhere;
  }
`;
