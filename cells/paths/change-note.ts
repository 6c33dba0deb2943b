import { html } from 'lit';
import type { ChangeTable } from './change-table.ts';

/** What the table of changes leaves out, and what its uncertainties are made of. */
export function changeNote({ idle, atTheEdge, byModel_dB }: ChangeTable) {
  const unlisted = idle > 0 ? `Not listed because no band moves by 0.1 dB: ${idle}. ` : '';
  const edge =
    atTheEdge.length > 0
      ? `At the edge of what can be computed, without a slope and taken as certain: ${atTheEdge.join('; ')}. `
      : '';
  const model = byModel_dB
    ? '; of laboratories by ISO 12999-1, with the model’s own errors against measurements.'
    : '. How far the model itself may be off is known for airborne sound alone.';
  return html`<p class="note">
    ${unlisted}${edge} The sides of the floor and the walls beside it are taken as they are. Ranges behind ± are assumed,
    no source, and not the maker’s or builder’s. The lower rows are standard uncertainties in dB: of the
    tolerances by ISO/IEC Guide 98-3, each as a range that is never left and all as independent${model}
  </p>`;
}
