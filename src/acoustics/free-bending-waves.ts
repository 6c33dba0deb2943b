import type { FloorModel } from './floor-model.ts';
import { tridiagonalEigenvalue } from './tridiagonal.ts';

/**
 * Writes k/k0 of the free bending waves of the leaves into `out`, slowest last, those that mats join taken together; NaN
 * where there is none.
 *
 * (B k⁴ − ω²m') v + (springs of the mats) v = 0; in √B v the matrix is tridiagonal and its positive eigenvalues are k⁴.
 * Without mats they are ω²m'/B, the leaves' own.
 */
export class FreeBendingWaves {
  readonly mu: Float64Array;
  /** Whether a mat joins any leaves. */
  readonly joined: boolean;
  readonly #diagonal: Float64Array;
  readonly #beside: Float64Array;
  readonly #model: FloorModel;

  constructor(model: FloorModel) {
    const n = model.plates.length;
    this.#model = model;
    this.mu = new Float64Array(n);
    this.joined = model.interlayers.some(({ kind }) => kind === 'mat');
    this.#diagonal = new Float64Array(n);
    this.#beside = new Float64Array(Math.max(n - 1, 0));
  }

  at(f_Hz: number, bending_Nm: Float64Array): Float64Array {
    const { plates, interlayers, air } = this.#model;
    const omega = 2 * Math.PI * f_Hz;
    const k0 = omega / air.soundSpeed_m_s;
    const diagonal = this.#diagonal.fill(0);
    const beside = this.#beside.fill(0);
    for (let i = 0; i < plates.length; i++) {
      const layer = interlayers[i];
      diagonal[i]! += omega * omega * plates[i]!.surfaceMass_kg_m2;
      if (layer?.kind === 'mat') {
        const spring = layer.mat.dynamicStiffness_N_m3;
        diagonal[i]! -= spring;
        diagonal[i + 1]! -= spring;
        beside[i] = spring / Math.sqrt(bending_Nm[i]! * bending_Nm[i + 1]!);
      }
      diagonal[i]! /= bending_Nm[i]!;
    }
    for (let i = 0; i < plates.length; i++) {
      const k4 = this.joined ? tridiagonalEigenvalue(diagonal, beside, i, 1e-5) : diagonal[i]!;
      this.mu[i] = k4 > 0 ? Math.sqrt(Math.sqrt(k4)) / k0 : NaN;
    }
    return this.mu;
  }
}
