/** Curves without axes, as small as a word: whether they rise or fall while something is moved. */
import { type SVGTemplateResult, svg } from 'lit';
import type { ScenarioMark } from '#src/charts/scenario-marks.ts';
import type { Range } from '#src/charts/steady-range.ts';

export interface SmallCurve {
  readonly values_dB: readonly number[];
  readonly mark: Pick<ScenarioMark, 'color' | 'dash'>;
}

/** Kept free above and below, so that no line is cut, px. */
const EDGE = 2;

export function smallCurves(
  curves: readonly SmallCurve[],
  { range, width, height }: { range: Range; width: number; height: number },
): SVGTemplateResult {
  return svg`${curves.map(
    ({ values_dB, mark }) =>
      svg`<path
        d=${curvePath(values_dB, { range, width, height })}
        fill="none" stroke=${mark.color} stroke-width="1.5" stroke-linejoin="round" stroke-dasharray=${mark.dash}
        vector-effect="non-scaling-stroke"
      ></path>`,
  )}`;
}

/** From the left edge to the right one; NaN is a gap. */
export function curvePath(
  values_dB: readonly number[],
  { range, width, height }: { range: Range; width: number; height: number },
): string {
  const step = width / Math.max(1, values_dB.length - 1);
  const perDecibel = (height - 2 * EDGE) / (range.high - range.low);
  let pen = 'M';
  return values_dB
    .map((value, i) => {
      if (!Number.isFinite(value)) {
        pen = 'M';
        return '';
      }
      const point = `${pen}${round(i * step)} ${round(height - EDGE - (value - range.low) * perDecibel)}`;
      pen = 'L';
      return point;
    })
    .join('');
}

const round = (value: number): number => Math.round(value * 10) / 10;
