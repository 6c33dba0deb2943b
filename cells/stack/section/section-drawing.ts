import { css, html, LitElement, nothing, type SVGTemplateResult, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { spreadLabels } from '#src/charts/place-labels.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatValue } from '#src/quantities/format-quantity.ts';
import { drawingStyles } from '../drawing-styles.ts';
import { hatchGround, hatchStrokes } from './hatch-strokes.ts';
import { insulationPath } from './insulation-path.ts';
import type { Box, Dimension, Line, Origin, Section, Shape } from './section.ts';

/** Which layer the pointer is over; undefined where it is over none. Bubbles and leaves shadow roots. */
export class LayerPoint extends Event {
  static readonly type = 'layer-point';
  readonly origin: Origin | undefined;
  /** True when the layer was clicked, not only passed. */
  readonly chosen: boolean;

  constructor(origin: Origin | undefined, chosen = false) {
    super(LayerPoint.type, { bubbles: true, composed: true });
    this.origin = origin;
    this.chosen = chosen;
  }
}

/** Width beside the section for the chain of dimensions, px. */
export const DIMENSION_WIDTH_px = 66;
const LABEL_px = 13;

/** A cross-section to scale with its chain of dimensions. */
@customElement('section-drawing')
export class SectionDrawing extends LitElement {
  static override styles = [
    drawingStyles,
    css`
    .cut {
      overflow: hidden;
    }
    .hatch {
      fill: none;
      stroke: var(--ink-soft);
      stroke-linecap: round;
    }
    .edge {
      fill: none;
      stroke: var(--ink);
      stroke-width: 0.9;
    }
    .thin {
      stroke: var(--ink-soft);
      stroke-width: 0.6;
      fill: none;
    }
    .steel {
      stroke-width: 1.6;
    }
    .assumed {
      stroke-dasharray: 3 2;
    }
    .loops {
      fill: none;
      stroke: var(--ink-faint);
      stroke-width: 0.8;
    }
    .reach {
      fill: transparent;
    }
    .lit {
      fill: var(--accent);
      fill-opacity: 0.22;
      pointer-events: none;
    }
    .dimension {
      stroke: var(--ink-soft);
      stroke-width: 0.75;
      fill: none;
    }
    .lit-text {
      fill: var(--accent);
      font-weight: 600;
    }
    `,
  ];

  @property({ attribute: false }) section: Section | undefined;
  /** Pixels per metre. */
  @property({ type: Number }) scale = 300;
  @property() units: UnitSystem = 'SI';
  @property({ attribute: false }) lit: Origin | undefined;
  /** One sentence that says what the section shows. */
  @property() label = '';

  override render() {
    const { section, scale } = this;
    if (!section) return nothing;
    const width = section.width_m * scale;
    const height = section.height_m * scale;
    const pad = Math.max(8, (section.dimensions.length * LABEL_px - height) / 2 + 8);
    return html`
      <svg
        role="img"
        aria-label=${this.label}
        width=${width + DIMENSION_WIDTH_px}
        height=${height + 2 * pad}
        viewBox="0 ${-pad} ${width + DIMENSION_WIDTH_px} ${height + 2 * pad}"
        @pointerover=${this.#onOver}
        @pointerleave=${this.#onLeave}
        @click=${this.#onClick}
      >
        ${section.shapes.map((shape) => this.#renderShape(shape, section))}
        ${section.dimensions.map((d) => this.#renderReach(d, width))}
        ${this.#renderDimensions(section, width, pad)}
      </svg>
    `;
  }

  #renderShape(shape: Shape, section: Section): SVGTemplateResult {
    return shape.shape === 'box' ? boxShape(shape, section, this.scale) : lineShape(shape, this.scale);
  }

  /** What the pointer meets: the whole layer, whatever is drawn in it. */
  #renderReach(dimension: Dimension, width: number): SVGTemplateResult {
    const { from_m, to_m, layer, sheet } = dimension;
    return svg`<rect
      class=${sameOrigin(this.lit, dimension) ? 'lit' : 'reach'}
      x="0" y=${from_m * this.scale} width=${width} height=${(to_m - from_m) * this.scale}
      data-layer=${layer ?? ''} data-sheet=${sheet ?? ''}></rect>`;
  }

  #renderDimensions({ dimensions, height_m }: Section, width: number, pad: number): SVGTemplateResult {
    const { scale, units } = this;
    const x = width + 10;
    const levels = [0, ...dimensions.map((d) => d.to_m)].map((y_m) => y_m * scale);
    const middles = dimensions.map((d) => ((d.from_m + d.to_m) / 2) * scale);
    const places = spreadLabels(middles, {
      gap: LABEL_px,
      low: -pad + LABEL_px / 2,
      high: height_m * scale + pad - LABEL_px / 2,
    });
    return svg`
      <path class="dimension" d="M${x} 0V${height_m * scale}${levels
        .map((y) => `M${x - 3} ${y + 3}L${x + 3} ${y - 3}`)
        .join('')}"></path>
      ${dimensions.map((d, i) => {
        const moved = Math.abs(places[i]! - middles[i]!) > 1;
        return svg`
          ${
            moved
              ? svg`<path class="dimension" stroke-opacity="0.6" d="M${x} ${middles[i]}L${x + 9} ${places[i]}"></path>`
              : nothing
          }
          <text class=${sameOrigin(this.lit, d) ? 'lit-text' : ''} x=${x + 12} y=${places[i]! + 4}>${formatValue(
            d.to_m - d.from_m,
            'length',
            units,
          )}</text>`;
      })}
    `;
  }

  #onOver = (event: PointerEvent) => {
    this.dispatchEvent(new LayerPoint(originAt(event)));
  };

  #onLeave = () => {
    this.dispatchEvent(new LayerPoint(undefined));
  };

  #onClick = (event: MouseEvent) => {
    const origin = originAt(event);
    if (origin) this.dispatchEvent(new LayerPoint(origin, true));
  };
}

export function sameOrigin(a: Origin | undefined, b: Origin | undefined): boolean {
  return a !== undefined && b !== undefined && a.layer === b.layer && (a.sheet ?? b.sheet) === (b.sheet ?? a.sheet);
}

function originAt({ target }: Event): Origin | undefined {
  const { layer, sheet } = (target as SVGElement).dataset;
  if (layer === undefined) return undefined;
  return { ...(layer !== '' && { layer: Number(layer) }), ...(sheet && { sheet: Number(sheet) }) };
}

/** What runs on to both sides has no sides: only its upper and lower edges are drawn. */
function boxShape(box: Box, section: Section, scale: number): SVGTemplateResult {
  const { part, hatch } = box;
  const [x, y, width, height] = [box.x_m, box.y_m, box.width_m, box.height_m].map((v) => v * scale) as Quad;
  const right = x + width;
  const bottom = y + height;
  if (part === 'fill')
    return svg`<svg class="cut" x=${x} y=${y} width=${width} height=${height}>
      <path class="loops" d=${insulationPath(0, 0, width, height)}></path></svg>`;
  if (part === 'hanger-spring') return svg`<path class="edge" d=${springPath(x, y, width, height)}></path>`;
  const runsOn = box.width_m >= section.width_m;
  const edge = runsOn ? `M${x} ${y}H${right}M${x} ${bottom}H${right}` : `M${x} ${y}H${right}V${bottom}H${x}Z`;
  const crossed = part === 'joist' || part === 'joist-flange' || part === 'ceiling-joist';
  return svg`
    <rect x=${x} y=${y} width=${width} height=${height} fill=${hatchGround(hatch)}></rect>
    ${
      crossed
        ? svg`<path class="thin" d="M${x} ${y}L${right} ${bottom}M${right} ${y}L${x} ${bottom}"></path>`
        : svg`<svg class="cut" x=${x} y=${y} width=${width} height=${height}>${hatchStrokes(hatch, {
            width,
            height,
          }).map((strokes) => svg`<path class="hatch" d=${strokes.d} stroke-width=${strokes.width}></path>`)}</svg>`
    }
    <path class="edge ${part === 'ceiling-joist' ? 'assumed' : ''}" d=${edge}></path>`;
}

type Quad = [x: number, y: number, width: number, height: number];

function lineShape({ part, points_m }: Line, scale: number): SVGTemplateResult {
  const d = points_m.map(([x, y], i) => `${i ? 'L' : 'M'}${x * scale} ${y * scale}`).join('');
  if (part === 'screw') return svg`<path class="edge" d=${d}></path>`;
  return svg`<path class="edge ${part === 'joist' ? 'steel' : ''} ${part === 'wire' ? 'assumed' : ''}" d=${d}></path>`;
}

function springPath(x: number, y: number, width: number, height: number): string {
  const turns = 4;
  const step = height / (2 * turns);
  const zigzag = Array.from({ length: 2 * turns - 1 }, (_, i) => `L${x + (i % 2 ? 0 : width)} ${y + (i + 1) * step}`);
  return `M${x + width / 2} ${y}${zigzag.join('')}L${x + width / 2} ${y + height}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'section-drawing': SectionDrawing;
  }
  interface HTMLElementEventMap {
    'layer-point': LayerPoint;
  }
}
