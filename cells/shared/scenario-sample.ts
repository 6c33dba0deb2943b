/** The short piece of line that stands for a scenario wherever it is named: colour, dash and marker. */
import { html, svg, type TemplateResult } from 'lit';
import { type ScenarioMark, scenarioMark } from '#src/charts/scenario-marks.ts';

/** Markers in a box of 10 by 10 around the origin; crosses are stroked, the rest filled. */
const MARKERS: Record<ScenarioMark['marker'], string> = {
  circle: 'M-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0z',
  square: 'M-3 -3h6v6h-6z',
  triangle: 'M0 -4.2l4 7h-8z',
  diamond: 'M0 -4.6l3.2 4.6l-3.2 4.6l-3.2-4.6z',
  cross: 'M-1.3 -3.9h2.6v2.6h2.6v2.6h-2.6v2.6h-2.6v-2.6h-2.6v-2.6h2.6z',
  star: 'M0 -4.8l1.2 3.2h3.4l-2.7 2.1l1 3.4l-2.9-2l-2.9 2l1-3.4l-2.7-2.1h3.4z',
  wye: 'M-1.2 -0.7l-3-1.8l1.2-2l3 1.8l3-1.8l1.2 2l-3 1.8v3.9h-2.4z',
  plus: 'M0 -4.5v9M-4.5 0h9',
};

/** `index`: of the scenario in the notebook's list. Decoration only: the name beside it speaks. */
export function scenarioSample(index: number): TemplateResult {
  const { color, dash, marker } = scenarioMark(index);
  return html`<svg
    class="scenario-sample"
    viewBox="0 0 36 12"
    width="36"
    height="12"
    aria-hidden="true"
    style="color: ${color}; width: 36px; height: 12px; flex: none"
  >
    ${svg`<path d="M1 6h34" fill="none" stroke="currentColor" stroke-width="2" stroke-dasharray=${dash}></path>
      <path transform="translate(18 6)" d=${MARKERS[marker]} fill="currentColor" stroke=${
        marker === 'plus' ? 'currentColor' : 'var(--paper)'
      } stroke-width=${marker === 'plus' ? 2 : 1}></path>`}
  </svg>`;
}
