import { html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { bandLabel } from './band-axis.ts';
import { type BandChartData, type BandOverlay, levelWithUnit } from './band-data.ts';
import { type BandFrame, bandFrame } from './band-frame.ts';
import { bandKey, NARROW_px } from './band-key.ts';
import { bandLine } from './band-line.ts';
import { drawBandPlot, frequencyLabelRows } from './band-plot.ts';
import { BandPointer, type PointedChart } from './band-pointer.ts';
import { chartStyles } from './chart-styles.ts';
import { lineSample } from './line-sample.ts';
import { OnceAFrame } from './once-a-frame.ts';
import { type PictureParts, svgOf } from './picture-file.ts';
import { RangeKeeper } from './range-keeper.ts';
import { wantedRange } from './steady-range.ts';
import { WidthKeeper } from './width-keeper.ts';

/**
 * Curves over one-third-octave bands with a key that is also the readout: it tells every curve's value at the pinned
 * band, and at the band under the pointer. The pinned band moves by click and by the arrow keys.
 *
 * Give `data` as a new object whenever anything in it changed.
 */
@customElement('band-chart')
export class BandChart extends LitElement implements PointedChart {
  static override styles = chartStyles;

  @property({ attribute: false }) data: BandChartData = EMPTY;
  /** One sentence that says what the picture shows. */
  @property() label = '';
  /** A newer result is on its way; the curves that stand are the last good ones. */
  @property({ type: Boolean }) busy = false;

  /** Where things stand in the picture; undefined before the first drawing. */
  frame: BandFrame | undefined;
  #drawing: SVGSVGElement | undefined;
  readonly #frames = new OnceAFrame();
  readonly #keeper = new RangeKeeper(this);
  readonly #size = new WidthKeeper(this);
  readonly #pointer = new BandPointer(this);

  /** The still layer: curves and overlays, without what follows the pointer. */
  get picture(): SVGSVGElement | undefined {
    return this.#drawing;
  }

  /** The still picture with its key as parts of a file; undefined while nothing is drawn. */
  pictureParts(title: string, notes: readonly string[]): PictureParts | undefined {
    const { series, overlays, valueLabel } = this.data;
    if (!this.#drawing) return undefined;
    const entries = [
      ...series.map(({ mark, label, note }) => ({
        shape: lineSample(mark),
        text: note ? `${label} (${note})` : label,
      })),
      ...overlays.map((overlay) => ({ shape: overlaySample(overlay), text: overlay.description })),
    ];
    return {
      title,
      subtitle: `${valueLabel}, over one-third-octave bands, Hz`,
      picture: this.#drawing,
      key: entries.map(({ shape, text }) => ({ sample: svgOf(shape), text })),
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
    if (width === 0 || this.data.bands_Hz.length === 0) return;
    const range = this.#keeper.range(rangeOf(this.data), this.data.valueLabel);
    const still = !changed.has('data') && !changed.has('label') && width === this.frame?.width;
    if (this.#drawing && still && range === this.frame?.range) return;
    this.frame = frameOf(this.data, width, range);
    this.#drawing = drawBandPlot(this.data, this.frame, this.label, this.ownerDocument);
  }

  override render() {
    return html`
      <figure>
        <div class="picture" aria-busy=${this.busy}>
          ${this.#drawing} ${this.frame ? this.#renderLive(this.frame) : nothing}
        </div>
        ${this.#renderKey()}
      </figure>
    `;
  }

  #renderLive(frame: BandFrame) {
    const { pinned, pointed } = this.#pointer;
    return html`
      <span class="value-label">${this.data.valueLabel}</span>
      <span class="axis-label" style="left: ${frame.left}px">one-third-octave band, Hz</span>
      <svg class="live" viewBox="0 0 ${frame.width} ${frame.height}" aria-hidden="true">
        ${this.#renderMarker(frame, pinned, 'pinned')}
        ${pointed === undefined ? nothing : this.#renderMarker(frame, pointed, 'pointer')}
      </svg>
      ${this.#pointer.reach((index) => this.#readout(index))}
    `;
  }

  #renderMarker(frame: BandFrame, index: number, kind: 'pinned' | 'pointer') {
    const points = this.data.series.flatMap(({ values_dB, mark }) => {
      const value = values_dB[index] ?? Number.NaN;
      return Number.isFinite(value) ? [{ y: frame.y(value), color: mark.color }] : [];
    });
    return svg`
      ${bandLine(frame, index, kind)}
      ${points.map(({ y, color }) => svg`<circle cx=${frame.xOfBand(index)} cy=${y} r="4" stroke=${color}></circle>`)}
    `;
  }

  #renderKey() {
    const { bands_Hz, series, overlays, zeroLine } = this.data;
    return bandKey({
      bands_Hz,
      caption: 'Key to the curves, with their values at the band that is read',
      rows: series.map(({ label, mark, note, values_dB }) => ({
        sample: lineSample(mark),
        label,
        note,
        value: (index) => levelWithUnit(values_dB[index], zeroLine),
      })),
      remarks: overlays.map((overlay) => ({ sample: overlaySample(overlay), text: overlay.description })),
      pinned: this.#pointer.pinned,
      pointed: this.#pointer.pointed,
      narrow: this.#size.width < NARROW_px,
    });
  }

  #readout(index: number): string {
    const { bands_Hz, series, zeroLine } = this.data;
    const values = series.map(({ label, values_dB }) => `${label} ${levelWithUnit(values_dB[index], zeroLine)}`);
    return `${bandLabel(bands_Hz[index]!)} Hz: ${values.join(', ')}`;
  }
}

const EMPTY: BandChartData = { bands_Hz: [], valueLabel: '', series: [], overlays: [], zeroLine: false };

/** Curves decide the range; what lies over them is cut off where it leaves it. */
function rangeOf({ series, zeroLine }: BandChartData) {
  const values = series.flatMap((s) => s.values_dB);
  return zeroLine
    ? wantedRange([...values, -1, 1], { step: 5, least: 20 })
    : wantedRange(values, { step: 10, least: 50 });
}

function frameOf(data: BandChartData, width: number, range: BandFrame['range']): BandFrame {
  const ends = data.overlays.flatMap((o) => (o.kind === 'line' ? [o.label.length] : []));
  const options = { width, bands_Hz: data.bands_Hz, range, rightLabels: ends.length ? 6.5 * Math.max(...ends) + 4 : 0 };
  const rows = frequencyLabelRows(data.overlays, bandFrame({ ...options, topRows: 0 }));
  return bandFrame({ ...options, topRows: rows.length ? Math.max(...rows) + 1 : 0 });
}

function overlaySample(overlay: BandOverlay) {
  switch (overlay.kind) {
    case 'range':
      return html`<svg class="line-sample" viewBox="0 0 36 12" width="36" height="12" style="flex: none" aria-hidden="true">
        ${svg`<rect width="36" height="12" fill=${overlay.color} fill-opacity="0.2"></rect>`}
      </svg>`;
    case 'contour':
      return lineSample({ color: 'var(--accent)', dash: '' });
    case 'line':
    case 'frequency':
      return lineSample({ color: 'var(--ink-soft)', dash: overlay.dash });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'band-chart': BandChart;
  }
}
