/** The still layer of a chart of shares: bands as columns, each split into its paths. */
import { type Markish, rect, ruleX, text } from '@observablehq/plot';
import { nominalPosition } from './band-axis.ts';
import type { BandFrame } from './band-frame.ts';
import { framedPlot, quieted } from './framed-plot.ts';
import { PATH_MARKS } from './path-marks.ts';
import type { PathShares, ShareChartData } from './share-data.ts';
import { svgElement } from './svg-element.ts';

/** Half the width of a column, in bands. */
const HALF = 0.46;
/** A name stands in an area that is at least this high, as a share. */
const ROOM_FOR_NAME = 0.16;

interface Column {
  readonly x: number;
  readonly from: number;
  readonly to: number;
}

export function drawSharePlot(
  data: ShareChartData,
  frame: BandFrame,
  label: string,
  document: Document,
): SVGSVGElement {
  const stacked = stack(data);
  const borders = data.regions.slice(1).map(({ first }) => nominalPosition(data.bands_Hz[first]!) - 0.5);
  const drawing = framedPlot({
    frame,
    label,
    document,
    ticks: [0, 50, 100],
    marks: [
      ...data.paths.map((p, i) => columnMark(p, stacked[i]!)),
      ruleX(borders, { stroke: 'var(--ink)', strokeWidth: 1, insetTop: -18 }),
      ...data.paths.flatMap((p, i) => nameMark(p, stacked[i]!)),
    ],
  });
  hatch(drawing, data, stacked, frame);
  return quieted(drawing);
}

/** From the bottom up in the order of the paths, in per cent. */
function stack({ bands_Hz, paths }: ShareChartData): readonly (readonly Column[])[] {
  const reached = bands_Hz.map(() => 0);
  return paths.map(({ shares }) =>
    bands_Hz.map((band, i) => {
      const from = reached[i]!;
      const share = Number.isFinite(shares[i]) ? shares[i]! : 0;
      reached[i] = from + 100 * share;
      return { x: nominalPosition(band), from, to: reached[i]! };
    }),
  );
}

function columnMark({ path }: PathShares, columns: readonly Column[]): Markish {
  return rect(
    columns.filter((c) => c.to - c.from > 0.05),
    {
      x1: (c: Column) => c.x - HALF,
      x2: (c: Column) => c.x + HALF,
      y1: 'from',
      y2: 'to',
      fill: 'var(--ink)',
      fillOpacity: PATH_MARKS[path].tint,
      stroke: 'var(--ink-soft)',
      strokeWidth: 0.5,
    },
  );
}

/** The path's name where it is largest, but not in the outermost columns, where it would leave the picture. */
function nameMark({ path }: PathShares, columns: readonly Column[]): Markish[] {
  const inner = columns.length > 4 ? columns.slice(1, -1) : columns;
  const widest = inner.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a), inner[0]!);
  if (!widest || widest.to - widest.from < 100 * ROOM_FOR_NAME) return [];
  return [
    text([widest], {
      x: 'x',
      y: (c: Column) => (c.from + c.to) / 2,
      text: () => PATH_MARKS[path].label,
      fill: 'var(--ink)',
      stroke: 'var(--paper)',
      strokeWidth: 5,
      fontWeight: 600,
    }),
  ];
}

/** Lines over the columns of every path, under the names. */
function hatch(
  drawing: SVGSVGElement,
  { paths }: ShareChartData,
  stacked: readonly (readonly Column[])[],
  frame: BandFrame,
): void {
  const names = drawing.querySelector('[aria-label="text"]');
  paths.forEach(({ path }, i) => {
    const { hatch, hatchWidth } = PATH_MARKS[path];
    const d = stacked[i]!.map(({ from, to }, k) => {
      const half = HALF * frame.pixelsPerBand;
      const y = frame.y(to);
      return hatch({ x: frame.xOfBand(k) - half, y, width: 2 * half, height: frame.y(from) - y });
    }).join('');
    const strokes = {
      d,
      fill: 'none',
      stroke: 'var(--ink-soft)',
      'stroke-width': hatchWidth,
      'stroke-linecap': 'round',
    };
    const element = svgElement(drawing.ownerDocument, 'path', strokes);
    if (names) names.before(element);
    else drawing.append(element);
  });
}
