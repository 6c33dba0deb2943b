import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { controlStyles } from '#cells/shared/controls.ts';
import { scenarioSample } from '#cells/shared/scenario-sample.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import type { Stack, UnitSystem } from '#src/notebook/types.ts';
import type { StackColumn } from '../stack-columns.ts';
import { bounces, type SpringModel, springModel } from './spring-model.ts';
import './swing-picture.ts';

/** Swings per second of the fastest picture on the screen: slow enough to follow. */
const FASTEST_PER_S = 1.4;
const HIGHEST_BLOCK_px = 70;

interface Swinging {
  readonly column: StackColumn;
  readonly model: SpringModel;
  readonly frequency_Hz: number | undefined;
}

/**
 * The shown scenarios as masses on springs, side by side; on request they swing at their lowest resonance, all slowed
 * down alike, so that the higher f0 is seen to be the faster one. Who asks for less motion sees both ends instead.
 */
@customElement('swing-row')
export class SwingRow extends LitElement {
  static override styles = [
    controlStyles,
    css`
      .pictures {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(14.5rem, 1fr));
        gap: var(--space-4);
        align-items: end;
      }
      figure {
        margin: 0;
        break-inside: avoid;
      }
      figcaption {
        display: flex;
        align-items: flex-start;
        gap: var(--space-2);
        font-size: var(--size-small);
        overflow-wrap: anywhere;
      }
      b {
        white-space: nowrap;
      }
      figcaption svg {
        margin-top: 0.2em;
      }
      p {
        margin: var(--space-2) 0 var(--space-4);
      }
    `,
  ];

  @property({ attribute: false }) columns: readonly StackColumn[] = [];
  @property({ attribute: false }) stack!: Stack;
  @property() units: UnitSystem = 'SI';

  @state() private swinging = false;
  @state() private time_s = 0;

  #pictures: readonly Swinging[] = [];
  #frame = 0;
  readonly #still = matchMedia('(prefers-reduced-motion: reduce)');

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('columns') || changed.has('stack'))
      this.#pictures = this.columns.flatMap((column) => swingingOf(column, this.stack) ?? []);
  }

  override render() {
    const heaviest = Math.max(1, ...this.#pictures.flatMap((p) => p.model.masses.map((m) => m.surfaceMass_kg_m2)));
    const slowed = this.#slowed;
    const moving = this.swinging && !this.#still.matches;
    return html`
      <div class="pictures">
        ${this.#pictures.map(({ column: { scenario }, model, frequency_Hz }) => {
          const phase = moving && frequency_Hz ? Math.sin((2 * Math.PI * frequency_Hz * this.time_s) / slowed) : 0;
          return html`
            <figure>
              <swing-picture
                .model=${model}
                .frequency_Hz=${frequency_Hz}
                .phase=${phase}
                .ends=${this.swinging && this.#still.matches}
                .massScale=${HIGHEST_BLOCK_px / heaviest}
                .units=${this.units}
                .name=${scenario.name}
              ></swing-picture>
              <figcaption>
                ${scenarioSample(scenario)}
                <span
                  >${scenario.name}${
                    frequency_Hz === undefined ? ': nothing bounces' : html`: <b>f0 = ${hertzText(frequency_Hz)}</b>`
                  }</span
                >
              </figcaption>
            </figure>
          `;
        })}
      </div>
      <p class="note">
        <button type="button" class="screen-only" aria-pressed=${this.swinging} @click=${this.#onToggle}>
          ${this.swinging ? 'Stop' : 'Swing'}
        </button>
        ${
          moving
            ? html`Slowed down ${Math.round(slowed)} times, all alike.`
            : html`Blocks are as high as the leaves are heavy; joists and fill are in none of them. Stiffness is that of the
              spring at rest.`
        }
        ${this.swinging && this.#still.matches ? html`Dashed: both ends of the swing.` : nothing}
      </p>
    `;
  }

  get #slowed(): number {
    return Math.max(1, ...this.#pictures.map((p) => p.frequency_Hz ?? 0)) / FASTEST_PER_S;
  }

  #onToggle = () => {
    if (this.swinging) this.#stop();
    else {
      this.swinging = true;
      const began = performance.now();
      const step = (now: number) => {
        this.time_s = (now - began) / 1000;
        this.#frame = requestAnimationFrame(step);
      };
      if (!this.#still.matches) this.#frame = requestAnimationFrame(step);
    }
  };

  #stop(): void {
    cancelAnimationFrame(this.#frame);
    this.swinging = false;
  }
}

/** Undefined where there is nothing to draw yet: no construction, or one that the engine refuses. */
function swingingOf(column: StackColumn, stack: Stack): Swinging | undefined {
  const { construction, result } = column;
  if (!construction || !result.prediction) return undefined;
  try {
    const model = springModel(construction, stack);
    const modes = bounces(result.prediction.resonances_Hz);
    // The prediction may be older than the construction by a frame: another number of leaves has other modes.
    const fits = modes.length === model.springs.length;
    return { column, model, frequency_Hz: fits ? modes[0]?.frequency_Hz : undefined };
  } catch {
    return undefined;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'swing-row': SwingRow;
  }
}
