/** The still layer of a chart of shares: bands as columns, each split into its paths. */
import { axisX, axisY, type Markish, plot, rect, ruleX, text } from '@observablehq/plot';
import { render } from 'lit';
import { bandLabel, labelledBands, nominalPosition } from './band-axis.ts';
import type { BandFrame } from './band-frame.ts';
import { quietPicture } from './band-plot.ts';
import { PATH_MARKS, pathPattern } from './path-marks.ts';
import type { PathShares, ShareChartData } from './share-data.ts';

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
  const labelled = labelledBands(data.bands_Hz, frame.pixelsPerBand);
  const stacked = stack(data);
  const drawing = plot({
    document,
    className: 'band-plot',
    width: frame.width,
    height: frame.height,
    marginLeft: frame.left,
    marginRight: frame.width - frame.right,
    marginTop: frame.top,
    marginBottom: frame.height - frame.bottom,
    style: { fontFamily: 'inherit', fontSize: '12px', overflow: 'visible' },
    ariaLabel: label,
    x: { type: 'linear', domain: [...frame.xDomain] },
    y: { type: 'linear', domain: [0, 100] },
    marks: [
      axisY([0, 50, 100], { tickSize: 0, tickPadding: 6, label: null, color: 'var(--ink-soft)' }),
      axisX(labelled.map(nominalPosition), {
        tickSize: 0,
        tickPadding: 9,
        label: null,
        color: 'var(--ink-soft)',
        text: labelled.map(bandLabel),
      }),
      ...data.paths.flatMap((p, i) => pathMarks(p, stacked[i]!)),
      ruleX(
        data.regions.slice(1).map(({ first }) => nominalPosition(data.bands_Hz[first]!) - 0.5),
        { stroke: 'var(--ink)', strokeWidth: 1, insetTop: -18 },
      ),
    ],
  }) as SVGSVGElement;
  drawing.prepend(patterns(data, document));
  return quietPicture(drawing);
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

function pathMarks({ path }: PathShares, columns: readonly Column[]): Markish[] {
  const drawn = columns.filter((c) => c.to - c.from > 0.05);
  // Not in the outermost columns, where a name would leave the picture.
  const inner = columns.length > 4 ? columns.slice(1, -1) : columns;
  const widest = inner.reduce((a, b) => (b.to - b.from > a.to - a.from ? b : a), inner[0]!);
  return [
    rect(drawn, {
      x1: (c: Column) => c.x - HALF,
      x2: (c: Column) => c.x + HALF,
      y1: 'from',
      y2: 'to',
      fill: `url(#area-${path})`,
      stroke: 'var(--ink-soft)',
      strokeWidth: 0.5,
    }),
    ...(widest && widest.to - widest.from > 100 * ROOM_FOR_NAME
      ? [
          text([widest], {
            x: 'x',
            y: (c: Column) => (c.from + c.to) / 2,
            text: () => PATH_MARKS[path].label,
            fill: 'var(--ink)',
            stroke: 'var(--paper)',
            strokeWidth: 5,
            fontWeight: 600,
          }),
        ]
      : []),
  ];
}

function patterns({ paths }: ShareChartData, document: Document): SVGElement {
  const defs = document.createElementNS('http://www.w3.org/2000/svg', 'defs');
  render(
    paths.map(({ path }) => pathPattern(path, `area-${path}`)),
    defs as unknown as HTMLElement,
  );
  return defs;
}
