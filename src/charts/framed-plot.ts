import { axisX, axisY, type Markish, plot } from '@observablehq/plot';
import { bandLabel, labelledBands, nominalPosition } from './band-axis.ts';
import type { BandFrame } from './band-frame.ts';

/** Keeps what lies behind a name off its letters. */
export const HALO = { stroke: 'var(--paper)', strokeWidth: 4 } as const;

export interface FramedPlot {
  readonly frame: BandFrame;
  /** One sentence that says what the picture shows. */
  readonly label: string;
  readonly document: Document;
  readonly ticks: readonly number[];
  /** In the order they are drawn. */
  readonly marks: readonly Markish[];
}

/** Marks in a frame over bands, with our own axes and type. */
export function framedPlot({ frame, label, document, ticks, marks }: FramedPlot): SVGSVGElement {
  const labelled = labelledBands(frame.bands_Hz, frame.pixelsPerBand);
  const axis = { label: null, tickSize: 0, color: 'var(--ink-soft)' };
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
    y: { type: 'linear', domain: [frame.range.low, frame.range.high] },
    marks: [
      axisY(ticks, { ...axis, tickPadding: 6, tickFormat: tickText }),
      axisX(labelled.map(nominalPosition), { ...axis, tickPadding: 9, text: labelled.map(bandLabel) }),
      ...marks,
    ],
  }) as SVGSVGElement;
  drawing.setAttribute('role', 'img');
  return drawing;
}

function tickText(value: number): string {
  return value < 0 ? `\u2212${-value}` : String(value);
}

/** Plot labels every group for assistive technology and gives no role: the picture is one image with one sentence. */
export function quieted(drawing: SVGSVGElement): SVGSVGElement {
  for (const name of ['aria-label', 'aria-hidden'])
    for (const group of drawing.querySelectorAll(`[${name}]`)) group.removeAttribute(name);
  return drawing;
}
