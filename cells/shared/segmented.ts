/** A few choices side by side, one taken: radio buttons that look like one strip. */
import { css, html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Choice } from '#src/notebook/types.ts';

export const segmentedStyles = css`
  fieldset.segmented {
    display: inline-flex;
    flex-wrap: wrap;
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .segmented label {
    position: relative;
    display: inline-flex;
    align-items: center;
    min-height: 1.875rem;
    margin: 0 -1px -1px 0;
    padding: 0 var(--space-3);
    border: 1px solid var(--hairline);
    color: var(--ink-soft);
    cursor: pointer;
  }
  .segmented input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    opacity: 0;
    cursor: inherit;
  }
  .segmented label:hover {
    color: var(--ink);
    background: var(--paper-sunk);
  }
  .segmented label:has(:checked) {
    z-index: 1;
    border-color: var(--hairline-strong);
    background: var(--paper-raised);
    box-shadow: inset 0 -2px 0 var(--ink);
    color: var(--ink);
  }
  .segmented label:has(:focus-visible) {
    z-index: 2;
    outline: 2px solid var(--focus);
    outline-offset: 2px;
  }
  .segmented label:has(:disabled) {
    cursor: default;
  }
  @media (forced-colors: active) {
    .segmented label:has(:checked) {
      forced-color-adjust: none;
      border-color: Highlight;
      background: Highlight;
      color: HighlightText;
    }
  }
`;

export interface Segmented {
  /** Accessible name of the group. */
  readonly label: string;
  /** Shared by the radio buttons of one group; once per shadow root. */
  readonly name: string;
  readonly choices: readonly Choice[];
  readonly value: string;
  readonly disabled?: boolean;
  onChange(value: string): void;
}

export function segmented({ label, name, choices, value, disabled = false, onChange }: Segmented): TemplateResult {
  return html`<fieldset class="segmented" ?disabled=${disabled}>
    <legend class="visually-hidden">${label}</legend>
    ${choices.map(
      (choice) => html`<label
        ><input
          type="radio"
          name=${name}
          .value=${choice.value}
          .checked=${live(choice.value === value)}
          @change=${() => onChange(choice.value)}
        />${choice.label}</label
      >`,
    )}
  </fieldset>`;
}
