/** Single numbers of measured bands beside those of the prediction. */
import { html, type TemplateResult } from 'lit';
import { wholeNumber } from '#cells/shared/number-words.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { type RatingLine, ratingReport } from '#src/acoustics/ratings/rating-report.ts';
import { bandWidthOf, type Spectrum } from '#src/acoustics/ratings/spectrum.ts';
import { fadeWhereMore } from '#src/charts/fade-where-more.ts';
import type { CurvesCell, MeasuredBands } from '#src/notebook/types.ts';
import { curveQuantityInfo } from './curve-quantities.ts';

export interface MeasuredRatings {
  /** Of the ratings, as their standards write them. */
  readonly names: readonly string[];
  /** The prediction, then each set of measured bands. A value per name; NaN: the bands do not suffice. */
  readonly rows: readonly { readonly label: string; readonly values: readonly number[] }[];
  /** Why a rating is missing, and what octaves are allowed for. */
  readonly notes: readonly string[];
}

/** The rest is in the cell of ratings. */
const NAMES = { airborne: ['STC', 'OITC', 'Rw', 'C', 'Ctr'], impact: ['IIC', 'Ln,w', 'CI', 'CI,50-2500'] } as const;

/** @returns undefined if no measured bands of the cell are of the quantity it shows. */
export function measuredRatings(
  { measured = [], quantity }: CurvesCell,
  prediction: Prediction,
  scenario: string,
): MeasuredRatings | undefined {
  const sets = measured.filter((m) => m.quantity === quantity);
  if (sets.length === 0 || (quantity !== 'airborne' && quantity !== 'impact')) return undefined;
  const predicted = {
    bands_Hz: prediction.bands_Hz,
    values_dB: curveQuantityInfo(quantity).levels_dB(prediction),
  };
  const rated = sets.map((set) => ({ set, lines: linesOf(quantity, set) }));
  const withWalls = curveQuantityInfo(quantity).paths_dB(prediction).flanking ? ' with walls' : '';
  const row = (label: string, lines: readonly RatingLine[]) => ({ label, values: lines.map(({ value }) => value) });
  return {
    names: NAMES[quantity],
    rows: [
      row(`${scenario}, predicted${withWalls}`, linesOf(quantity, predicted)),
      ...rated.map(({ set, lines }) => row(`${set.name}, measured`, lines)),
    ],
    notes: rated.flatMap(({ set, lines }) => [...missingNotes(set, lines), ...octaveNotes(set, lines)]),
  };
}

function linesOf(quantity: MeasuredBands['quantity'], spectrum: Spectrum): RatingLine[] {
  const report = ratingReport(quantity === 'airborne' ? 'R' : 'Ln', spectrum);
  return NAMES[quantity].map((name) => report.find((line) => line.name === name)!);
}

/** Ratings that lack the same bands share a phrase. */
function missingNotes({ name }: MeasuredBands, lines: readonly RatingLine[]): string[] {
  const missing = lines.filter(({ value }) => Number.isNaN(value));
  if (missing.length === 0) return [];
  const phrases = [...new Set(missing.map(({ detail }) => detail))].map((detail) => {
    const names = missing.filter((line) => line.detail === detail).map((line) => line.name);
    return `${names.join(', ')} ${names.length > 1 ? detail.replace(/^needs/, 'need') : detail}`;
  });
  return [`Not from “${name}”: ${phrases.join('; ')}.`];
}

function octaveNotes({ name, bands_Hz }: MeasuredBands, lines: readonly RatingLine[]): string[] {
  if (bandWidthOf(bands_Hz) !== 'octave' || lines.every(({ value }) => Number.isNaN(value))) return [];
  return [`“${name}” has octaves, which ISO 717 rates for measurements in buildings only.`];
}

export function ratingsTable({ names, rows, notes }: MeasuredRatings): TemplateResult {
  const caption = 'Ratings, predicted and measured';
  return html`
    <div class="scroll" tabindex="0" role="region" aria-label=${caption} ${fadeWhereMore()}>
      <table class="measured-ratings">
        <caption class="visually-hidden">
          ${caption}
        </caption>
        <thead>
          <tr>
            <td></td>
            ${names.map((name) => html`<th scope="col" class="number">${name}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ label, values }) => html`
              <tr>
                <th scope="row">${label}</th>
                ${values.map((value) => html`<td class="number">${wholeNumber(value)}</td>`)}
              </tr>
            `,
          )}
        </tbody>
      </table>
    </div>
    ${notes.map((note) => html`<p class="note remark">${note}</p>`)}
  `;
}
