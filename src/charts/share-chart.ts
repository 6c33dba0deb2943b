import { nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type BandFrame, bandFrame } from './band-frame.ts';
import { DrawnChart } from './drawn-chart.ts';
import { PATH_MARKS, pathSample } from './path-marks.ts';
import { type ShareChartData, type ShareRegion, shareText } from './share-data.ts';
import { drawSharePlot } from './share-plot.ts';

const PLOT_HEIGHT_px = 180;
const PER_CENT = { low: 0, high: 100 };

/** How the sound of every band splits into paths, with the regions numbered above that one thing rules. */
@customElement('share-chart')
export class ShareChart extends DrawnChart<ShareChartData> {
  /** Index of the region that is pointed at elsewhere. */
  @property({ attribute: false }) lit: number | undefined;

  protected override valueLabel() {
    return 'share of each path, %';
  }

  protected override layOut({ bands_Hz }: ShareChartData, width: number) {
    return bandFrame({ width, bands_Hz, range: PER_CENT, topRows: 1, rightLabels: 0, plotHeight: PLOT_HEIGHT_px });
  }

  protected override draw(data: ShareChartData, frame: BandFrame) {
    return drawSharePlot(data, frame, this.label, this.ownerDocument);
  }

  protected override live({ regions }: ShareChartData, frame: BandFrame) {
    return svg`${regions.map((region, i) => this.#renderRegion(region, i, frame))}`;
  }

  protected override mark(): typeof nothing {
    return nothing;
  }

  protected override keyRows({ paths }: ShareChartData) {
    return paths.map(({ path, shares }) => ({
      sample: pathSample(path),
      label: PATH_MARKS[path].label,
      note: PATH_MARKS[path].description,
      value: (index: number) => shareText(shares[index]),
    }));
  }

  protected override keyRemarks() {
    return [];
  }

  /** The number of a region above its bands, as its sentence bears it. */
  #renderRegion({ first, last }: ShareRegion, i: number, frame: BandFrame) {
    const half = frame.pixelsPerBand / 2;
    const left = frame.xOfBand(first) - half;
    const width = frame.xOfBand(last) + half - left;
    const height = frame.bottom - frame.top;
    return svg`
      ${
        this.lit === i
          ? svg`<rect class="lit-region" x=${left} y=${frame.top} width=${width} height=${height}></rect>`
          : nothing
      }
      <text class="region" x=${left + width / 2} y=${frame.top - 6}>${i + 1}</text>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'share-chart': ShareChart;
  }
}
