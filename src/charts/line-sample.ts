/** A short piece of line as it looks in the charts: colour, dash and, for a scenario, its marker. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import { markerPath } from './marker-paths.ts';
import type { ScenarioMark } from './scenario-marks.ts';

/** Decoration only: the name beside it speaks. */
export function lineSample({
  color,
  dash,
  marker,
}: {
  color: string;
  dash: string;
  marker?: ScenarioMark['marker'];
}): TemplateResult {
  return html`<svg
    class="line-sample"
    viewBox="0 0 36 12"
    width="36"
    height="12"
    aria-hidden="true"
    style="color: ${color}; width: 36px; height: 12px; flex: none"
  >
    ${svg`<path d="M1 6h34" fill="none" stroke="currentColor" stroke-width="2" stroke-dasharray=${dash}></path>`}
    ${marker ? markerShape(marker) : nothing}
  </svg>`;
}

function markerShape(marker: ScenarioMark['marker']) {
  const { d, stroke } = markerPath(marker);
  return stroke
    ? svg`<path transform="translate(18 6)" d=${d} fill="none" stroke="currentColor" stroke-width=${stroke}></path>`
    : svg`<path transform="translate(18 6)" d=${d} fill="currentColor" stroke="var(--paper)" stroke-width="1"></path>`;
}
