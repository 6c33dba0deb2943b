import type { FloorModel } from './floor-model.ts';
import { tridiagonalEigenvalue } from './tridiagonal.ts';

/**
 * Free bending waves of the leaves, in vacuo, those that mats join taken together, the slowest of these last.
 *
 * (B k⁴ − ω²m') v + (springs of the mats) v = 0; in √B v the matrix is tridiagonal and its positive eigenvalues are k⁴.
 * Without mats they are ω²m'/B, the leaves' own; two leaves on one mat have a quadratic equation.
 */
export class FreeBendingWaves {
  /** k/k0; NaN where there is no such wave. */
  readonly mu: Float64Array;
  /** k⁴/k0⁴, below 0 where a spring holds the leaf back. */
  readonly fourth: Float64Array;
  /**
   * How strongly each wave moves the air at its faces: Σ v² over the outer faces by Σ B v² over the leaves, 1/(N·m); of three
   * and more leaves on mats as if all moved alike.
   */
  readonly facesPerBending: Float64Array;
  /** Whether a mat joins any leaves. */
  readonly joined: boolean;
  readonly #model: FloorModel;
  /** First leaf of each group that mats join, and one behind the last. */
  readonly #groups: readonly number[];

  constructor(model: FloorModel) {
    const { interlayers, plates } = model;
    this.#model = model;
    this.mu = new Float64Array(plates.length);
    this.fourth = new Float64Array(plates.length);
    this.facesPerBending = new Float64Array(plates.length);
    this.joined = interlayers.some(({ kind }) => kind === 'mat');
    this.#groups = [0, ...interlayers.flatMap(({ kind }, i) => (kind === 'mat' ? [] : [i + 1])), plates.length];
  }

  /**
   * Fills all three.
   * @param bending_Nm Of each leaf in the direction of the wave.
   * @returns `mu`.
   */
  at(f_Hz: number, bending_Nm: ArrayLike<number>): Float64Array {
    const { plates, air } = this.#model;
    const omega = 2 * Math.PI * f_Hz;
    const omega2 = omega * omega;
    const k02 = omega2 / (air.soundSpeed_m_s * air.soundSpeed_m_s);
    const k04 = k02 * k02;
    const { mu, fourth } = this;
    for (let group = 0; group + 1 < this.#groups.length; group++) {
      const first = this.#groups[group]!;
      const size = this.#groups[group + 1]! - first;
      if (size === 1) {
        fourth[first] = (omega2 * plates[first]!.surfaceMass_kg_m2) / bending_Nm[first]!;
        this.facesPerBending[first] = 2 / bending_Nm[first]!;
      } else if (size === 2) this.#pair(first, omega2, bending_Nm);
      else this.#several(first, size, omega2, bending_Nm);
    }
    for (let i = 0; i < mu.length; i++) {
      fourth[i]! /= k04;
      mu[i] = fourth[i]! > 0 ? Math.sqrt(Math.sqrt(fourth[i]!)) : NaN;
    }
    return mu;
  }

  /** k⁴ by sum and product; the product without the terms that cancel on a stiff mat. */
  #pair(first: number, omega2: number, bending_Nm: ArrayLike<number>): void {
    const { plates } = this.#model;
    const inertia1 = omega2 * plates[first]!.surfaceMass_kg_m2;
    const inertia2 = omega2 * plates[first + 1]!.surfaceMass_kg_m2;
    const spring = this.#spring(first);
    const b1 = bending_Nm[first]!;
    const b2 = bending_Nm[first + 1]!;
    const sum = (inertia1 - spring) / b1 + (inertia2 - spring) / b2;
    const product = (inertia1 * inertia2 - spring * (inertia1 + inertia2)) / (b1 * b2);
    const difference = (inertia1 - spring) / b1 - (inertia2 - spring) / b2;
    const root = Math.sqrt(difference * difference + (4 * spring * spring) / (b1 * b2));
    const large = (sum + (sum < 0 ? -root : root)) / 2;
    const small = large === 0 ? 0 : product / large;
    this.fourth[first] = Math.min(large, small);
    this.fourth[first + 1] = Math.max(large, small);
    const beside = spring / Math.sqrt(b1 * b2);
    for (let i = first; i <= first + 1; i++) {
      // Eigenvector in √B v, from the row where less cancels.
      const from1 = this.fourth[i]! - (inertia1 - spring) / b1;
      const from2 = this.fourth[i]! - (inertia2 - spring) / b2;
      const [w1, w2] = Math.abs(from1) < Math.abs(from2) ? [from2, beside] : [beside, from1];
      this.facesPerBending[i] = ((w1 * w1) / b1 + (w2 * w2) / b2) / (w1 * w1 + w2 * w2);
    }
  }

  #several(first: number, size: number, omega2: number, bending_Nm: ArrayLike<number>): void {
    const diagonal: number[] = [];
    const beside: number[] = [];
    for (let i = first; i < first + size; i++) {
      const above = i > first ? this.#spring(i - 1) : 0;
      const below = i + 1 < first + size ? this.#spring(i) : 0;
      diagonal.push((omega2 * this.#model.plates[i]!.surfaceMass_kg_m2 - above - below) / bending_Nm[i]!);
      if (below > 0) beside.push(below / Math.sqrt(bending_Nm[i]! * bending_Nm[i + 1]!));
    }
    let sum = 0;
    for (let i = first; i < first + size; i++) sum += bending_Nm[i]!;
    for (let i = 0; i < size; i++) {
      this.fourth[first + i] = tridiagonalEigenvalue(diagonal, beside, i);
      // As if all moved alike.
      this.facesPerBending[first + i] = 2 / sum;
    }
  }

  #spring(interlayer: number): number {
    const layer = this.#model.interlayers[interlayer]!;
    return layer.kind === 'mat' ? layer.mat.dynamicStiffness_N_m3 : 0;
  }
}
