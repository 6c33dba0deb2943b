/** The same numbers as the curves, as a table: a row per band, a column per curve. */
import { html, type TemplateResult } from 'lit';
import { bandLabel } from './band-axis.ts';
import { type BandChartData, type BandOverlay, levelText } from './band-data.ts';
import { csvText } from './csv.ts';
import { fadeWhereMore } from './fade-where-more.ts';

interface Column {
  readonly label: string;
  readonly values_dB: readonly number[];
}

/** The curves, then what is laid over them as far as it has a value in every band. */
function bandColumns({ series, overlays }: BandChartData): readonly Column[] {
  return [...series, ...overlays.flatMap(overlayColumns)];
}

function overlayColumns(overlay: BandOverlay): readonly Column[] {
  switch (overlay.kind) {
    case 'line':
    case 'contour':
    case 'points':
      return [overlay];
    case 'range':
      return [
        { label: `${overlay.label}, low`, values_dB: overlay.low_dB },
        { label: `${overlay.label}, high`, values_dB: overlay.high_dB },
      ];
    case 'frequency':
    case 'region':
      return [];
  }
}

export interface TextColumn {
  readonly label: string;
  readonly text: (index: number) => string;
}

/** A row per band, a column per thing that has a value there. Looks come from the host's table styles. */
export function numberTable(
  bands_Hz: readonly number[],
  columns: readonly TextColumn[],
  caption: string,
): TemplateResult {
  return html`
    <div class="scroll" tabindex="0" role="region" aria-label=${caption} ${fadeWhereMore()}>
      <table class="bands">
        <caption class="visually-hidden">
          ${caption}
        </caption>
        <thead>
          <tr>
            <th scope="col" class="number">Hz</th>
            ${columns.map(({ label }) => html`<th scope="col" class="number">${label}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${bands_Hz.map(
            (band, i) => html`
              <tr>
                <th scope="row" class="number">${bandLabel(band)}</th>
                ${columns.map(({ text }) => html`<td class="number">${text(i)}</td>`)}
              </tr>
            `,
          )}
        </tbody>
      </table>
    </div>
  `;
}

export function bandTable(data: BandChartData, caption: string): TemplateResult {
  const columns = bandColumns(data).map(({ label, values_dB }) => ({
    label,
    text: (index: number) => levelText(values_dB[index], data.zeroLine),
  }));
  return numberTable(data.bands_Hz, columns, caption);
}

/**
 * In decibels with two decimals. What is laid over the curves belongs to one scenario, which a file must say for itself:
 * with its name, those columns begin with it. Measured points have a name of their own.
 */
export function bandCsv(data: BandChartData, laidOver?: string): string {
  const owned = (overlay: BandOverlay) =>
    overlayColumns(overlay).map((column) =>
      laidOver === undefined || overlay.kind === 'points'
        ? column
        : { ...column, label: `${laidOver}: ${column.label}` },
    );
  const columns: readonly Column[] = [...data.series, ...data.overlays.flatMap(owned)];
  const head = ['band_Hz', ...columns.map(({ label }) => `${label} (dB)`)];
  const rows = data.bands_Hz.map((band, i) => [
    band,
    ...columns.map(({ values_dB }) => Math.round(100 * (values_dB[i] ?? NaN)) / 100),
  ]);
  return csvText(head, rows);
}
