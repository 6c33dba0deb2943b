import { CrowdedNodes } from './crowded-nodes.ts';
import type { FastSums, FastWaves } from './fast-waves.ts';
import { bendingWaveSpeed_m_s } from './fastening-impedance.ts';
import { type FloorModel, holdsLowerLeaf } from './floor-model.ts';
import type { Quadrature } from './quadrature.ts';
import { RESONANCE_REACH } from './resonant-waves.ts';
import { type Integrand, SettledSum } from './settled-sum.ts';

/** Used by one average after another. */
const sharedNodes = new CrowdedNodes();

/**
 * What the uppermost leaf's reverberant field gives to the supports below: by the chain between unbounded leaves, and of lower
 * supports by how far the field comes down to them, through the waves of the transfer matrices around the leaf's bending wave
 * number, averaged over its resonance.
 */
export class ReverberantField implements Integrand {
  readonly #model: FloorModel;
  readonly #points: number;
  readonly #sum: SettledSum;
  readonly #severalSupports: boolean;
  /** |v|² of each leaf, of the uppermost one first, over its resonance. */
  readonly #motion: Float64Array;
  #waves!: FastWaves;

  constructor(model: FloorModel, { resonance, tolerance, mostHalvings }: Quadrature) {
    const leaves = model.plates.length;
    this.#model = model;
    this.#points = resonance;
    this.#severalSupports = model.interlayers.slice(1).some(holdsLowerLeaf);
    this.#sum = new SettledSum(leaves, leaves, tolerance, mostHalvings);
    this.#motion = this.#severalSupports ? this.#sum.sums : new Float64Array(leaves).fill(1);
  }

  /** Takes the field at `f_Hz`, which `waves` are prepared for; their line may be moved by this. */
  prepare(f_Hz: number, waves: FastWaves): void {
    if (!this.#severalSupports) return;
    this.#waves = waves;
    const nodes = this.#nodes(f_Hz, waves);
    this.#sum.over(nodes, this).settle(nodes, this);
  }

  /**
   * Power per m² radiated below through all supports, incoherently, for a mean square velocity of 1 (m/s)² of the field in
   * leaf `leaf`, W/m².
   * @param faster What a lower leaf is given reaches the last one as these waves do, of more than two leaves summed.
   */
  throughSupports(waves: FastWaves, faster: FastSums, leaf = 0): number {
    let power = 0;
    for (let i = leaf; i < this.#model.interlayers.length; i++) {
      const supportPower = waves.supportPower[i]!;
      if (supportPower === 0) continue;
      const above = this.#motion[i]! / this.#motion[leaf]!;
      power += above * waves.reverberantCoupling[i]! * supportPower * waves.goesOn(faster, i + 1);
    }
    return power;
  }

  /** Nodes over the resonance of the uppermost leaf. */
  #nodes(f_Hz: number, { line, free, cavities }: FastWaves): CrowdedNodes {
    const { air, plates } = this.#model;
    const state = line.states[0]!;
    const omega = 2 * Math.PI * f_Hz;
    const muBend = air.soundSpeed_m_s / bendingWaveSpeed_m_s(state.bending_Nm, plates[0]!.surfaceMass_kg_m2, omega);
    const width = (muBend * state.lossFactor) / 4;
    const low = Math.max(muBend - RESONANCE_REACH * width, muBend / 2);
    const high = muBend + RESONANCE_REACH * width;
    const nodes = sharedNodes.begin().breakAt(low, Infinity).breakAt(high, Infinity);
    const breakInside = (mu: number, halfWidth: number): void => {
      if (mu > low && mu < high) nodes.breakAt(mu, halfWidth);
    };
    breakInside(1, Infinity);
    nodes.breakAt(muBend, width);
    let narrowest = width;
    for (let i = 1; i < plates.length; i++) {
      narrowest = Math.min(narrowest, (muBend * line.states[i]!.lossFactor) / 4);
    }
    for (let i = free.joined ? 0 : 1; i < plates.length; i++) breakInside(free.mu[i]!, narrowest);
    const { s2, width2, count } = cavities;
    for (let j = 0; j < count; j++) {
      const mu = Math.sqrt(s2[j]!);
      breakInside(mu, width2[j]! / (2 * mu));
    }
    return nodes.fill(this.#points);
  }

  /** At each mu = k/k0: v² of each leaf. */
  evaluate(wave: Float64Array, count: number, out: Float64Array): void {
    const { line } = this.#waves;
    const { velocity2 } = line;
    const leaves = velocity2.length;
    let at = 0;
    for (let j = 0; j < count; j++) {
      const mu = wave[j]!;
      line.at(mu, Math.max(Math.sqrt(Math.abs(mu * mu - 1)), 1e-4), mu > 1).march(false);
      for (let i = 0; i < leaves; i++) out[at++] = mu * velocity2[i]!;
    }
  }
}
