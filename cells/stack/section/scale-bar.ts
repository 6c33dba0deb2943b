import { html, svg, type TemplateResult } from 'lit';
import type { UnitSystem } from '#src/notebook/types.ts';

const INCH_m = 0.0254;

/** A bar of a round length with that length beside it. */
export function scaleBar(scale: number, units: UnitSystem): TemplateResult {
  const length = units === 'SI' ? { metres: 0.2, text: '200 mm' } : { metres: 8 * INCH_m, text: '8 in' };
  const width = length.metres * scale;
  return html`
    <span style="display: inline-flex; align-items: center; gap: var(--space-2)">
      <svg width=${width + 2} height="10" aria-hidden="true" style="flex: none">
        ${svg`<path
          d="M1 1v8M1 5h${width}M${1 + width / 2} 3v4M${1 + width} 1v8"
          fill="none"
          stroke="currentColor"
        ></path>`}
      </svg>
      ${length.text}
    </span>
  `;
}
