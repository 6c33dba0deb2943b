import { html, nothing, svg } from 'lit';
import { customElement } from 'lit/decorators.js';
import { besideBands, octaveMiddleIndex } from './band-axis.ts';
import { type BandChartData, type BandOverlay, isPoints, levelWithUnit, type PointsOverlay } from './band-data.ts';
import { type BandFrame, bandFrame } from './band-frame.ts';
import { drawBandPlot, frequencyLabelRows, REGION } from './band-plot.ts';
import { bandRange } from './band-range.ts';
import { DrawnChart } from './drawn-chart.ts';
import { nameWidth_px } from './line-names.ts';
import { lineSample } from './line-sample.ts';
import { RangeKeeper } from './range-keeper.ts';

/** Curves over one-third-octave bands, with what is laid over them. */
@customElement('band-chart')
export class BandChart extends DrawnChart<BandChartData> {
  readonly #keeper = new RangeKeeper(this);

  protected override valueLabel({ valueLabel }: BandChartData) {
    return valueLabel;
  }

  protected override layOut(data: BandChartData, width: number, onPaper: boolean) {
    return frameOf(data, width, this.#keeper.range(bandRange(data), data.valueLabel), onPaper);
  }

  protected override draw(data: BandChartData, frame: BandFrame) {
    return drawBandPlot(data, frame, this.label, this.ownerDocument);
  }

  protected override live() {
    return svg``;
  }

  protected override mark({ series }: BandChartData, frame: BandFrame, index: number) {
    return svg`${series.map(({ values_dB, mark }) => {
      const value = values_dB[index] ?? Number.NaN;
      return Number.isFinite(value) && value >= frame.range.low
        ? svg`<circle cx=${frame.xOfBand(index)} cy=${frame.y(value)} r="4" stroke=${mark.color}></circle>`
        : nothing;
    })}`;
  }

  protected override keyRows({ bands_Hz, series, overlays, zeroLine }: BandChartData) {
    const curves = series.map(({ label, note, values_dB, mark }) => ({
      sample: lineSample(mark),
      label,
      note,
      value: (index: number) => levelWithUnit(values_dB[index], zeroLine),
    }));
    const points = overlays.filter(isPoints).map(({ label, description, values_dB, bandWidth, mark }) => ({
      sample: lineSample({ ...mark, hollow: true }),
      label,
      note: description,
      value: (index: number) =>
        levelWithUnit(values_dB[bandWidth === 'octave' ? octaveMiddleIndex(bands_Hz, index) : index]),
    }));
    return [...curves, ...points];
  }

  protected override keyRemarks({ overlays, bands_Hz }: BandChartData) {
    return overlays.flatMap((overlay) => {
      if (isPoints(overlay)) return [];
      const { description } = overlay;
      const beside = overlay.kind === 'frequency' ? besideBands(overlay.frequency_Hz, bands_Hz) : undefined;
      // No line, no sample of one.
      return beside
        ? { sample: NO_SAMPLE, text: `${description} (${beside} the bands of this picture)` }
        : { sample: overlaySample(overlay), text: description };
    });
  }
}

/** Of curves on paper, px: less than on screen, so that what goes with them has room on the same sheet. */
const PLOT_ON_PAPER_px = 240;

function frameOf(data: BandChartData, width: number, range: BandFrame['range'], onPaper: boolean): BandFrame {
  const ends = data.overlays.flatMap((o) => (o.kind === 'line' ? [nameWidth_px(o.label)] : []));
  const options = {
    width,
    bands_Hz: data.bands_Hz,
    range,
    rightLabels: ends.length ? Math.max(...ends) + 4 : 0,
    ...(onPaper && { plotHeight: PLOT_ON_PAPER_px }),
  };
  const rows = frequencyLabelRows(data.overlays, bandFrame({ ...options, topRows: 0 }));
  return bandFrame({ ...options, topRows: rows.length ? Math.max(...rows) + 1 : 0 });
}

function overlaySample(overlay: Exclude<BandOverlay, PointsOverlay>) {
  switch (overlay.kind) {
    case 'range':
      return areaSample(overlay.color, 0.2);
    case 'region':
      return areaSample(REGION.fill, REGION.fillOpacity);
    case 'contour':
      return lineSample({ color: 'var(--accent)', dash: '' });
    case 'line':
    case 'frequency':
      return lineSample({ color: 'var(--ink-soft)', dash: overlay.dash });
  }
}

const NO_SAMPLE = html`<svg
  class="line-sample"
  viewBox="0 0 36 12"
  width="36"
  height="12"
  style="flex: none"
  aria-hidden="true"
></svg>`;

function areaSample(fill: string, opacity: number) {
  return html`<svg class="line-sample" viewBox="0 0 36 12" width="36" height="12" style="flex: none" aria-hidden="true">
    ${svg`<rect width="36" height="12" fill=${fill} fill-opacity=${opacity}></rect>`}
  </svg>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'band-chart': BandChart;
  }
}
