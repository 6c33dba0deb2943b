/** Mass, height and what they add to the reference scenario, as a table with its cautions. */
import { html, nothing, type TemplateResult } from 'lit';
import { massText } from '#cells/shared/number-words.ts';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity, NO_VALUE } from '#src/quantities/format-quantity.ts';
import type { StackColumn } from './stack-columns.ts';

export interface TotalsOptions {
  readonly columns: readonly StackColumn[];
  readonly reference: Prediction | undefined;
  readonly referenceId: string;
  readonly units: UnitSystem;
  /** On what the masses leave out. */
  readonly caution: string | undefined;
}

export function stackTotals({ columns, reference, referenceId, units, caution }: TotalsOptions): TemplateResult {
  const mass = (value: number) => massText(value, units);
  const height = (value: number) => formatQuantity(value, 'length', units);
  return html`
    <div class="scroll totals" tabindex="0" role="region" aria-label="Mass and height" ${fadeWhereMore()}>
      <table>
        <thead>
          <tr>
            <th scope="col"><span class="visually-hidden">Scenario</span></th>
            <th scope="col" class="number">mass</th>
            <th scope="col" class="number">added</th>
            <th scope="col" class="number">height</th>
            <th scope="col" class="number">added</th>
            <th scope="col" class="number">lowest f0</th>
          </tr>
        </thead>
        <tbody>
          ${columns.map(({ scenario, result: { prediction, state } }) => {
            const added = (now: number | undefined, before: number | undefined) =>
              scenario.id === referenceId || now === undefined || before === undefined ? undefined : now - before;
            const known = (value: number | undefined, text: (value: number) => string) =>
              value === undefined ? (state === 'computing' ? '…' : NO_VALUE) : text(value);
            return html`
              <tr class="awaited" aria-busy=${state === 'computing'}>
                <th scope="row">
                  <span class="who">${scenarioSample(scenario)}<span>${scenario.name}</span></span>
                </th>
                <td class="number">${known(prediction?.surfaceMass_kg_m2, mass)}</td>
                <td class="number">
                  ${
                    scenario.id === referenceId
                      ? html`<span class="note">reference</span>`
                      : known(added(prediction?.surfaceMass_kg_m2, reference?.surfaceMass_kg_m2), signed(mass))
                  }
                </td>
                <td class="number">${known(prediction?.height_m, height)}</td>
                <td class="number">
                  ${
                    scenario.id === referenceId
                      ? nothing
                      : known(added(prediction?.height_m, reference?.height_m), signed(height))
                  }
                </td>
                <td class="number">${known(prediction && lowestBounce_Hz(prediction), hertzText)}</td>
              </tr>
            `;
          })}
        </tbody>
      </table>
    </div>
    <p class="note narrow screen-only">The table scrolls sideways.</p>
    <p class="caution">
      “Mass” counts leaves, covering, fill and the floor's joists. “Added” is what a scenario has over the reference; a layer that the reference has too counts in the mass alone,
      even if it is still to be built. Added mass is load that the floor must carry for good: a structural engineer
      must check it before anything is built. ${caution === undefined ? '' : `${caution} `}Wet concrete weighs more than dry, and timber and concrete creep: under a lasting
      load they go on bending for years. Fire rating and fire stopping follow local codes. Before anyone cuts into a
      ceiling: wiring, gas, and in old buildings asbestos and lead. Local codes and licensed practice decide.
    </p>
  `;
}

/** Masses and heights of two scenarios that differ by rounding only differ by nothing. */
function signed(text: (value: number) => string): (value: number) => string {
  return (value) => (Math.abs(value) < 1e-6 ? 'nothing' : value > 0 ? `+${text(value)}` : text(value));
}

/** NaN where nothing bounces. */
function lowestBounce_Hz({ resonances_Hz }: Prediction): number {
  const bounces = resonances_Hz.filter((r) => r.kind === 'mass-spring-mass' || r.kind === 'floating');
  return bounces.length ? Math.min(...bounces.map((r) => r.frequency_Hz)) : NaN;
}
