import { css, html, LitElement, nothing, type SVGTemplateResult, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { hertzText } from '#src/charts/hertz-text.ts';
import { wrapText } from '#src/charts/wrap-text.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { drawingStyles } from '../drawing-styles.ts';
import { modeShape } from './mode-shape.ts';
import type { SpringModel } from './spring-model.ts';

const WIDTH = 230;
const BLOCK_WIDTH = 72;
const SPRING = 60;
const SWING = 11;
const MARGIN = SWING + 6;
const THINNEST = 7;

/** Masses on springs, drawn at `phase` of the swing; blocks are as high as their mass is large. */
@customElement('swing-picture')
export class SwingPicture extends LitElement {
  static override styles = [
    drawingStyles,
    css`
    .mass {
      fill: var(--paper-sunk);
      stroke: var(--ink);
    }
    .spring {
      fill: none;
      stroke: var(--ink);
      stroke-width: 1.25;
      stroke-linejoin: round;
    }
    .ghost {
      fill: none;
      stroke: var(--ink-soft);
      stroke-dasharray: 3 2;
    }
    .strong {
      fill: var(--ink);
      font-weight: 600;
    }
    `,
  ];

  @property({ attribute: false }) model: SpringModel | undefined;
  /** The resonance it swings at; undefined where nothing bounces. */
  @property({ attribute: false }) frequency_Hz: number | undefined;
  /** −1 to 1: how far the swing is; 0 at rest. */
  @property({ type: Number }) phase = 0;
  /** Shows both ends of the swing at once instead of moving. */
  @property({ type: Boolean }) ends = false;
  /** Pixels per kg/m², the same for pictures side by side. */
  @property({ type: Number }) massScale = 1;
  @property() units: UnitSystem = 'SI';
  @property() name = '';

  override render() {
    const { model, frequency_Hz } = this;
    if (!model) return nothing;
    const heights = model.masses.map((m) => Math.max(THINNEST, m.surfaceMass_kg_m2 * this.massScale));
    const tops = heights.map((_, i) => MARGIN + heights.slice(0, i).reduce((sum, h) => sum + h + SPRING, 0));
    const height = tops.at(-1)! + heights.at(-1)! + MARGIN;
    const shape =
      frequency_Hz === undefined
        ? heights.map(() => 0)
        : modeShape(
            model.masses.map((m) => m.surfaceMass_kg_m2),
            model.springs.map((s) => s.stiffness_N_m3),
            frequency_Hz,
          );
    const at = tops.map((y, i) => y + SWING * this.phase * shape[i]!);
    return html`
      <svg
        role="img"
        aria-label=${this.#sentence(model)}
        width=${WIDTH}
        height=${height}
        viewBox="0 0 ${WIDTH} ${height}"
      >
        ${model.springs.map((spring, i) =>
          this.#renderSpring(spring, at[i]! + heights[i]!, at[i + 1]!, tops[i]! + heights[i]!),
        )}
        ${model.masses.map(({ name, surfaceMass_kg_m2 }, i) => {
          const ghosts = this.ends ? [-1, 1].map((end) => tops[i]! + end * SWING * shape[i]!) : [];
          return svg`
            ${ghosts.map(
              (y) => svg`<rect class="ghost" x="1" y=${y} width=${BLOCK_WIDTH} height=${heights[i]!}></rect>`,
            )}
            <rect class="mass" x="1" y=${at[i]!} width=${BLOCK_WIDTH} height=${heights[i]!}></rect>
            <text x=${BLOCK_WIDTH + 12} y=${tops[i]! + heights[i]! / 2 + 4}>
              <tspan class="strong">${shortened(name)}</tspan>
              <tspan> ${formatQuantity(surfaceMass_kg_m2, 'surface-mass', this.units)}</tspan>
            </text>`;
        })}
      </svg>
    `;
  }

  #renderSpring(
    { name, stiffness_N_m3 }: SpringModel['springs'][number],
    from: number,
    to: number,
    rest: number,
  ): SVGTemplateResult {
    const lines = [...wrapText(name, 24).slice(0, 2), formatQuantity(stiffness_N_m3, 'dynamic-stiffness', this.units)];
    const middle = rest + SPRING / 2 + 4;
    return svg`
      ${[0.3, 0.7].map((x) => svg`<path class="spring" d=${springPath(1 + x * BLOCK_WIDTH, from, to)}></path>`)}
      ${lines.map(
        (line, k) => svg`<text x=${BLOCK_WIDTH + 12} y=${middle + 13 * (k - (lines.length - 1) / 2)}>${line}</text>`,
      )}
    `;
  }

  #sentence({ masses, springs }: SpringModel): string {
    const parts = masses.map(({ name, surfaceMass_kg_m2 }, i) => {
      const spring = springs[i];
      return `${name} of ${formatQuantity(surfaceMass_kg_m2, 'surface-mass', this.units)}${spring ? ` on ${spring.name}` : ''}`;
    });
    const f0 = this.frequency_Hz === undefined ? '' : `, f0 = ${hertzText(this.frequency_Hz)}`;
    return `${this.name} as masses on springs: ${parts.join(', ')}${f0}.`;
  }
}

const LONGEST_NAME = 16;

function shortened(name: string): string {
  return name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name;
}

function springPath(x: number, from: number, to: number): string {
  const turns = 7;
  const straight = 5;
  const step = (to - from - 2 * straight) / turns;
  const zigzag = Array.from(
    { length: turns },
    (_, i) => `L${x + (i % 2 ? -7 : 7)} ${from + straight + (i + 0.5) * step}`,
  );
  return `M${x} ${from}V${from + straight}${zigzag.join('')}L${x} ${to - straight}V${to}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'swing-picture': SwingPicture;
  }
}
