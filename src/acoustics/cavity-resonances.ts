import type { Air } from './air.ts';
import { type AirInBays, keptShare, outsideKx2 } from './air-in-bays.ts';
import { cavityLossFactor } from './cavity-loss.ts';
import type { CrowdedNodes } from './crowded-nodes.ts';
import type { CavityModel, FloorModel } from './floor-model.ts';
import { naturalFrequency_Hz } from './natural-frequency.ts';

/** Half-width in √(s² − 1) of what happens where waves begin to fade inside a cavity. */
const FADING = 0.5;
const LEAST_FADING = 0.05;

/** Waves closer to grazing than this, by kz/k0, carry too little for the leaves' bounce there to tell; less without fill. */
const GRAZING = { filled: 0.1, empty: 0.03 };

/** Filled to more than this share, a cavity has no sharp resonance across its depth. */
export const DAMPED_SHARE = 0.25;

/** Most resonances across one cavity that are looked after: all of up to 1.5 m. */
export const MOST_MODES = 64;

/** Half-width that fill on part of the depth gives, relative. */
const PARTLY_FILLED = 0.15;

/**
 * Where along s² = k²/k0² cavities resonate at one frequency: the leaves on their air at kz/k0 = f0/f, and across their
 * depth at kz/k0 = nc/(2df) inside. Between joists only part of kx² counts, so that some of these waves run slower than sound
 * outside; there, with fill, the leaves resonate about where waves begin to fade inside. Cavities filled to more than half
 * have no sharp resonance, those filled to some part the first alone.
 */
export class CavityResonances {
  count = 0;
  readonly s2: Float64Array;
  /** Half-widths along s². */
  readonly width2: Float64Array;
  readonly #model: FloorModel;
  readonly #cavities: readonly Resonator[];

  constructor(model: FloorModel) {
    this.#model = model;
    this.#cavities = resonators(model);
    this.s2 = new Float64Array(this.#cavities.length * (2 + MOST_MODES));
    this.width2 = new Float64Array(this.s2.length);
  }

  at(f_Hz: number): this {
    const { air } = this.#model;
    const k0 = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
    const k02 = k0 * k0;
    this.count = 0;
    for (const { layer, bounce_Hz, filled } of this.#cavities) {
      const fading2 = outsideKx2(layer.bays, k02) / k02 - 1;
      if (fading2 > LEAST_FADING) this.#add(1 + fading2, 2 * Math.sqrt(fading2) * FADING);
      if (filled > 0.5) continue;
      const loss = filled > 0 ? PARTLY_FILLED : cavityLossFactor(f_Hz, layer, this.#model);
      if (bounce_Hz > (filled > 0 ? GRAZING.filled : GRAZING.empty) * f_Hz) {
        this.#resonate(bounce_Hz / f_Hz, loss, layer.bays, k02);
      }
      if (filled > DAMPED_SHARE) continue;
      const fitting = (2 * layer.depth_m * f_Hz) / air.soundSpeed_m_s;
      const most = Math.min(Math.floor(fitting), MOST_MODES);
      for (let n = 1; n <= most; n++) this.#resonate(n / fitting, loss, layer.bays, k02);
    }
    return this;
  }

  /** @param inside kz/k0 of the resonance, from 1 on there is none. */
  #resonate(inside: number, loss: number, bays: AirInBays, k02: number): void {
    if (inside >= 1) return;
    const kx2 = outsideKx2(bays, k02 * (1 - inside * inside));
    this.#add(kx2 / k02, (loss * inside * inside) / keptShare(bays, kx2));
  }

  #add(s2: number, width2: number): void {
    this.s2[this.count] = s2;
    this.width2[this.count++] = width2;
  }

  /** Breaks nodes in √|1 − s²| on one side of the speed of sound: cos θ of the 'fast' waves, √(s² − 1) of the 'slow'. */
  breakSide(nodes: CrowdedNodes, side: 'fast' | 'slow'): void {
    for (let j = 0; j < this.count; j++) {
      const s2 = this.s2[j]!;
      if (s2 < 1 !== (side === 'fast')) continue;
      const place = Math.sqrt(Math.abs(1 - s2));
      nodes.breakAt(place, this.width2[j]! / (2 * Math.max(place, 0.05)));
    }
  }
}

interface Resonator {
  readonly layer: CavityModel;
  readonly bounce_Hz: number;
  readonly filled: number;
}

function resonators({ interlayers, plates, air }: FloorModel): Resonator[] {
  return interlayers.flatMap((layer, i) => {
    if (layer.kind === 'mat') return [];
    const stiffness = (air.density_kg_m3 * air.soundSpeed_m_s * air.soundSpeed_m_s) / layer.depth_m;
    const inverseMass = 1 / plates[i]!.surfaceMass_kg_m2 + 1 / plates[i + 1]!.surfaceMass_kg_m2;
    const bounce_Hz = naturalFrequency_Hz(stiffness, 1 / inverseMass);
    return [{ layer, bounce_Hz, filled: filledShare(layer) }];
  });
}

/** First resonance across a cavity, half a wave in its depth, c/2d, Hz. */
export function firstAcross_Hz({ depth_m }: CavityModel, { soundSpeed_m_s }: Air): number {
  return soundSpeed_m_s / (2 * depth_m);
}

/** Part of the depth that holds fibre, 0–1. */
export function filledShare({ fluids, depth_m }: CavityModel): number {
  return fluids.reduce((sum, f) => sum + (f.flowResistivity_Pa_s_m2 === undefined ? 0 : f.thickness_m), 0) / depth_m;
}
