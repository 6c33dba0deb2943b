import { html, LitElement, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { bandLabel } from './band-axis.ts';
import type { BandFrame } from './band-frame.ts';
import { bandKey, type KeyRemark, type KeyRow, NARROW_px } from './band-key.ts';
import { bandLine } from './band-line.ts';
import { BandPointer, type PointedChart } from './band-pointer.ts';
import { chartStyles } from './chart-styles.ts';
import { OnceAFrame } from './once-a-frame.ts';
import { OutOfSight } from './out-of-sight.ts';
import type { PictureParts } from './picture-file.ts';
import { WidthKeeper } from './width-keeper.ts';

/**
 * What charts over bands have in common: a still picture drawn whole from data, at most once a frame and as wide as the
 * element; over it a live layer that shows which band is read; below it a key with the values there.
 *
 * Give `data` as a new object whenever anything in it changed.
 */
export abstract class DrawnChart<Data extends { readonly bands_Hz: readonly number[] }>
  extends LitElement
  implements PointedChart
{
  static override styles = chartStyles;

  @property({ attribute: false }) data: Data | undefined;
  /** One sentence that says what the picture shows. */
  @property() label = '';
  /** A newer result is on its way; what stands is the last good one. */
  @property({ type: Boolean }) busy = false;

  /** Where things stand in the picture; undefined before the first drawing. */
  frame: BandFrame | undefined;
  #drawing: SVGSVGElement | undefined;
  /** What the drawing shows. */
  #drawn: { readonly data: Data; readonly label: string } | undefined;
  readonly #frames = new OnceAFrame();
  readonly #size = new WidthKeeper(this);
  readonly #sight = new OutOfSight(this);
  readonly #pointer = new BandPointer(this);

  /** What the values are, with their unit. */
  protected abstract valueLabel(data: Data): string;
  /** Lays the picture out; the same range object means that nothing moved. */
  protected abstract layOut(data: Data, width: number, onPaper: boolean): BandFrame;
  protected abstract draw(data: Data, frame: BandFrame): SVGSVGElement;
  /** What is drawn over the picture besides the band lines. */
  protected abstract live(data: Data, frame: BandFrame): SVGTemplateResult;
  /** What marks a band that is read. */
  protected abstract mark(data: Data, frame: BandFrame, index: number): SVGTemplateResult | typeof nothing;
  protected abstract keyRows(data: Data): readonly KeyRow[];
  protected abstract keyRemarks(data: Data): readonly KeyRemark[];

  /** The still layer, without what follows the pointer. */
  get picture(): SVGSVGElement | undefined {
    return this.#drawing;
  }

  /** The still picture with its key as parts of a file; undefined while nothing is drawn. */
  pictureParts(title: string, notes: readonly string[]): PictureParts | undefined {
    const { data } = this;
    if (!this.#drawing || !data) return undefined;
    const rows = this.keyRows(data).map(({ sample, label, note }) => ({
      sample,
      text: note ? `${label}: ${note}` : label,
    }));
    return {
      title,
      subtitle: `${this.valueLabel(data)}, over one-third-octave bands, Hz`,
      picture: this.#drawing,
      key: [...rows, ...this.keyRemarks(data)],
      notes,
      style: getComputedStyle(this),
    };
  }

  protected override async scheduleUpdate(): Promise<void> {
    await this.#frames.turn();
    await super.scheduleUpdate();
  }

  protected override shouldUpdate(): boolean {
    return !this.#drawing || !this.#sight.mayWait();
  }

  protected override willUpdate(): void {
    const { data, label } = this;
    const { width, onPaper } = this.#size;
    if (width === 0 || !data?.bands_Hz.length) return;
    const frame = this.layOut(data, width, onPaper);
    const moved =
      frame.width !== this.frame?.width || frame.height !== this.frame.height || frame.range !== this.frame.range;
    if (!moved && data === this.#drawn?.data && label === this.#drawn.label) return;
    this.#drawn = { data, label };
    this.frame = frame;
    this.#drawing = this.draw(data, frame);
  }

  override render(): TemplateResult | typeof nothing {
    const { data, frame } = this;
    if (!data) return nothing;
    return html`
      <figure>
        <div class="picture" aria-busy=${this.busy}>
          ${this.#drawing} ${frame ? this.#renderLive(data, frame) : nothing}
        </div>
        ${bandKey({
          bands_Hz: data.bands_Hz,
          caption: 'Key to the picture, with the values at the band that is read',
          rows: this.keyRows(data),
          remarks: this.keyRemarks(data),
          pinned: this.#pointer.pinned,
          pointed: this.#pointer.pointed,
          narrow: this.#size.width < NARROW_px,
        })}
      </figure>
    `;
  }

  #renderLive(data: Data, frame: BandFrame) {
    const { pinned, pointed } = this.#pointer;
    return html`
      <span class="value-label">${this.valueLabel(data)}</span>
      <span class="axis-label" style="left: ${frame.left}px">one-third-octave band, Hz</span>
      <svg class="live" viewBox="0 0 ${frame.width} ${frame.height}" aria-hidden="true">
        ${this.live(data, frame)} ${this.#renderBand(data, frame, pinned, 'pinned')}
        ${pointed === undefined ? nothing : this.#renderBand(data, frame, pointed, 'pointer')}
      </svg>
      ${this.#pointer.reach((index) => this.#readout(data, index))}
    `;
  }

  #renderBand(data: Data, frame: BandFrame, index: number, kind: 'pinned' | 'pointer') {
    return svg`${bandLine(frame, index, kind)} ${this.mark(data, frame, index)}`;
  }

  #readout(data: Data, index: number): string {
    const values = this.keyRows(data).map(({ label, value }) => `${label} ${value(index)}`);
    return `${bandLabel(data.bands_Hz[index]!)} Hz: ${values.join(', ')}`;
  }
}
