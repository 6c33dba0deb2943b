import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Prediction, Ratings, Sound } from '#src/acoustics/prediction.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import { RangeKeeper } from '#src/charts/range-keeper.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';
import { wantedRange } from '#src/charts/steady-range.ts';
import { findScenario } from '#src/notebook/find.ts';
import type { Notebook, Scenario, Stack } from '#src/notebook/types.ts';
import { NO_VALUE, unitOf } from '#src/quantities/format-quantity.ts';
import type { Result, ResultsView } from '../contract.ts';
import { controlStyles } from '../shared/controls.ts';
import { MASS_IS_LOAD } from '../shared/load-caution.ts';
import { massNumber, wholeNumber } from '../shared/number-words.ts';
import { countedWords, ratedName, ratedResult } from '../shared/rated-result.ts';
import { scenarioSample } from '../shared/scenario-sample.ts';
import { smallCurves } from './small-curves.ts';

const RATINGS = [
  { rating: 'STC', sound: 'airborne' },
  { rating: 'IIC', sound: 'impact' },
] as const satisfies readonly { rating: keyof Ratings; sound: Sound }[];
/** More scenarios than this leave a narrow page no room for the curves. */
const MOST_BESIDE_CURVES = 4;
/** More than this have no room beside each other on most pages: they scroll. */
export const MOST_ABREAST = 6;
/** Of the curves, px. */
const PICTURE = { width: 120, height: 60 };

interface Answer {
  readonly scenario: Scenario;
  readonly result: Result;
}

/** A line of numbers: its name, and what it is called where it is read out. */
interface Line {
  readonly name: string;
  readonly spoken: string;
  text(result: Result): string;
}

/**
 * What the floor says to a parameter that is moved: two ratings, the weight that they cost and the curve of every shown
 * scenario, small, at the lower edge of the window as long as the sliders are in sight.
 *
 * Nothing is read out while it changes: the page tells the ratings once they stand still (`results-announcer`).
 */
@customElement('floor-answer')
export class FloorAnswer extends LitElement {
  static override styles = [
    controlStyles,
    css`
      :host {
        padding: var(--space-2) 0;
        border-top: 1px solid var(--hairline-strong);
        background: var(--paper);
      }
      /* The same columns as the rows above it: in the first of them the picture and the names. */
      .answer {
        display: grid;
        grid-template-columns: minmax(calc(13rem - var(--space-3)), 1fr) 3rem repeat(
            var(--columns),
            minmax(3.75rem, 7.5rem)
          );
        align-items: center;
        gap: 0 var(--space-3);
      }
      .picture {
        grid-area: 1 / 1 / span 4;
        display: flex;
        align-items: end;
        gap: var(--space-2);
        min-width: 0;
      }
      svg.curves {
        display: block;
        width: 100%;
        max-width: ${PICTURE.width}px;
        height: ${PICTURE.height}px;
        border-bottom: 1px solid var(--hairline);
      }
      .name {
        grid-column: 2;
        color: var(--ink-soft);
        font-size: var(--size-small);
      }
      ul {
        display: contents;
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li,
      .sample {
        justify-self: end;
        min-width: 0;
      }
      .sample .line-sample {
        max-width: 100%;
      }
      .working {
        font-weight: 600;
      }
      .about {
        margin: 0 0 var(--space-1);
      }
      .about::first-letter {
        text-transform: uppercase;
      }
      [role="group"] {
        display: contents;
      }
      /* What is only read out scrolls along, or it would widen the page. */
      .scroll {
        position: relative;
      }
      .crowded {
        grid-template-columns: minmax(calc(13rem - var(--space-3)), 1fr) 3rem repeat(var(--columns), 3.75rem);
        min-width: max-content;
        /* Room for the last number where it is kept clear of the edge, or it would cover its neighbour. */
        padding-right: var(--space-5);
      }
      /* The rating that is dragged stays in sight wherever its column is, and clear of the fading edge. */
      .crowded .name,
      .crowded .working {
        position: sticky;
        left: 0;
        z-index: 1;
        background: var(--paper);
      }
      .crowded .working {
        left: 3.25rem;
        right: var(--space-5);
        justify-self: stretch;
        margin-left: calc(-1 * var(--space-2));
        padding-left: var(--space-2);
        border-left: 1px solid var(--hairline);
        text-align: right;
      }
      @container (max-width: 40rem) {
        .answer {
          grid-template-columns: minmax(3rem, 6.5rem) 2.25rem repeat(var(--columns), minmax(0, 1fr));
          gap: 0 var(--space-2);
        }
        .many {
          grid-template-columns: 0 2.25rem repeat(var(--columns), minmax(0, 1fr));
        }
        .picture .note,
        .late {
          display: none;
        }
        .many .picture {
          visibility: hidden;
        }
        .crowded {
          grid-template-columns: 0 2.25rem repeat(var(--columns), 3rem);
        }
      }
    `,
  ];

  @property({ attribute: false }) notebook!: Notebook;
  @property({ attribute: false }) results!: ResultsView;
  @property({ attribute: false }) stack!: Stack;

  readonly #range = new RangeKeeper(this);

  override render() {
    const answers = this.#answers();
    if (answers.length === 0) return nothing;
    const busy = answers.some(({ result }) => result.state === 'computing');
    if (answers.length <= MOST_ABREAST) return html`${this.#about(busy)}${this.#columns(answers, busy)}`;
    return html`${this.#about(busy)}
      <div class="scroll" tabindex="0" role="region" aria-label="Ratings beside the sliders" ${fadeWhereMore()}>
        ${this.#columns(answers, busy)}
      </div>`;
  }

  #columns(answers: readonly Answer[], busy: boolean) {
    const { notebook } = this;
    const active = (scenario: Scenario) => (scenario.id === notebook.active ? 'working' : '');
    const crowd = answers.length > MOST_ABREAST ? 'many crowded' : answers.length > MOST_BESIDE_CURVES ? 'many' : '';
    return html`<div class="answer ${crowd}" style="--columns: ${answers.length}">
        <div class="picture">
          ${this.#curves(answers, busy)}<span class="note" aria-hidden="true">transmission loss</span>
        </div>
        <span class="name" aria-hidden="true"></span>
        ${answers.map(
          ({ scenario }) =>
            html`<span class="sample ${active(scenario)}" aria-hidden="true">${scenarioSample(scenario)}</span>`,
        )}
        ${this.#lines().map(
          ({ name, spoken, text }) => html`<div role="group" aria-label=${spoken}>
            <span class="name" aria-hidden="true">${name}</span>
            <ul aria-label="${spoken} in the shown scenarios">
              ${answers.map(
                ({ scenario, result }) => html`<li
                  class="awaited ${active(scenario)}"
                  aria-busy=${result.state === 'computing'}
                >
                  <span class="visually-hidden">${scenario.name}: </span>${text(result)}
                </li>`,
              )}
            </ul>
          </div>`,
        )}
      </div>`;
  }

  #lines(): readonly Line[] {
    const { notebook, stack } = this;
    const unit = unitOf('surface-mass', notebook.units);
    return [
      ...RATINGS.map(({ rating, sound }): Line => {
        const name = ratedName(notebook, stack.id, sound, rating);
        return { name, spoken: name, text: (result) => ratingText(result, rating) };
      }),
      {
        name: unit,
        spoken: `Mass per area, ${unit}`,
        text: (result) => shownText(result, (p) => massNumber(p.surfaceMass_kg_m2, notebook.units)),
      },
    ];
  }

  /** Which floor it is and what is counted, where that could be more than one thing; and that mass is load. */
  #about(busy: boolean) {
    const { notebook, stack } = this;
    const counted = [notebook.stacks.length > 1 ? stack.name : '', countedSaid(notebook, stack.id)].filter(Boolean);
    const about = [counted.join(': '), MASS_IS_LOAD].filter(Boolean);
    const late = busy ? html`<span class="late" aria-hidden="true"> · computing …</span>` : nothing;
    return html`<p class="about note">${about.join('; ')}${late}</p>`;
  }

  /** Decoration: the cell of curves has the same ones with their axes, in words and as numbers. */
  #curves(answers: readonly Answer[], busy: boolean) {
    const curves = answers.flatMap(({ scenario, result: { prediction } }) =>
      prediction ? [{ values_dB: prediction.R_dB, mark: scenarioMark(scenario.mark) }] : [],
    );
    const wanted = wantedRange(
      curves.flatMap((c) => c.values_dB),
      { step: 10, least: 50 },
    );
    const range = this.#range.range(wanted, this.stack.id);
    const { width, height } = PICTURE;
    return html`<svg
      class="curves awaited"
      aria-busy=${busy}
      viewBox="0 0 ${width} ${height}"
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      ${smallCurves(curves, { range, width, height })}
    </svg>`;
  }

  #answers(): readonly Answer[] {
    const { notebook, results, stack } = this;
    return notebook.shown.map((id) => ({
      scenario: findScenario(notebook, id),
      result: ratedResult(notebook, results, id, stack.id),
    }));
  }
}

/** What the numbers count, right beside them; '' where there is only one thing that it could be. */
function countedSaid(notebook: Notebook, stackId: string): string {
  const [airborne, impact] = (['airborne', 'impact'] as const).map((sound) => countedWords(notebook, stackId, sound));
  if (!airborne || !impact) return '';
  return airborne === impact
    ? airborne
    : `${ratedName(notebook, stackId, 'airborne', 'STC')} of ${airborne}, IIC of the ${impact}`;
}

const ratingText = (result: Result, rating: (typeof RATINGS)[number]['rating']): string =>
  shownText(result, ({ ratings }) => wholeNumber(ratings[rating]));

function shownText({ state, prediction }: Result, text: (prediction: Prediction) => string): string {
  if (state === 'failed') return NO_VALUE;
  return prediction ? text(prediction) : '…';
}

declare global {
  interface HTMLElementTagNameMap {
    'floor-answer': FloorAnswer;
  }
}
