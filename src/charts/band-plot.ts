/** The still layer of a band chart: curves and overlays, drawn whole from data. */
import { axisX, line, type MarkerFunction, type Markish, ruleX, ruleY, text } from '@observablehq/plot';
import { bandPosition, besideBands, isOctavePosition, nominalPosition } from './band-axis.ts';
import {
  type BandChartData,
  type BandOverlay,
  type BandSeries,
  type ContourOverlay,
  type FrequencyOverlay,
  isPoints,
  type LineOverlay,
  type PointsOverlay,
  type RangeOverlay,
  type RegionOverlay,
} from './band-data.ts';
import type { BandFrame } from './band-frame.ts';
import { framedPlot, HALO, quieted } from './framed-plot.ts';
import { lineNames } from './line-names.ts';
import { markerPaint, markerPath, markerScale } from './marker-paths.ts';
import { labelRows } from './place-labels.ts';
import type { ScenarioMark } from './scenario-marks.ts';
import { svgElement } from './svg-element.ts';

const INK = 'var(--ink)';
const SOFT = 'var(--ink-soft)';
const HAIRLINE = 'var(--hairline)';

export function drawBandPlot(data: BandChartData, frame: BandFrame, label: string, document: Document): SVGSVGElement {
  const { bands_Hz, overlays, series } = data;
  const position = bands_Hz.map(nominalPosition);
  return quieted(
    framedPlot({
      frame,
      label,
      document,
      ticks: ticks(frame),
      marks: [
        ...overlays.filter(isRegion).map((region) => regionMark(region, frame)),
        ruleY(ticks(frame), { stroke: HAIRLINE }),
        axisX(position, { tickSize: 4, label: null, color: 'var(--hairline-strong)', text: null }),
        ...(data.zeroLine ? [ruleY([0], { stroke: SOFT, strokeWidth: 1.25 })] : []),
        ...overlays.flatMap((overlay) => overlayMarks(overlay, position, data)),
        ...frequencyMarks(overlays, frame),
        ...lineNames(overlays.filter(isLine), position, frame),
        ...series.flatMap((s, i) => seriesMarks(s, i, { position, frame, crowd: series.length })),
        ...overlays.filter(isPoints).flatMap((points) => pointsMarks(points, position, frame)),
      ],
    }),
  );
}

function ticks({ range: { low, high } }: BandFrame): number[] {
  const step = high - low <= 30 ? 5 : high - low <= 100 ? 10 : 20;
  const first = Math.ceil(low / step) * step;
  return Array.from({ length: Math.floor((high - first) / step) + 1 }, (_, i) => first + i * step);
}

/** One path with markers. With little room or many curves a marker stands at every third band, each curve's elsewhere. */
function seriesMarks(
  { values_dB, mark }: BandSeries,
  index: number,
  { position, frame, crowd }: { position: number[]; frame: BandFrame; crowd: number },
): Markish[] {
  const every = frame.pixelsPerBand >= 24 && crowd <= 4 ? 1 : 3;
  const marked = position.flatMap((_, i) => (every === 1 || (i - index) % every === 0 ? [i] : []));
  const clip = clippedBelow(values_dB, frame);
  const stroke = { stroke: mark.color, strokeWidth: 1.75, strokeLinejoin: 'round' as const, ...clip };
  const dash = mark.dash ? { strokeDasharray: mark.dash } : {};
  const marker = markerElement(mark);
  if (every === 1)
    return [line({ length: position.length }, { x: position, y: values_dB, ...stroke, ...dash, marker })];
  const at = { x: marked.map((i) => position[i]!), y: marked.map((i) => values_dB[i]!) };
  return [
    line({ length: position.length }, { x: position, y: values_dB, ...stroke, ...dash }),
    line({ length: marked.length }, { ...at, stroke: mark.color, strokeWidth: 0, marker, ...clip }),
  ];
}

/** Only what leaves the picture is clipped: a marker on its edge stays whole. */
function clippedBelow(values_dB: readonly number[], { range }: BandFrame): { clip?: true } {
  return values_dB.some((value) => value < range.low) ? { clip: true } : {};
}

function markerElement({ marker }: ScenarioMark, hollow = false): MarkerFunction {
  return (color, { document }) => {
    const path = markerPath(marker);
    const element = svgElement(document, 'marker', {
      viewBox: '-6 -6 12 12',
      markerWidth: 12 * markerScale(hollow),
      markerHeight: 12 * markerScale(hollow),
      markerUnits: 'userSpaceOnUse',
      // Else it inherits the dash of its line.
      'stroke-dasharray': 'none',
    });
    element.append(svgElement(document, 'path', { d: path.d, ...markerPaint(path, color, hollow) }));
    return element;
  };
}

const isFrequency = (o: BandOverlay): o is FrequencyOverlay => o.kind === 'frequency';
const isRegion = (o: BandOverlay): o is RegionOverlay => o.kind === 'region';
const isLine = (o: BandOverlay): o is LineOverlay => o.kind === 'line';

function overlayMarks(overlay: BandOverlay, position: number[], { bands_Hz }: BandChartData): Markish[] {
  const rows = { length: bands_Hz.length };
  switch (overlay.kind) {
    case 'line':
      return [
        line(rows, {
          x: position,
          y: overlay.values_dB,
          stroke: SOFT,
          strokeWidth: 1,
          strokeDasharray: overlay.dash,
          clip: true,
        }),
      ];
    case 'range':
      return rangeMarks(overlay, position, bands_Hz);
    case 'contour':
      return contourMarks(overlay, position);
    case 'frequency':
    case 'region':
    case 'points':
      return [];
  }
}

/** Over the curves, since points hide less than they tell. */
function pointsMarks({ values_dB, bandWidth, mark }: PointsOverlay, position: number[], frame: BandFrame): Markish[] {
  const octaves = bandWidth === 'octave';
  const at = position.flatMap((p, i) => (!octaves || isOctavePosition(p) ? [i] : []));
  return [
    ...(octaves ? [octaveSpans({ at, values_dB, mark }, position)] : []),
    line(
      { length: at.length },
      {
        x: at.map((i) => position[i]!),
        y: at.map((i) => values_dB[i]!),
        stroke: mark.color,
        strokeWidth: 1,
        strokeDasharray: mark.dash,
        marker: markerElement(mark, true),
        ...clippedBelow(values_dB, frame),
      },
    ),
  ];
}

/** An octave's value holds over its three thirds. */
function octaveSpans({ at, values_dB, mark }: Spans, position: number[]): Markish {
  const valued = at.filter((i) => Number.isFinite(values_dB[i]));
  return ruleY(valued, {
    x1: (i: number) => position[i]! - 1.5,
    x2: (i: number) => position[i]! + 1.5,
    y: (i: number) => values_dB[i],
    stroke: mark.color,
    strokeWidth: 1.25,
    inset: 2,
    clip: true,
  });
}

interface Spans extends Pick<PointsOverlay, 'values_dB' | 'mark'> {
  /** Indices of the octaves' middle bands. */
  readonly at: readonly number[];
}

/** Closed outlines, there along the upper values and back along the lower ones: of what is known, and of what is guessed. */
function rangeMarks(range: RangeOverlay, position: number[], bands_Hz: readonly number[]): Markish[] {
  const { low_dB, high_dB, color, guessedBelow_Hz = 0 } = range;
  const finite = position.flatMap((_, i) => (Number.isFinite(low_dB[i]! + high_dB[i]!) ? [i] : []));
  const known = finite.filter((i) => bands_Hz[i]! >= guessedBelow_Hz);
  // Up to the first band that is known, so that no gap stays between both.
  const guessed = finite.slice(0, finite.length - known.length + 1);
  const along = (indices: readonly number[], values_dB: readonly number[]) =>
    indices.map((i) => [position[i]!, values_dB[i]!]);
  const area = (indices: readonly number[], fillOpacity: number) =>
    line([...along(indices, high_dB), ...along(indices.toReversed(), low_dB)], {
      ...{ fill: color, fillOpacity, stroke: 'none', clip: true as const },
    });
  const edge = (values_dB: readonly number[]) =>
    line(along(guessed, values_dB), { stroke: color, strokeWidth: 1, strokeDasharray: '2 4', clip: true });
  return guessed.length > 1 && known.length < finite.length
    ? [area(known, 0.14), area(guessed, 0.05), edge(high_dB), edge(low_dB)]
    : [area(known, 0.14)];
}

/** Pale enough for labels on it, and told from the range around a curve by reaching from top to bottom. */
export const REGION = { fill: 'var(--ink)', fillOpacity: 0.07 } as const;

/** Under everything else, up to the lower edge of its band. */
function regionMark({ below_Hz }: RegionOverlay, { xDomain: [left, right], range }: BandFrame): Markish {
  const edge = Math.min(right, nominalPosition(below_Hz) - 0.5);
  const corners = [
    [left, range.low],
    [edge, range.low],
    [edge, range.high],
    [left, range.high],
  ];
  return line(corners, { ...REGION, stroke: 'none' });
}

/** The contour as a thin line, and a bar from it to the curve wherever the curve misses it. */
function contourMarks({ values_dB, deficiencies_dB, missing }: ContourOverlay, position: number[]): Markish[] {
  const sign = missing === 'below' ? -1 : 1;
  const missed = position.flatMap((_, i) => (deficiencies_dB[i]! > 0 ? [i] : []));
  return [
    ruleX(missed, {
      x: (i: number) => position[i],
      y1: (i: number) => values_dB[i],
      y2: (i: number) => values_dB[i]! + sign * deficiencies_dB[i]!,
      stroke: 'var(--accent)',
      strokeWidth: 5,
      strokeOpacity: 0.45,
      clip: true,
    }),
    line(
      { length: position.length },
      { x: position, y: values_dB, stroke: 'var(--accent)', strokeWidth: 1.25, clip: true },
    ),
  ];
}

/** Average width of a character of the label type, px: rows are settled before anything is measured. */
const CHARACTER = 6.3;
const ROW = 15;

/** Of those that stand in the picture. */
export function frequencyLabelRows(
  overlays: readonly BandOverlay[],
  frame: Pick<BandFrame, 'xOfFrequency' | 'bands_Hz'>,
): number[] {
  const spans = frequenciesAmong(overlays, frame).map(({ label, frequency_Hz }) => {
    const width = label.length * CHARACTER;
    return { left: frame.xOfFrequency(frequency_Hz) - width / 2, width };
  });
  return labelRows(spans, 8);
}

function frequenciesAmong(overlays: readonly BandOverlay[], { bands_Hz }: Pick<BandFrame, 'bands_Hz'>) {
  return overlays.filter(isFrequency).filter(({ frequency_Hz }) => besideBands(frequency_Hz, bands_Hz) === undefined);
}

function frequencyMarks(overlays: readonly BandOverlay[], frame: BandFrame): Markish[] {
  const rows = frequencyLabelRows(overlays, frame);
  const scale = (frame.xDomain[1] - frame.xDomain[0]) / (frame.right - frame.left);
  const marks = frequenciesAmong(overlays, frame).map(({ label, frequency_Hz, dash }, i) => {
    const x = bandPosition(frequency_Hz);
    const up = rows[i]! * ROW + 6;
    const half = (label.length * CHARACTER * scale) / 2;
    // A label near the edge stays inside the picture.
    const at = Math.min(Math.max(x, frame.xDomain[0] + half), frame.xDomain[1] - half);
    return {
      rule: ruleX([x], { stroke: SOFT, strokeWidth: 1, strokeDasharray: dash, insetTop: -up }),
      name: text([label], { x: [at], frameAnchor: 'top', lineAnchor: 'bottom', dy: -up, fill: INK, ...HALO }),
    };
  });
  // A rule that ends at a name in a higher row passes behind those in lower ones.
  return [...marks.map(({ rule }) => rule), ...marks.map(({ name }) => name)];
}
