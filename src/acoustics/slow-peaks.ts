import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import { loadedWave, loadPerFace_Nm } from './loaded-wave.ts';
import { bounceResonances } from './resonances.ts';

/** What is between leaves couples their waves up to so many times the frequency at which they bounce on it; our own. */
const COUPLED = 2;

/** Newton's steps at most: from a start on the right side of the zero three or four do. */
const MOST_STEPS = 8;
/** A slope is taken over this share of the place. */
const ASIDE = 1e-3;
/** A step of this share of the width is the last. */
const NEAR = 0.3;

/** Where the free bending waves of a struck floor are, as the air beside the leaves slows them, over r = √(k²/k0² − 1). */
export class SlowPeaks {
  /** r. */
  readonly places: Float64Array;
  /** Half-widths. */
  readonly widths: Float64Array;
  readonly #model: FloorModel;
  /** Up to here the springs between the leaves make their waves carry air unequally, Hz. */
  readonly #coupledBelow_Hz: number;

  constructor(model: FloorModel) {
    this.#model = model;
    this.places = new Float64Array(model.plates.length);
    this.widths = new Float64Array(model.plates.length);
    this.#coupledBelow_Hz = COUPLED * Math.max(0, ...bounceResonances(model).map((r) => r.frequency_Hz));
  }

  /** Fills both, one wave per leaf; `waves` are prepared for `f_Hz`, and their line is moved. */
  find(f_Hz: number, waves: FastWaves): this {
    const { fourth, facesPerBending, joined } = waves.free;
    const { states, struckExtraLoss } = waves.line;
    const perFace_Nm = loadPerFace_Nm(f_Hz, this.#model.air);
    let loss = states[0]!.lossFactor + struckExtraLoss[0]!;
    for (let i = 1; i < states.length; i++) loss = Math.min(loss, states[i]!.lossFactor);
    for (let i = 0; i < fourth.length; i++) {
      const load = perFace_Nm * facesPerBending[i]!;
      const r = loadedWave(fourth[i]!, load);
      const mu2 = 1 + r * r;
      const slope = 4 * r * mu2 + load / (r * r);
      this.places[i] = r;
      this.widths[i] = Math.min((loss * mu2 * mu2) / slope, Math.sqrt(r * r + (loss * mu2) / 2) - r);
      if (!(joined || f_Hz < this.#coupledBelow_Hz)) continue;
      if (!this.#refine(i, r, waves)) this.#refine(i, this.#together(f_Hz, waves), waves);
    }
    return this;
  }

  /** r of the wave of all leaves moving alike. */
  #together(f_Hz: number, { line }: FastWaves): number {
    const { plates, air } = this.#model;
    const omega = 2 * Math.PI * f_Hz;
    const mass_kg_m2 = plates.reduce((sum, plate) => sum + plate.surfaceMass_kg_m2, 0);
    const bending_Nm = line.bending_Nm.reduce((sum, own) => sum + own, 0);
    const fourth = (omega * omega * mass_kg_m2) / (bending_Nm * (omega / air.soundSpeed_m_s) ** 4);
    return loadedWave(fourth, (2 * loadPerFace_Nm(f_Hz, air)) / bending_Nm);
  }

  /**
   * Leaves on a spring carry air unequally: place and width by Newton's steps from `start` to where the impedance has a zero.
   * Both stay as they are where the steps do not end, or end where those of another wave did.
   * @returns Whether they ended at a zero of its own.
   */
  #refine(i: number, start: number, { line }: FastWaves): boolean {
    const { impedance } = line;
    let r = start;
    for (let step = 0; step < MOST_STEPS; step++) {
      const aside = ASIDE * r;
      line.at(Math.sqrt(1 + r * r), r, true).march(false);
      const re = impedance[0]!;
      const im = impedance[1]!;
      const next = r + aside;
      line.at(Math.sqrt(1 + next * next), next, true).march(false);
      const slopeRe = (impedance[0]! - re) / aside;
      const slopeIm = (impedance[1]! - im) / aside;
      const slope2 = slopeRe * slopeRe + slopeIm * slopeIm;
      // Beyond all numbers where many heavy leaves lie on each other.
      if (!(slope2 > 0 && slope2 < Infinity)) return false;
      // The zero lies at r − z/z', a complex place.
      const shift = Math.min(Math.max(-(re * slopeRe + im * slopeIm) / slope2, -r / 2), r);
      const width = Math.abs(im * slopeRe - re * slopeIm) / slope2;
      r += shift;
      if (Math.abs(shift) > NEAR * width) continue;
      for (let j = 0; j < i; j++) if (Math.abs(r - this.places[j]!) < width) return false;
      this.places[i] = r;
      this.widths[i] = width;
      return true;
    }
    return false;
  }
}
