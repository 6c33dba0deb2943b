import { html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { bandLabel } from './band-axis.ts';
import { type BandFrame, bandFrame } from './band-frame.ts';
import { bandKey, NARROW_px } from './band-key.ts';
import { bandLine } from './band-line.ts';
import { BandPointer, type PointedChart } from './band-pointer.ts';
import { chartStyles } from './chart-styles.ts';
import { OnceAFrame } from './once-a-frame.ts';
import { PATH_MARKS, pathSample } from './path-marks.ts';
import { type PictureParts, svgOf } from './picture-file.ts';
import { type ShareChartData, type ShareRegion, shareText } from './share-data.ts';
import { drawSharePlot } from './share-plot.ts';
import { WidthKeeper } from './width-keeper.ts';

const EMPTY: ShareChartData = { bands_Hz: [], paths: [], regions: [] };
const PLOT_HEIGHT_px = 180;

/**
 * How the sound of every band splits into paths, with the regions numbered above that one thing rules.
 *
 * Give `data` as a new object whenever anything in it changed.
 */
@customElement('share-chart')
export class ShareChart extends LitElement implements PointedChart {
  static override styles = chartStyles;

  @property({ attribute: false }) data: ShareChartData = EMPTY;
  /** One sentence that says what the picture shows. */
  @property() label = '';
  @property({ type: Boolean }) busy = false;
  /** Index of the region that is pointed at elsewhere. */
  @property({ attribute: false }) lit: number | undefined;

  frame: BandFrame | undefined;
  #drawing: SVGSVGElement | undefined;
  readonly #frames = new OnceAFrame();
  readonly #size = new WidthKeeper(this);
  readonly #pointer = new BandPointer(this);

  pictureParts(title: string, notes: readonly string[]): PictureParts | undefined {
    if (!this.#drawing) return undefined;
    return {
      title,
      subtitle: 'share of each path, per cent, over one-third-octave bands, Hz',
      picture: this.#drawing,
      key: this.data.paths.map(({ path }) => ({ sample: svgOf(pathSample(path)), text: described(path) })),
      notes,
      style: getComputedStyle(this),
    };
  }

  protected override async scheduleUpdate(): Promise<void> {
    await this.#frames.turn();
    await super.scheduleUpdate();
  }

  override willUpdate(changed: PropertyValues): void {
    const { width } = this.#size;
    const { bands_Hz } = this.data;
    if (width === 0 || bands_Hz.length === 0) return;
    if (this.#drawing && !changed.has('data') && !changed.has('label') && width === this.frame?.width) return;
    this.frame = bandFrame({
      width,
      bands_Hz,
      range: { low: 0, high: 100 },
      topRows: 1,
      rightLabels: 0,
      plotHeight: PLOT_HEIGHT_px,
    });
    this.#drawing = drawSharePlot(this.data, this.frame, this.label, this.ownerDocument);
  }

  override render() {
    const { bands_Hz, paths } = this.data;
    return html`
      <figure>
        <div class="picture" aria-busy=${this.busy}>
          ${this.#drawing} ${this.frame ? this.#renderLive(this.frame) : nothing}
        </div>
        ${bandKey({
          bands_Hz,
          caption: 'Key to the paths, with their shares at the band that is read',
          rows: paths.map(({ path, shares }) => ({
            sample: pathSample(path),
            label: PATH_MARKS[path].label,
            note: PATH_MARKS[path].description,
            value: (index) => shareText(shares[index]),
          })),
          remarks: [],
          pinned: this.#pointer.pinned,
          pointed: this.#pointer.pointed,
          narrow: this.#size.width < NARROW_px,
        })}
      </figure>
    `;
  }

  #renderLive(frame: BandFrame) {
    const { pinned, pointed } = this.#pointer;
    return html`
      <span class="value-label">share of each path, %</span>
      <span class="axis-label" style="left: ${frame.left}px">one-third-octave band, Hz</span>
      <svg class="live" viewBox="0 0 ${frame.width} ${frame.height}" aria-hidden="true">
        ${this.data.regions.map((region, i) => this.#renderRegion(region, i, frame))} ${bandLine(frame, pinned, 'pinned')}
        ${pointed === undefined ? nothing : bandLine(frame, pointed, 'pointer')}
      </svg>
      ${this.#pointer.reach((index) => this.#readout(index))}
    `;
  }

  /** The number of a region above its bands, as its sentence bears it. */
  #renderRegion({ first, last }: ShareRegion, i: number, frame: BandFrame) {
    const half = frame.pixelsPerBand / 2;
    const left = frame.xOfBand(first) - half;
    const right = frame.xOfBand(last) + half;
    return svg`
      ${
        this.lit === i
          ? svg`<rect class="lit-region" x=${left} y=${frame.top} width=${right - left} height=${frame.bottom - frame.top}></rect>`
          : nothing
      }
      <text class="region" x=${(left + right) / 2} y=${frame.top - 6}>${i + 1}</text>
    `;
  }

  #readout(index: number): string {
    const shares = this.data.paths.map(({ path, shares }) => `${PATH_MARKS[path].label} ${shareText(shares[index])}`);
    return `${bandLabel(this.data.bands_Hz[index]!)} Hz: ${shares.join(', ')}`;
  }
}

function described(path: ShareChartData['paths'][number]['path']): string {
  return `${PATH_MARKS[path].label}: ${PATH_MARKS[path].description}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'share-chart': ShareChart;
  }
}
