import type { Construction, ConstructionLayer } from './construction.ts';
import { FastWaves } from './fast-waves.ts';
import { type FloorModel, floorModel } from './floor-model.ts';
import { Impact, type ImpactShares } from './impact.ts';
import type { Quadrature } from './quadrature.ts';

/**
 * The most that a floor laid on a mat takes off the impact sound of what is below it: ΔL ≤ 30 lg(f/f0) for screeds cast in
 * one piece, 40 lg(f/f0) for dry ones, f0 = √(s'/m1)/2π (ISO 12354-2:2017, Annex C; from memory). The waves of the matrices
 * alone give 40 lg and more; real screeds bend back and carry sound across stiff spots.
 *
 * On a light deck the screed's mass helps besides: 20 lg(1 + m1/m2) is allowed on top. Below f0 the limit fades out.
 */
export class FloatingLimit {
  readonly #rest: Impact;
  readonly #waves: FastWaves;
  readonly #resonance_Hz: number;
  readonly #slope: number;
  readonly #massGain: number;

  private constructor(model: FloorModel, stiffness_N_m3: number, quadrature: Quadrature) {
    const [floating, below] = [model.plates[0]!, model.plates[1]!];
    const rest = floorModel(restOf(model), model.constants, model.air);
    this.#rest = new Impact(rest, quadrature);
    this.#waves = new FastWaves(rest, quadrature.angles);
    this.#resonance_Hz = Math.sqrt(stiffness_N_m3 / floating.surfaceMass_kg_m2) / (2 * Math.PI);
    this.#slope = floating.kind === 'slab' ? 3 : 4;
    this.#massGain = (1 + floating.surfaceMass_kg_m2 / below.surfaceMass_kg_m2) ** 2;
  }

  /** @returns undefined where the struck leaf does not lie on a mat. */
  static of(model: FloorModel, quadrature: Quadrature): FloatingLimit | undefined {
    const layer = model.interlayers[0];
    return layer?.kind === 'mat' ? new FloatingLimit(model, layer.mat.dynamicStiffness_N_m3, quadrature) : undefined;
  }

  /** Raises `shares` of the whole floor, each by the same factor, where it gains more than the limit. */
  apply(f_Hz: number, azimuthCos2: number, shares: ImpactShares): void {
    const rest = this.#rest.at(f_Hz, this.#waves.at(f_Hz, azimuthCos2, false));
    const x = f_Hz / this.#resonance_Hz;
    const least = ((rest.direct + rest.supports) / this.#massGain) * (x > 1 ? x ** -this.#slope : x ** FADE);
    const total = shares.direct + shares.supports;
    if (total >= least) return;
    shares.direct *= least / total;
    shares.supports *= least / total;
  }
}

const FADE = 6;

/** The floor without covering, uppermost leaf and mat. */
function restOf({ construction, plates, interlayers }: FloorModel): Construction {
  const { covering: _, ...bare } = construction;
  const layers = plates.slice(1).flatMap((plate, i): ConstructionLayer[] => {
    const next = interlayers[i + 1];
    if (!next) return [plate.leaf];
    return [plate.leaf, next.kind === 'mat' ? next.mat : next.cavity];
  });
  return { ...bare, layers };
}
