import { CrowdedNodes } from './crowded-nodes.ts';
import type { FastWaves } from './fast-waves.ts';
import { bendingWaveSpeed_m_s } from './fastening-impedance.ts';
import { type FloorModel, holdsLowerLeaf } from './floor-model.ts';
import { LOADED, loadedWave } from './loaded-wave.ts';
import type { Quadrature } from './quadrature.ts';
import { resonantRadiation } from './resonant-radiation.ts';
import { type Integrand, SettledSum } from './settled-sum.ts';
import { criticalFrequency_Hz } from './support-radiation.ts';

/** Used by one average after another. */
const sharedNodes = new CrowdedNodes();

/** How far around the bending wave number the reverberant field's share is averaged, in half-widths. */
const REACH = 8;

/** Power per m² radiated below for a mean square velocity of 1 (m/s)² of the uppermost leaf's reverberant field, W/m². */
interface ReverberantPower {
  /** Through air, fill and mats; nothing to go by for the struck floor. */
  direct: number;
  /** Through the supports of every cavity, incoherently. */
  supports: number;
}

/** Numbers summed before the velocities of the leaves: what is radiated. */
const RADIATED = 1;

/**
 * Where the reverberant field of the uppermost leaf goes on to: the waves of the transfer matrices around the leaf's
 * bending wave number, averaged over its resonance, and the chain of supports between unbounded leaves.
 */
export class ReverberantField implements Integrand {
  readonly power: ReverberantPower = { direct: 0, supports: 0 };
  readonly #model: FloorModel;
  readonly #airborne: boolean;
  readonly #points: number;
  readonly #sum: SettledSum;
  /** What a lower leaf's supports pass on depends on how the field comes down to it. */
  readonly #severalSupports: boolean;
  /** Stands for the sums where nobody asks what they hold. */
  readonly #alike: Float64Array;
  #waves!: FastWaves;

  /** @param airborne For airborne sound, which wants `power.direct`, or for the struck floor. */
  constructor(model: FloorModel, { resonance, tolerance, mostHalvings }: Quadrature, airborne: boolean) {
    this.#model = model;
    this.#airborne = airborne;
    this.#points = resonance;
    const numbers = RADIATED + model.plates.length;
    this.#alike = new Float64Array(numbers).fill(1);
    this.#severalSupports = model.interlayers.slice(1).some(holdsLowerLeaf);
    // What is radiated and how fast the struck leaf is; how fast the others are only where supports go on from there.
    this.#sum = new SettledSum(numbers, this.#severalSupports ? numbers : RADIATED + 1, tolerance, mostHalvings);
  }

  /**
   * Fills `power`. `waves` are prepared for `f_Hz` and, of more than two leaves, summed: what a lower leaf is given reaches the
   * last one as the faster waves do. Their line is moved by this call. For a single leaf the power is ρ0c0σ_res.
   * @param beside What else reaches the room below, as if it were given by the same field: next to much a little may err.
   */
  at(f_Hz: number, waves: FastWaves, beside = 0): ReverberantPower {
    const { air, plates } = this.#model;
    const { power } = this;
    if (plates.length === 1) {
      const fc_Hz = criticalFrequency_Hz(this.#model, plates[0]!, waves.line.states[0]!);
      const sigma = resonantRadiation(f_Hz, fc_Hz, this.#model.leafEdges[0]!, air.soundSpeed_m_s);
      power.direct = air.density_kg_m3 * air.soundSpeed_m_s * sigma;
      power.supports = 0;
      return power;
    }
    if (!this.#airborne && !this.#severalSupports) return this.#fill(waves, this.#alike);
    this.#waves = waves;
    const { sums } = this.#sum;
    const nodes = this.#nodes(f_Hz, waves);
    this.#sum.over(nodes, this);
    const { direct, supports } = this.#fill(waves, sums);
    const own = (this.#airborne ? direct : 0) + (this.#severalSupports ? supports : 0);
    this.#sum.settle(nodes, this, (direct + supports + beside) / own);
    return this.#fill(waves, sums);
  }

  #fill(waves: FastWaves, sums: Float64Array): ReverberantPower {
    const { air, plates } = this.#model;
    const { power } = this;
    const last = plates.length - 1;
    const faster = this.#airborne ? waves.airborne : waves.struck;
    power.direct = (air.density_kg_m3 * air.soundSpeed_m_s * sums[0]!) / sums[RADIATED]!;
    power.supports = 0;
    for (let i = 0; i < last; i++) {
      const supportPower = waves.supportPower[i]!;
      if (supportPower === 0) continue;
      const above = sums[RADIATED + i]! / sums[RADIATED]!;
      power.supports += above * waves.reverberantCoupling[i]! * supportPower * waves.goesOn(faster, i + 1);
    }
    return power;
  }

  /** Nodes over the resonance of the uppermost leaf. */
  #nodes(f_Hz: number, waves: FastWaves): CrowdedNodes {
    const { air, plates } = this.#model;
    const { line } = waves;
    const last = plates.length - 1;
    const state = line.states[0]!;
    const omega = 2 * Math.PI * f_Hz;
    const muBend = air.soundSpeed_m_s / bendingWaveSpeed_m_s(state.bending_Nm, plates[0]!.surfaceMass_kg_m2, omega);
    const width = (muBend * state.lossFactor) / 4;
    const low = Math.max(muBend - REACH * width, muBend / 2);
    const high = muBend + REACH * width;
    const nodes = sharedNodes.begin().breakAt(low, Infinity).breakAt(high, Infinity);
    const breakInside = (mu: number, halfWidth: number): void => {
      if (mu > low && mu < high) nodes.breakAt(mu, halfWidth);
    };
    breakInside(1, Infinity);
    let narrowest = width;
    for (let i = 1; i <= last; i++) narrowest = Math.min(narrowest, (muBend * line.states[i]!.lossFactor) / 4);
    const { mu: free, joined } = waves.free;
    if (joined) {
      nodes.breakAt(muBend, width);
      breakInside(free[0]!, narrowest);
    } else breakInside(this.#carriedAlong(muBend, omega, waves), width);
    for (let i = 1; i <= last; i++) breakInside(free[i]!, narrowest);
    const { s2, width2, count } = waves.cavities;
    for (let j = 0; j < count; j++) {
      const mu = Math.sqrt(s2[j]!);
      breakInside(mu, width2[j]! / (2 * mu));
    }
    return nodes.fill(this.#points);
  }

  /** k/k0 of the uppermost leaf's free wave, with the air beside it and what its supports add to its mass or take off it. */
  #carriedAlong(muBend: number, omega: number, { line }: FastWaves): number {
    const { air, plates } = this.#model;
    const inertia = omega * plates[0]!.surfaceMass_kg_m2;
    const supports = this.#airborne && line.chains[0] ? line.chains[0].z11Im / inertia : 0;
    const fourth = muBend ** 4;
    if (fourth < LOADED) return muBend;
    const r = loadedWave(fourth * (1 + supports), (fourth * 2 * air.density_kg_m3 * air.soundSpeed_m_s) / inertia);
    return Math.sqrt(1 + r * r);
  }

  /** At each mu = k/k0: σ v² of the last leaf, then v² of each. */
  evaluate(wave: Float64Array, count: number, out: Float64Array): void {
    const { line, forced, slow } = this.#waves;
    const { velocity2 } = line;
    const leaves = velocity2.length;
    let at = 0;
    for (let j = 0; j < count; j++) {
      const mu = wave[j]!;
      const evanescent = mu > 1;
      const u = Math.max(Math.sqrt(Math.abs(mu * mu - 1)), 1e-4);
      line.at(mu, u, evanescent).march(this.#airborne);
      const sigma = evanescent ? slow.at(mu) : forced.at(u);
      out[at++] = mu * sigma * velocity2[leaves - 1]!;
      for (let i = 0; i < leaves; i++) out[at++] = mu * velocity2[i]!;
    }
  }
}
