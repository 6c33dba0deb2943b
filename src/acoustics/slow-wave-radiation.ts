import { edgeShape, type PlateEdges, perEdgeShape } from './resonant-radiation.ts';

/**
 * Radiation efficiency of waves slower than sound on a plate: its edges, never more than a panel forced along at grazing
 * incidence. `prepare` once per frequency, `ofShape` once per wave.
 */
export class EdgeRadiation {
  /** σ per `edgeShape`, and the most that σ may be. */
  protected scale = 0;
  protected cap = 0;

  /** @param grazing Radiation efficiency of the panel forced along at grazing incidence, finite and > 0. */
  prepare(k0_rad_m: number, plate: PlateEdges, grazing: number): this {
    this.scale = perEdgeShape(k0_rad_m, plate);
    this.cap = grazing;
    return this;
  }

  /** @param shape `edgeShape` of the wave, which is the same for all plates. */
  ofShape(shape: number): number {
    return Math.min(this.scale * shape, this.cap);
  }
}

/** The same with the waves for which the cap holds told beforehand. */
export class SlowWaveRadiation extends EdgeRadiation {
  /** r = √(μ² − 1) up to which the cap holds. */
  capRoot = 0;
  #surelyCapped = 0;

  override prepare(k0_rad_m: number, plate: PlateEdges, grazing: number): this {
    super.prepare(k0_rad_m, plate, grazing);
    // The edges' part is about 2 to 4 r⁻³ everywhere, which makes these steps short.
    let r = Math.cbrt((BETWEEN * this.scale) / grazing);
    for (let step = 0; step < CAP_STEPS; step++) {
      r *= Math.cbrt((this.scale * edgeShape(Math.sqrt(1 + r * r))) / grazing);
    }
    this.capRoot = r;
    this.#surelyCapped = Math.sqrt(1 + SURE * r * (SURE * r));
    return this;
  }

  /** @param mu k/k0 > 1. */
  at(mu: number): number {
    return mu < this.#surelyCapped ? this.cap : this.ofShape(edgeShape(mu));
  }
}

const CAP_STEPS = 2;
const BETWEEN = 3;

/** The steps leave the root less uncertain than this, relative. */
const SURE = 0.99;
