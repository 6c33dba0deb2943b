import { CrowdedNodes } from './crowded-nodes.ts';
import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import type { Quadrature } from './quadrature.ts';
import { type Integrand, ROUGH_POINTS, SettledSum } from './settled-sum.ts';
import { SlowPeaks } from './slow-peaks.ts';

/** How far beyond the slowest bending wave the wave numbers go on; velocity falls with their fourth power there. */
const BEYOND = 4;

/** A peak with less than this share of the energy gets no points of its own. */
const FAINT = 0.01;

/** Used by one sum after another. */
const sharedNodes = new CrowdedNodes();

/** Waves slower than sound on a struck floor, summed over r = √(k²/k0² − 1). */
export class SlowWaves implements Integrand {
  readonly #points: number;
  readonly #peaks: SlowPeaks;
  /** Of each peak, roughly. */
  readonly #energies: Float64Array;
  readonly #sum: SettledSum;
  #waves!: FastWaves;

  constructor(model: FloorModel, { slowWaves, tolerance, mostHalvings }: Quadrature) {
    this.#points = slowWaves;
    this.#peaks = new SlowPeaks(model);
    this.#energies = new Float64Array(model.plates.length);
    this.#sum = new SettledSum(1, 1, tolerance, mostHalvings);
  }

  /**
   * ∫ |v_N|² σ r dr per unit of blocked pressure²; roughly where that is little against the fast waves' part and what else
   * reaches the room below, `beside`.
   */
  radiated(f_Hz: number, waves: FastWaves, beside: number): number {
    this.#waves = waves;
    const others = waves.struck.radiated + beside;
    const nodes = this.#nodes(f_Hz, waves);
    const rough = this.#sum.over(nodes, this).sums[0]!;
    return this.#sum.settleFromRough(nodes, this, 1 + others / rough, this.#points).sums[0]!;
  }

  #nodes(f_Hz: number, waves: FastWaves): CrowdedNodes {
    const { places, widths } = this.#peaks.find(f_Hz, waves);
    const energies = this.#energies;
    let all = waves.struck.radiated;
    for (let i = 0; i < energies.length; i++) {
      // A Lorentzian holds π times its half-width times its height.
      energies[i] = Math.PI * widths[i]! * this.#at(places[i]!, waves);
      all += energies[i]!;
    }
    const nodes = sharedNodes.begin().breakAt(0, belowGrazing(waves));
    let slowest = 1;
    for (let i = 0; i < energies.length; i++) {
      slowest = Math.max(slowest, places[i]!);
      if (energies[i]! > FAINT * all) nodes.breakAt(places[i]!, widths[i]!);
    }
    waves.cavities.breakSide(nodes, 'slow');
    const end = BEYOND * slowest;
    const cap = waves.slow.capRoot;
    return nodes.breakAt(Math.min(cap, end), cap).breakAt(end, Infinity).fill(ROUGH_POINTS);
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

/** How far beyond the speed of sound, along r, the flank of the nearest coincidence reaches; Infinity without. */
function belowGrazing({ free }: FastWaves): number {
  let reach = Infinity;
  for (const mu of free.mu) if (mu < 1) reach = Math.min(reach, Math.sqrt(1 - mu * mu));
  return reach;
}
