/** A short piece of line as it looks in the charts: colour, dash and, for a scenario, its marker. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import { markerAround, markerPaint, markerPath, markerScale } from './marker-paths.ts';
import type { ScenarioMark } from './scenario-marks.ts';

/**
 * Decoration only: the name beside it speaks. Everything stands where it is drawn, moved by no transform and no view box:
 * in the head of a table that goes on over pages browsers print pictures without them.
 */
export function lineSample({
  color,
  dash,
  marker,
  hollow = false,
}: {
  color: string;
  dash: string;
  marker?: ScenarioMark['marker'];
  /** A thin line with a hollow marker. */
  hollow?: boolean;
}): TemplateResult {
  return html`<svg
    class="line-sample"
    viewBox="0 0 36 12"
    width="36"
    height="12"
    aria-hidden="true"
    style="color: ${color}; width: 36px; height: 12px; flex: none"
  >
    ${svg`<path
      d="M1 6h34"
      fill="none"
      stroke="currentColor"
      stroke-width=${hollow ? 1 : 2}
      stroke-dasharray=${dash}
    ></path>`}
    ${marker ? markerShape(marker, hollow) : nothing}
  </svg>`;
}

function markerShape(marker: ScenarioMark['marker'], hollow: boolean) {
  const path = markerPath(marker);
  const paint = markerPaint(path, 'currentColor', hollow);
  return svg`<path
    transform=${hollow ? `translate(18 6) scale(${markerScale(hollow)})` : nothing}
    d=${hollow ? path.d : markerAround(marker, 18, 6)}
    fill=${paint.fill}
    stroke=${paint.stroke}
    stroke-width=${paint['stroke-width']}
  ></path>`;
}
