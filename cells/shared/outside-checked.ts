/** A quiet remark on scenarios whose floor lies outside of what the engine was checked on. */
import { css, html, nothing, type TemplateResult } from 'lit';
import { type OutsideChecked, outsideChecked } from '#src/acoustics/checked-range.ts';
import { outsideCheckedReason, outsideCheckedText } from '#src/notebook/checked-words.ts';
import { findScenario } from '#src/notebook/find.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { saidOnce } from './said-once.ts';
import { scenarioSample } from './scenario-sample.ts';

export const outsideCheckedStyles = css`
  .outside {
    max-width: var(--reading-width);
    margin: 0 0 var(--space-4);
    color: var(--ink-soft);
    font-size: var(--size-small);
  }
  .outside p {
    margin: 0;
  }
  .outside ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .outside li {
    overflow-wrap: anywhere;
  }
  .outside li svg {
    vertical-align: middle;
  }
  .outside .reasons ul {
    padding-left: var(--space-4);
    list-style: disc;
  }
  .outside .on-paper {
    display: none;
  }
  @media print {
    .outside details {
      display: none;
    }
    .outside .on-paper {
      display: block;
    }
  }
`;

/** Not there where everything is inside. */
export function outsideCheckedNote(notebook: Notebook, stackId: string): TemplateResult | typeof nothing {
  const found = notebook.shown
    .map((id) => ({ scenario: findScenario(notebook, id), outside: outsideOf(notebook, id, stackId) }))
    .filter(({ outside }) => outside.length > 0);
  if (found.length === 0) return nothing;
  const text = (one: OutsideChecked) => outsideCheckedText(one, notebook.units);
  const reasons = limitReasons(found.flatMap(({ outside }) => outside));
  return html`<div class="outside" role="note" aria-label="Outside what was checked">
    <p>Outside what was checked:</p>
    <ul>
      ${saidOnce(found.map(({ scenario, outside }) => ({ scenario, remarks: outside.map(text) }))).map(
        ({ scenarios, remarks }) => html`<li>
          ${
            scenarios.length > 1 && scenarios.length === notebook.shown.length
              ? 'Every scenario that is shown'
              : scenarios.map((s, i) => html`${i > 0 ? ', ' : ''}${scenarioSample(s)} ${s.name}`)
          }: ${remarks.join('; ')}
        </li>`,
      )}
    </ul>
    <details>
      <summary>What these limits are</summary>
      <div class="reasons">${reasons}</div>
    </details>
    <div class="reasons on-paper">${reasons}</div>
  </div>`;
}

function limitReasons(outside: readonly OutsideChecked[]): TemplateResult {
  const namesRows = outside.some((one) => 'range' in one);
  return html`<p>
      The limits are what the measured walls and floors span that the engine was fitted on and judged by. Beyond them it
      computes by the same physics, but nobody has compared that with a measurement.
      ${namesRows ? 'Each of these walls and floors is a row of a table, and has a short name there, such as w4.' : nothing}
    </p>
    <ul>
      ${[...new Set(outside.map(outsideCheckedReason))].map((reason) => html`<li>${reason}</li>`)}
    </ul>`;
}

function outsideOf(notebook: Notebook, scenarioId: string, stackId: string) {
  try {
    return outsideChecked(resolveStack(notebook, scenarioId, stackId));
  } catch (error) {
    // What cannot be resolved has a message of its own.
    if (error instanceof RangeError) return [];
    throw error;
  }
}
