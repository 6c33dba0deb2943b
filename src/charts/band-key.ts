/** The key under a chart, which is its readout too: a row per curve or part, with its value at the bands that are read. */
import { html, nothing, type TemplateResult } from 'lit';
import { bandLabel } from './band-axis.ts';

/** Below this width of a chart its key has one column of values, px. */
export const NARROW_px = 480;

export interface KeyRow {
  readonly sample: TemplateResult;
  readonly label: string;
  readonly note?: string | undefined;
  /** With unit, at a band's index. */
  readonly value: (index: number) => string;
}

export interface KeyRemark {
  readonly sample: TemplateResult;
  readonly text: string;
}

export interface BandKey {
  readonly bands_Hz: readonly number[];
  readonly caption: string;
  readonly rows: readonly KeyRow[];
  /** Rows without values: what lies over the curves. */
  readonly remarks: readonly KeyRemark[];
  readonly pinned: number;
  readonly pointed: number | undefined;
  /** Room for one column of values only: then the pointer's band takes it while there is a pointer. */
  readonly narrow: boolean;
}

export function bandKey({ bands_Hz, caption, rows, remarks, pinned, pointed, narrow }: BandKey): TemplateResult {
  const free = { index: pointed ?? pinned, idle: !narrow && pointed === undefined };
  const columns = narrow ? [free] : [free, { index: pinned, idle: false }];
  return html`
    <table class="key">
      <caption class="visually-hidden">
        ${caption}
      </caption>
      <thead>
        <tr>
          <td></td>
          ${columns.map(
            ({ index, idle }) =>
              html`<th scope="col" class="level" ?data-idle=${idle}>at ${bandLabel(bands_Hz[index] ?? 0)} Hz</th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ sample, label, note, value }) => html`
            <tr>
              <th scope="row">
                <span class="name"
                  >${sample}<span>${label}${note ? html` <span class="remark">${note}</span>` : nothing}</span></span
                >
              </th>
              ${columns.map(({ index, idle }) => html`<td class="level" ?data-idle=${idle}>${value(index)}</td>`)}
            </tr>
          `,
        )}
        ${remarks.map(
          ({ sample, text }) => html`
            <tr>
              <td colspan=${columns.length + 1} class="remark">
                <span class="name">${sample}<span>${text}</span></span>
              </td>
            </tr>
          `,
        )}
      </tbody>
    </table>
  `;
}
