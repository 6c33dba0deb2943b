/** What a chart over bands is given. Data is replaced as a whole, never changed in place. */
import type { BandWidth } from '#src/acoustics/ratings/spectrum.ts';
import type { ScenarioMark } from './scenario-marks.ts';

export interface BandChartData {
  /** Nominal one-third-octave bands, Hz, ascending. */
  readonly bands_Hz: readonly number[];
  /** Of the value axis, with unit: "transmission loss R, dB". */
  readonly valueLabel: string;
  readonly series: readonly BandSeries[];
  readonly overlays: readonly BandOverlay[];
  /** A line at 0 dB that the values are read against (differences). */
  readonly zeroLine: boolean;
  /** What is less is not drawn, for it would press flat what matters; numbers say it all the same. Absent: all is drawn. */
  readonly cutBelow_dB?: number;
}

export interface BandSeries {
  readonly id: string;
  readonly label: string;
  /** One per band; NaN is a gap. */
  readonly values_dB: readonly number[];
  readonly mark: ScenarioMark;
  /** Said beside the name: why a curve is missing, old or flat. */
  readonly note?: string;
}

export type BandOverlay =
  | LineOverlay
  | ContourOverlay
  | FrequencyOverlay
  | RangeOverlay
  | RegionOverlay
  | PointsOverlay;

/** A thin curve with its name at its end: mass law, one path. */
export interface LineOverlay {
  readonly kind: 'line';
  /** Short, stands at the end of the line. */
  readonly label: string;
  /** In the key, with its numbers. */
  readonly description: string;
  readonly values_dB: readonly number[];
  readonly dash: string;
}

/** A shifted rating contour and where the curve misses it. */
export interface ContourOverlay {
  readonly kind: 'contour';
  readonly label: string;
  readonly description: string;
  /** One per band of the chart; NaN outside the contour. */
  readonly values_dB: readonly number[];
  /** How far the curve misses the contour, dB, ≥ 0; one per band of the chart. */
  readonly deficiencies_dB: readonly number[];
  /** Which way the misses lie: under the contour (airborne) or over it (impact). */
  readonly missing: 'below' | 'above';
}

export interface FrequencyOverlay {
  readonly kind: 'frequency';
  readonly label: string;
  readonly description: string;
  readonly frequency_Hz: number;
  readonly dash: string;
}

/** A band of values around a curve. */
export interface RangeOverlay {
  readonly kind: 'range';
  readonly label: string;
  readonly description: string;
  readonly low_dB: readonly number[];
  readonly high_dB: readonly number[];
  readonly color: string;
  /** Nominal; the bands below it are drawn paler, with a broken edge: what is said of them is a guess. Absent: none is. */
  readonly guessedBelow_Hz?: number;
}

/** The bands below one of them, shaded over the whole height. */
export interface RegionOverlay {
  readonly kind: 'region';
  readonly description: string;
  /** Nominal; Infinity: all bands. */
  readonly below_Hz: number;
}

/** Hollow points joined by a thin dashed line: measured bands. They have a row of values in the key, like a curve. */
export interface PointsOverlay {
  readonly kind: 'points';
  readonly label: string;
  /** Beside the label in the key. */
  readonly description: string;
  /** One per band of the chart; NaN where nothing was measured. */
  readonly values_dB: readonly number[];
  /** Octaves stand at their middle bands, level over their three thirds; the line goes from one to the next. */
  readonly bandWidth: BandWidth;
  readonly mark: ScenarioMark;
}

export const isPoints = (overlay: BandOverlay): overlay is PointsOverlay => overlay.kind === 'points';

/** With its unit; a dash alone where there is no value. */
export function levelWithUnit(value_dB: number | undefined, signed = false): string {
  const text = levelText(value_dB, signed);
  return text === NO_LEVEL ? text : `${text} dB`;
}

const NO_LEVEL = '–';

/** A number as the reader sees it: one decimal, a true minus, a dash for no value. */
export function levelText(value_dB: number | undefined, signed = false): string {
  if (value_dB === undefined || !Number.isFinite(value_dB)) return NO_LEVEL;
  const text = Math.abs(value_dB).toFixed(1);
  if (Number(text) === 0) return text;
  if (value_dB < 0) return `\u2212${text}`;
  return signed ? `+${text}` : text;
}
