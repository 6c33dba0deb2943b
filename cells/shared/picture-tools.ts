/** The quiet row of buttons under a picture: its numbers as a table, and the picture and the numbers as files. */
import { html, type TemplateResult } from 'lit';

export type PictureFormat = 'svg' | 'png' | 'csv';

export interface PictureTools {
  /** Whether the table is open. */
  readonly table: boolean;
  onTable(): void;
  onSave(format: PictureFormat): unknown;
}

export function pictureTools({ table, onTable, onSave }: PictureTools): TemplateResult {
  return html`
    <div class="tools screen-only" role="group" aria-label="This picture">
      <button type="button" class="quiet" aria-expanded=${table} @click=${onTable}>
        ${table ? 'Hide the numbers' : 'Show the numbers'}
      </button>
      <button type="button" class="quiet" @click=${() => onSave('svg')}>Save SVG</button>
      <button type="button" class="quiet" @click=${() => onSave('png')}>Save PNG</button>
      <button type="button" class="quiet" @click=${() => onSave('csv')}>Save CSV</button>
    </div>
  `;
}
