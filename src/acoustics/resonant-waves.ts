import { CrowdedNodes } from './crowded-nodes.ts';
import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import { loadedWave, loadPerFace_Nm } from './loaded-wave.ts';
import type { Quadrature } from './quadrature.ts';
import { edgeShape } from './resonant-radiation.ts';
import { type Integrand, ROUGH_POINTS, SettledSum } from './settled-sum.ts';

/** How far around a resonance its waves are summed, in half-widths. */
export const RESONANCE_REACH = 8;

/** Used by one sum after another. */
const sharedNodes = new CrowdedNodes();

/**
 * Resonant transmission of several leaves: diffuse sound excites waves slower than itself at the edges of the first leaf, as
 * well as these edges would radiate them, and the edges of the last one radiate what comes through,
 *
 * τ = 8 (ρ0c0)² ∫ |V_N|² σ_first σ_last μ dμ, μ = k/k0 > 1,
 *
 * around the resonances of all leaves; what lies between them belongs to the forced waves, whose σ knows the floor's size. It
 * is the same from either side. For one leaf it is the second term of EN 12354-1:2000, eq. (B.2), which the constant is from.
 */
export class ResonantWaves implements Integrand {
  readonly #model: FloorModel;
  readonly #points: number;
  readonly #sum: SettledSum;
  // Where the waves of each leaf's resonance begin and end, μ.
  readonly #begins: Float64Array;
  readonly #ends: Float64Array;
  #waves!: FastWaves;

  constructor(model: FloorModel, { resonance, tolerance, mostHalvings }: Quadrature) {
    this.#model = model;
    this.#points = resonance;
    this.#sum = new SettledSum(1, 1, tolerance, mostHalvings);
    this.#begins = new Float64Array(model.plates.length);
    this.#ends = new Float64Array(model.plates.length);
  }

  /**
   * ∫ |V_N|² σ_first σ_last μ dμ per unit of blocked pressure²; `waves` are prepared for `f_Hz`, and their line is moved.
   * @param beside What else reaches the room below, as if by this integral: next to much a little may err.
   */
  transmitted(f_Hz: number, waves: FastWaves, beside: number): number {
    this.#waves = waves;
    const nodes = this.#nodes(f_Hz);
    if (!nodes) return 0;
    const rough = this.#sum.over(nodes, this).sums[0]!;
    return this.#sum.settleFromRough(nodes, this, 1 + beside / rough, this.#points).sums[0]!;
  }

  /** Nodes from the first resonance to the last; undefined where no leaf has any slower than sound. */
  #nodes(f_Hz: number): CrowdedNodes | undefined {
    const { plates, air } = this.#model;
    const { free, cavities } = this.#waves;
    const perFace_Nm = loadPerFace_Nm(f_Hz, air);
    const nodes = sharedNodes.begin();
    let first = Infinity;
    let last = 1;
    for (let i = 0; i < plates.length; i++) {
      this.#begins[i] = this.#ends[i] = 1;
      const fourth = free.fourth[i]!;
      // Faster than sound, a resonance is among the forced waves: coincidence.
      if (!(fourth > 1)) continue;
      const mu = free.mu[i]!;
      const { least, most } = this.#lossOf(i);
      const reach = Math.min((RESONANCE_REACH * mu * most) / 4, (mu - 1) / 2);
      const begin = mu - reach;
      const end = mu + reach;
      this.#begins[i] = begin;
      this.#ends[i] = end;
      nodes.breakAt(begin, Infinity).breakAt(end, Infinity);
      first = Math.min(first, begin);
      last = Math.max(last, end);
      const r = loadedWave(fourth, perFace_Nm * free.facesPerBending[i]!);
      const peak = Math.sqrt(1 + r * r);
      if (peak > begin && peak < end) nodes.breakAt(peak, (mu * least) / 4);
    }
    if (last <= 1) return undefined;
    const { s2, width2, count } = cavities;
    for (let j = 0; j < count; j++) {
      const mu = Math.sqrt(s2[j]!);
      if (mu > first && mu < last) nodes.breakAt(mu, width2[j]! / (2 * mu));
    }
    return nodes.fill(ROUGH_POINTS);
  }

  /** Loss factor of a leaf's free waves; those that mats join share the leaves', whichever. */
  #lossOf(wave: number): { least: number; most: number } {
    const { line, free } = this.#waves;
    if (!free.joined) {
      const { lossFactor } = line.states[wave]!;
      return { least: lossFactor, most: lossFactor };
    }
    let least = Infinity;
    let most = 0;
    for (const { lossFactor } of line.states) {
      least = Math.min(least, lossFactor);
      most = Math.max(most, lossFactor);
    }
    return { least, most };
  }

  /** At each μ: what passes; nothing between the resonances. */
  evaluate(wave: Float64Array, count: number, out: Float64Array): void {
    const { line, slow, slowFirst } = this.#waves;
    const { velocity2 } = line;
    const last = velocity2.length - 1;
    for (let j = 0; j < count; j++) {
      const mu = wave[j]!;
      if (!this.#isInside(mu)) {
        out[j] = 0;
        continue;
      }
      line.at(mu, Math.sqrt(mu * mu - 1), true).march(true);
      const shape = edgeShape(mu);
      out[j] = mu * velocity2[last]! * slowFirst.ofShape(shape) * slow.ofShape(shape);
    }
  }

  #isInside(mu: number): boolean {
    for (let i = 0; i < this.#begins.length; i++) if (mu > this.#begins[i]! && mu < this.#ends[i]!) return true;
    return false;
  }
}
