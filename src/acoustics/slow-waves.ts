import { CrowdedNodes } from './crowded-nodes.ts';
import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import { LOADED, loadedWave } from './loaded-wave.ts';
import type { Quadrature } from './quadrature.ts';
import { type Integrand, SettledSum } from './settled-sum.ts';

/** How far beyond the slowest bending wave the wave numbers go on; velocity falls with their fourth power there. */
const BEYOND = 4;

/** A peak with less than this share of the energy gets no points of its own. */
const FAINT = 0.01;

/** Points per piece, of a first look at which pieces matter. */
const ROUGH_POINTS = 1;

/** How often the parabola is drawn, and how many half-widths it may shift a peak at once. */
const REFINEMENTS = 2;
const FARTHEST = 5;

/** Used by one sum after another. */
const sharedNodes = new CrowdedNodes();

/** Waves slower than sound on a struck floor, summed over r = √(k²/k0² − 1). */
export class SlowWaves implements Integrand {
  readonly #model: FloorModel;
  readonly #points: number;
  // Of each free bending wave: place and half-width in r, and energy.
  readonly #places: Float64Array;
  readonly #widths: Float64Array;
  readonly #energies: Float64Array;
  readonly #sum: SettledSum;
  #waves!: FastWaves;

  constructor(model: FloorModel, { slowWaves, tolerance, mostHalvings }: Quadrature) {
    const n = model.plates.length;
    this.#model = model;
    this.#points = slowWaves;
    this.#sum = new SettledSum(1, 1, tolerance, mostHalvings);
    this.#places = new Float64Array(n);
    this.#widths = new Float64Array(n);
    this.#energies = new Float64Array(n);
  }

  /**
   * ∫ |v_N|² σ r dr per unit of blocked pressure²; roughly where that is little against the fast waves' part and what else
   * reaches the room below, `beside`.
   */
  radiated(f_Hz: number, waves: FastWaves, beside: number): number {
    const others = waves.struck.radiated + beside;
    this.#findPeaks(f_Hz, waves);
    let peaks = 0;
    for (let i = 0; i < this.#energies.length; i++) peaks += this.#energies[i]!;
    const faint = FAINT * (waves.struck.radiated + peaks);
    const nodes = this.#nodes(waves, faint, ROUGH_POINTS);
    const sum = this.#over(nodes, waves);
    return this.#sum.settleFromRough(nodes, this, 1 + others / sum, this.#points).sums[0]!;
  }

  /** Free bending waves as the air beside the leaf slows them. */
  #findPeaks(f_Hz: number, waves: FastWaves): void {
    const { air } = this.#model;
    const { fourth, facesPerBending, joined } = waves.free;
    const { states, struckExtraLoss } = waves.line;
    const omega = 2 * Math.PI * f_Hz;
    const k0 = omega / air.soundSpeed_m_s;
    const perFace = (air.density_kg_m3 * omega * omega) / k0 ** 5;
    let loss = states[0]!.lossFactor + struckExtraLoss;
    for (let i = 1; i < states.length; i++) loss = Math.min(loss, states[i]!.lossFactor);
    for (let i = 0; i < fourth.length; i++) {
      this.#energies[i] = 0;
      // Leaves on a mat that it holds back still ring with the mass of the air.
      if (fourth[i]! < LOADED && !joined) continue;
      const load = perFace * facesPerBending[i]!;
      const r = loadedWave(fourth[i]!, load);
      const mu2 = 1 + r * r;
      const slope = 4 * r * mu2 + load / (r * r);
      const width = Math.min((loss * mu2 * mu2) / slope, Math.sqrt(r * r + (loss * mu2) / 2) - r);
      this.#places[i] = r;
      this.#widths[i] = width;
      // A Lorentzian holds π times its half-width times its height.
      this.#energies[i] = Math.PI * width * this.#at(r, waves);
      if (joined) this.#refine(i, waves);
    }
  }

  /** Leaves joined by a mat carry air unequally: place and width by the parabola of 1/|v|² through three places. */
  #refine(i: number, waves: FastWaves): void {
    for (let step = 0; step < REFINEMENTS; step++) {
      const r = this.#places[i]!;
      const aside = Math.min(this.#widths[i]!, r / 2);
      const low = this.#resistance(r - aside, waves);
      const middle = this.#resistance(r, waves);
      const high = this.#resistance(r + aside, waves);
      const curve = (low + high - 2 * middle) / (2 * aside * aside);
      const slope = (high - low) / (2 * aside);
      if (!(curve > 0)) break;
      const shift = Math.min(Math.max(-slope / (2 * curve), -FARTHEST * aside), FARTHEST * aside);
      const width2 = (middle - (slope * slope) / (4 * curve)) / curve;
      this.#places[i] = Math.max(r + shift, r / 2);
      if (width2 > 0) this.#widths[i] = Math.sqrt(width2);
    }
    this.#energies[i] = Math.PI * this.#widths[i]! * this.#at(this.#places[i]!, waves);
  }

  /** 1/|v|² of the last leaf. */
  #resistance(r: number, { line }: FastWaves): number {
    line.at(Math.sqrt(1 + r * r), r, true).march(false);
    return 1 / line.velocity2[line.velocity2.length - 1]!;
  }

  /** @param faint Peaks of this energy or less get no points of their own. */
  #nodes(waves: FastWaves, faint: number, points: number): CrowdedNodes {
    const nodes = sharedNodes.begin().breakAt(0, Infinity);
    const energies = this.#energies;
    let slowest = 1;
    for (let i = 0; i < energies.length; i++) {
      if (energies[i]! <= faint) continue;
      nodes.breakAt(this.#places[i]!, this.#widths[i]!);
      slowest = Math.max(slowest, this.#places[i]!);
    }
    waves.cavities.breakSide(nodes, 'slow');
    const end = BEYOND * slowest;
    const cap = waves.slow.capRoot;
    return nodes.breakAt(Math.min(cap, end), cap).breakAt(end, Infinity).fill(points);
  }

  #over(nodes: CrowdedNodes, waves: FastWaves): number {
    this.#waves = waves;
    return this.#sum.over(nodes, this).sums[0]!;
  }

  /** What the waves at each `r` radiate. */
  evaluate(r: Float64Array, count: number, out: Float64Array): void {
    const waves = this.#waves;
    for (let j = 0; j < count; j++) out[j] = this.#at(r[j]!, waves);
  }

  #at(r: number, { line, slow }: FastWaves): number {
    const s = Math.sqrt(1 + r * r);
    line.at(s, r, true).march(false);
    return r * line.velocity2[line.velocity2.length - 1]! * slow.at(s);
  }
}
