import { html, LitElement, nothing, type PropertyValues, render, svg, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bandLabel } from './band-axis.ts';
import { bandChartStyles } from './band-chart-styles.ts';
import { type BandChartData, type BandOverlay, type BandSeries, levelText } from './band-data.ts';
import { type BandFrame, bandFrame } from './band-frame.ts';
import { drawBandPlot, frequencyLabelRows } from './band-plot.ts';
import { lineSample } from './line-sample.ts';
import { OnceAFrame } from './once-a-frame.ts';
import type { PictureParts } from './picture-file.ts';
import { RangeKeeper } from './range-keeper.ts';
import { wantedRange } from './steady-range.ts';

/**
 * Curves over one-third-octave bands with a key that is also the readout: it tells every curve's value at the pinned
 * band, and at the band under the pointer. The pinned band moves by click and by the arrow keys.
 *
 * Give `data` as a new object whenever anything in it changed.
 */
@customElement('band-chart')
export class BandChart extends LitElement {
  static override styles = bandChartStyles;

  @property({ attribute: false }) data: BandChartData = EMPTY;
  /** One sentence that says what the picture shows. */
  @property() label = '';
  /** A newer result is on its way; the curves that stand are the last good ones. */
  @property({ type: Boolean }) busy = false;

  @state() private pinned_Hz = 500;
  @state() private pointed: number | undefined;
  @state() private width = 0;

  #frame: BandFrame | undefined;
  #drawing: SVGSVGElement | undefined;
  readonly #frames = new OnceAFrame();
  readonly #keeper = new RangeKeeper(this);
  readonly #sizes = new ResizeObserver(([entry]) => {
    const width = Math.round(entry?.contentRect.width ?? 0);
    if (width > 0) this.width = width;
  });

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

  override connectedCallback(): void {
    super.connectedCallback();
    this.#sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes.disconnect();
  }

  protected override async scheduleUpdate(): Promise<void> {
    await this.#frames.turn();
    await super.scheduleUpdate();
  }

  override willUpdate(changed: PropertyValues): void {
    if (this.width === 0 || this.data.bands_Hz.length === 0) return;
    const range = this.#keeper.range(rangeOf(this.data), this.data.valueLabel);
    const still = !changed.has('data') && !changed.has('label') && !changed.has('width');
    if (this.#drawing && still && range === this.#frame?.range) return;
    this.#frame = frameOf(this.data, this.width, range);
    this.#drawing = drawBandPlot(this.data, this.#frame, this.label, this.ownerDocument);
  }

  override render() {
    return html`
      <figure>
        <div class="picture" aria-busy=${this.busy}>
          ${this.#drawing} ${this.#frame ? this.#renderLive(this.#frame) : nothing}
        </div>
        ${this.#renderKey()}
      </figure>
    `;
  }

  get #pinned(): number {
    const { bands_Hz } = this.data;
    const exact = bands_Hz.indexOf(this.pinned_Hz);
    return exact >= 0 ? exact : Math.floor(bands_Hz.length / 2);
  }

  #renderLive(frame: BandFrame) {
    const { bands_Hz, valueLabel } = this.data;
    return html`
      <span class="value-label">${valueLabel}</span>
      <span class="axis-label" style="left: ${frame.left}px">one-third-octave band, Hz</span>
      <svg class="live" viewBox="0 0 ${frame.width} ${frame.height}" aria-hidden="true">
        ${this.#renderMarker(frame, this.#pinned, 'pinned')}
        ${this.pointed === undefined ? nothing : this.#renderMarker(frame, this.pointed, 'pointer')}
      </svg>
      <div
        class="reach"
        tabindex="0"
        role="slider"
        aria-label="Band that is read"
        aria-valuemin="0"
        aria-valuemax=${bands_Hz.length - 1}
        aria-valuenow=${this.#pinned}
        aria-valuetext=${this.#readout(this.#pinned)}
        @pointermove=${this.#onPoint}
        @pointerdown=${this.#onPoint}
        @pointerleave=${this.#onLeave}
        @click=${this.#onPin}
        @keydown=${this.#onKey}
      ></div>
    `;
  }

  #renderMarker(frame: BandFrame, index: number, kind: 'pinned' | 'pointer') {
    const x = frame.xOfBand(index);
    const points = this.data.series.flatMap(({ values_dB, mark }) => {
      const value = values_dB[index] ?? Number.NaN;
      return Number.isFinite(value) ? [{ y: frame.y(value), color: mark.color }] : [];
    });
    return svg`
      <line class=${kind} x1=${x} x2=${x} y1=${frame.top - 2} y2=${frame.bottom + 5}></line>
      <text x=${x} y=${frame.bottom + 17}>${bandLabel(this.data.bands_Hz[index]!)}</text>
      ${points.map(({ y, color }) => svg`<circle cx=${x} cy=${y} r="4" stroke=${color}></circle>`)}
    `;
  }

  /** Where there is room the band under the pointer has a column of its own, kept free while there is no pointer. */
  #renderKey() {
    const { series, overlays } = this.data;
    const pointed = this.pointed ?? this.#pinned;
    const columns =
      this.width < NARROW_px
        ? [{ index: pointed, idle: false }]
        : [
            { index: pointed, idle: this.pointed === undefined },
            { index: this.#pinned, idle: false },
          ];
    return html`
      <table class="key">
        <caption class="visually-hidden">
          Key to the curves, with their values at the band that is read
        </caption>
        <thead>
          <tr>
            <td></td>
            ${columns.map(
              ({ index, idle }) => html`<th scope="col" class="level" ?data-idle=${idle}>at ${this.#band(index)}</th>`,
            )}
          </tr>
        </thead>
        <tbody>
          ${series.map((one) => this.#renderSeries(one, columns))}
          ${overlays.map(
            (overlay) => html`
              <tr>
                <th scope="row" colspan="3" class="remark">
                  <span class="name">${overlaySample(overlay)}<span>${overlay.description}</span></span>
                </th>
              </tr>
            `,
          )}
        </tbody>
      </table>
    `;
  }

  #renderSeries(
    { label, values_dB, mark, note }: BandSeries,
    columns: readonly { readonly index: number; readonly idle: boolean }[],
  ) {
    const remark = note ? html` <span class="remark">${note}</span>` : nothing;
    return html`
      <tr>
        <th scope="row">
          <span class="name">${lineSample(mark)}<span>${label}${remark}</span></span>
        </th>
        ${columns.map(
          ({ index, idle }) => html`
            <td class="level" ?data-idle=${idle}>${levelText(values_dB[index], this.data.zeroLine)} dB</td>
          `,
        )}
      </tr>
    `;
  }

  #band(index: number): string {
    const band = this.data.bands_Hz[index];
    return band === undefined ? '' : `${bandLabel(band)} Hz`;
  }

  #readout(index: number): string {
    const { series, zeroLine } = this.data;
    const values = series.map(({ label, values_dB }) => `${label} ${levelText(values_dB[index], zeroLine)} dB`);
    return `${this.#band(index)}: ${values.join(', ')}`;
  }

  #indexAt({ clientX, currentTarget }: MouseEvent): number {
    const { left, width } = (currentTarget as Element).getBoundingClientRect();
    const frame = this.#frame!;
    return frame.bandAt(((clientX - left) * frame.width) / width);
  }

  #onPoint = (event: PointerEvent) => {
    this.pointed = this.#indexAt(event);
  };

  #onLeave = () => {
    this.pointed = undefined;
  };

  #onPin = (event: MouseEvent) => {
    this.#pin(this.#indexAt(event));
  };

  #onKey = (event: KeyboardEvent) => {
    const last = this.data.bands_Hz.length - 1;
    const target = KEYS[event.key]?.(this.#pinned, last);
    if (target === undefined) return;
    event.preventDefault();
    this.#pin(Math.min(last, Math.max(0, target)));
  };

  #pin(index: number): void {
    this.pinned_Hz = this.data.bands_Hz[index]!;
  }
}

/** Below this width the key has one column of values. */
const NARROW_px = 480;

const EMPTY: BandChartData = { bands_Hz: [], valueLabel: '', series: [], overlays: [], zeroLine: false };

/** Arrow keys go by a band, page keys by an octave. */
const KEYS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowLeft: (at) => at - 1,
  ArrowDown: (at) => at - 1,
  ArrowRight: (at) => at + 1,
  ArrowUp: (at) => at + 1,
  PageDown: (at) => at - 3,
  PageUp: (at) => at + 3,
  Home: () => 0,
  End: (_at, last) => last,
};

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

/** A sample of the key, outside the page. */
function svgOf(sample: TemplateResult): SVGSVGElement {
  const place = document.createElement('div');
  render(sample, place);
  return place.querySelector('svg')!;
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
