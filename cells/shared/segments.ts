/** A short row of choices, one of which holds: radio buttons that look like one strip. */
import { css, html, type TemplateResult } from 'lit';

export interface Segment<T extends string> {
  readonly value: T;
  readonly label: string | TemplateResult;
}

export interface SegmentsOptions<T extends string> {
  readonly legend: string;
  readonly name: string;
  readonly segments: readonly Segment<T>[];
  readonly value: T;
  readonly onChoose: (value: T) => void;
}

export function segments<T extends string>({
  legend,
  name,
  segments,
  value,
  onChoose,
}: SegmentsOptions<T>): TemplateResult {
  return html`
    <fieldset class="segments">
      <legend class="visually-hidden">${legend}</legend>
      ${segments.map(
        (s) => html`
          <label>
            <input
              type="radio"
              class="visually-hidden"
              name=${name}
              .value=${s.value}
              .checked=${s.value === value}
              @change=${() => onChoose(s.value)}
            />
            <span>${s.label}</span>
          </label>
        `,
      )}
    </fieldset>
  `;
}

export const segmentStyles = css`
  .segments {
    display: inline-flex;
    flex-wrap: wrap;
    gap: 0 var(--space-4);
    margin: 0;
    padding: 0;
    border: 0;
    min-width: 0;
  }
  .segments label {
    position: relative;
    min-height: 1.5rem;
    cursor: pointer;
    color: var(--ink-soft);
  }
  .segments input {
    position: absolute;
    opacity: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    cursor: pointer;
    clip-path: none;
  }
  .segments span {
    display: inline-flex;
    align-items: center;
    gap: var(--space-2);
    padding: 0.15rem 0;
    border-bottom: 2px solid transparent;
    overflow-wrap: anywhere;
  }
  .segments label:hover span {
    color: var(--ink);
    border-bottom-color: var(--hairline-strong);
  }
  .segments input:checked + span {
    color: var(--ink);
    border-bottom-color: var(--accent);
  }
  .segments input:focus-visible + span {
    outline: 2px solid var(--focus);
    outline-offset: 2px;
  }
`;
