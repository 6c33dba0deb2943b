import { carriedAlong } from './carried-along.ts';
import { fieldOfFirst, fieldOfFirstTwo } from './excited-field.ts';
import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import type { Quadrature } from './quadrature.ts';
import { ResonantWaves } from './resonant-waves.ts';
import type { ReverberantField } from './reverberant-field.ts';

/** Transmission coefficients of one frequency, each as if the others were not there. */
export interface AirborneShares {
  /** Waves as fast as sound along the floor, through leaves, air, fill and mats, with the supports' average force. */
  forced: number;
  /** Slower waves around the leaves' resonances, through the same. */
  resonant: number;
  /** Through the supports, incoherently. */
  supports: number;
}

/** Diffuse-field transmission of a floor, frequency by frequency; buffers are kept between calls. */
export class Airborne {
  readonly shares: AirborneShares = { forced: 0, resonant: 0, supports: 0 };
  readonly #model: FloorModel;
  readonly #resonant: ResonantWaves;
  readonly #reverberant: ReverberantField;

  /** @param reverberant Prepared by the caller. */
  constructor(model: FloorModel, quadrature: Quadrature, reverberant: ReverberantField) {
    this.#model = model;
    this.#resonant = new ResonantWaves(model, quadrature);
    this.#reverberant = reverberant;
  }

  /**
   * Fills `shares` for `f_Hz`, at which `waves` are prepared and summed.
   *
   * Forced: τ = 8 (ρ0c0)² ∫₀¹ |V_N|² σ(u) du with u = cos θ, which is section 11.5 of Allard & Atalla with Davy's
   * σ cos θ.
   * Supports: ⟨F²⟩ = 4 ∫₀¹ |F|² du per W_inc = 1/(2ρ0c0), and what the first leaf's reverberant field gives to them, of a leaf
   * on a mat together with the leaf below as far as both move as one.
   * Resonant: see `resonant-waves.ts`; of one leaf the same field, which is the second term of EN 12354-1:2000, eq. (B.2).
   */
  at(f_Hz: number, waves: FastWaves): AirborneShares {
    const { air, plates } = this.#model;
    const { shares } = this;
    const { force2, radiated } = waves.airborne;
    const last = plates.length - 1;
    const z0 = air.density_kg_m3 * air.soundSpeed_m_s;
    const perRadiated = 8 * z0 * z0;
    shares.forced = perRadiated * radiated;
    shares.supports = 0;
    for (let i = 0; i < last; i++) {
      shares.supports += 8 * z0 * force2[i]! * waves.supportPower[i]! * waves.goesOn(waves.airborne, i + 1);
    }
    const own = fieldOfFirst(this.#model, waves.line.states, f_Hz);
    const asOne = carriedAlong(this.#model, f_Hz);
    shares.supports += 2 * z0 * (1 - asOne) * own.velocity2 * this.#reverberant.throughSupports(waves, waves.airborne);
    if (asOne > 0) {
      const both = fieldOfFirstTwo(this.#model, waves.line.states, f_Hz);
      shares.supports += 2 * z0 * asOne * both.velocity2 * this.#reverberant.throughSupports(waves, waves.airborne, 1);
    }
    const beside = (shares.forced + shares.supports) / perRadiated;
    shares.resonant =
      last === 0
        ? 2 * z0 * own.velocity2 * z0 * own.sigma
        : perRadiated * this.#resonant.transmitted(f_Hz, waves, beside);
    return shares;
  }
}
