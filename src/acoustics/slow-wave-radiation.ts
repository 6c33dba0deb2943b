import { edgeShape, type PlateEdges, perEdgeShape } from './resonant-radiation.ts';

/**
 * Radiation efficiency of waves slower than sound on a plate: its edges, never more than a panel forced along at grazing
 * incidence. `prepare` once per frequency, `at` once per wave.
 */
export class SlowWaveRadiation {
  #scale = 0;
  #cap = 0;

  /** @param grazing Radiation efficiency of the panel forced along at grazing incidence. */
  prepare(k0_rad_m: number, plate: PlateEdges, grazing: number): this {
    this.#scale = perEdgeShape(k0_rad_m, plate);
    this.#cap = grazing;
    return this;
  }

  /** @param mu k/k0 > 1. */
  at(mu: number): number {
    return Math.min(this.#scale * edgeShape(mu), this.#cap);
  }

  /** r = √(μ² − 1) at which the cap is reached. The edges' part goes about as r⁻³ everywhere, which makes these steps short. */
  capRoot(): number {
    let r = 1;
    for (let step = 0; step < CAP_STEPS; step++) {
      r *= Math.cbrt((this.#scale * edgeShape(Math.sqrt(1 + r * r))) / this.#cap);
    }
    return r;
  }
}

const CAP_STEPS = 3;
