/** Which values the picture of a band chart reaches. */
import { type BandChartData, isPoints } from './band-data.ts';
import { type Range, wantedRange } from './steady-range.ts';

/**
 * How far thin lines may widen the picture beyond the curves, dB: two marks of the axis. A model that runs away to twice
 * the level would press the curves flat; such a line is cut where it leaves, and named there.
 */
const LINES_ADD_dB = 20;

/**
 * Curves, points, contours and ranges of values are cut only where the data say so; thin lines far away from the curves too.
 */
export function bandRange({ series, overlays, zeroLine, cutBelow_dB = -Infinity }: BandChartData): Range {
  const drawn = (value: number) => Math.max(value, cutBelow_dB);
  const curves = [...series, ...overlays.filter(isPoints)]
    .flatMap((s) => s.values_dB)
    .filter(Number.isFinite)
    .map(drawn);
  const [low, high] = curves.length ? [Math.min(...curves), Math.max(...curves)] : [-Infinity, Infinity];
  const around = overlays.flatMap((overlay) => {
    switch (overlay.kind) {
      case 'contour':
        return overlay.values_dB;
      case 'range':
        return [...overlay.low_dB, ...overlay.high_dB];
      case 'line':
        return overlay.values_dB.map((value) => Math.max(low - LINES_ADD_dB, Math.min(high + LINES_ADD_dB, value)));
      default:
        return [];
    }
  });
  const values = [...curves, ...around.map(drawn)];
  return zeroLine
    ? wantedRange([...values, -1, 1], { step: 5, least: 20 })
    : wantedRange(values, { step: 10, least: 50 });
}
