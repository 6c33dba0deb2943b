import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import { matLoss } from './mat-loss.ts';
import type { Quadrature } from './quadrature.ts';
import { resonantRadiation } from './resonant-radiation.ts';
import { ReverberantField } from './reverberant-field.ts';
import { criticalFrequency_Hz } from './support-radiation.ts';

/** Transmission coefficients of one frequency, each as if the others were not there. */
export interface AirborneShares {
  /** Waves through leaves, air, fill and mats, with the supports' average force. */
  forced: number;
  /** The first leaf's reverberant field, through the same. */
  resonant: number;
  /** Through the supports, incoherently. */
  supports: number;
}

/** Diffuse-field transmission of a floor, frequency by frequency; buffers are kept between calls. */
export class Airborne {
  readonly shares: AirborneShares = { forced: 0, resonant: 0, supports: 0 };
  readonly #model: FloorModel;
  readonly #reverberant: ReverberantField;

  constructor(model: FloorModel, quadrature: Quadrature) {
    this.#model = model;
    this.#reverberant = new ReverberantField(model, quadrature, true);
  }

  /**
   * Fills `shares` for `f_Hz`, at which `waves` are prepared and summed.
   *
   * Forced: τ = 8 (ρ0c0)² ∫₀¹ |V_N|² σ(u) du with u = cos θ, which is section 11.5 of Allard & Atalla with Davy's
   * σ cos θ.
   * Supports: ⟨F²⟩ = 4 ∫₀¹ |F|² du per W_inc = 1/(2ρ0c0). Resonant, below fc of the first leaf:
   * v² = σ_res fc/(2f²m'²ωη) per W_inc, for one leaf the second term of EN 12354-1:2000, eq. (B.2).
   */
  at(f_Hz: number, waves: FastWaves): AirborneShares {
    const { air, plates, leafEdges } = this.#model;
    const { shares } = this;
    const { line } = waves;
    const { force2, radiated } = waves.airborne;
    const last = plates.length - 1;
    const z0 = air.density_kg_m3 * air.soundSpeed_m_s;
    const omega = 2 * Math.PI * f_Hz;
    shares.forced = 8 * z0 * z0 * radiated;
    shares.supports = 0;
    for (let i = 0; i < last; i++) {
      shares.supports += 8 * z0 * force2[i]! * waves.supportPower[i]! * waves.goesOn(waves.airborne, i + 1);
    }

    shares.resonant = 0;
    const state = line.states[0]!;
    const fc_Hz = criticalFrequency_Hz(this.#model, plates[0]!, state);
    if (f_Hz < fc_Hz) {
      const mass = plates[0]!.surfaceMass_kg_m2;
      const sigma = resonantRadiation(f_Hz, fc_Hz, leafEdges[0]!, air.soundSpeed_m_s);
      const loss = state.lossFactor + matLoss(this.#model, line.states, f_Hz, 0);
      const v2 = (sigma * fc_Hz) / (2 * f_Hz * f_Hz * mass * mass * omega * loss);
      const power = this.#reverberant.at(f_Hz, waves, (shares.forced + shares.supports) / (2 * z0 * v2));
      shares.resonant = 2 * z0 * v2 * power.direct;
      shares.supports += 2 * z0 * v2 * power.supports;
    }
    return shares;
  }
}
