import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import { loadedWave } from './loaded-wave.ts';
import { bounceResonances } from './resonances.ts';

/** The springs between leaves count so many times as high as the leaves bounce on them. */
const COUPLED = 2;

/** Newton's steps at most. A slope is taken over this share of the place; near enough is this share of the width. */
const MOST_STEPS = 8;
const ASIDE = 1e-3;
const NEAR = 0.3;

/** Where the free bending waves of a struck floor are, as the air beside the leaves slows them, over r = √(k²/k0² − 1). */
export class SlowPeaks {
  readonly places: Float64Array;
  /** Half-widths. */
  readonly widths: Float64Array;
  readonly #model: FloorModel;
  /** Up to here the springs between the leaves make their waves carry air unequally. */
  readonly #coupledBelow_Hz: number;

  constructor(model: FloorModel) {
    this.#model = model;
    this.places = new Float64Array(model.plates.length);
    this.widths = new Float64Array(model.plates.length);
    this.#coupledBelow_Hz = COUPLED * Math.max(0, ...bounceResonances(model).map((r) => r.frequency_Hz));
  }

  /** Fills both, one wave per leaf; `waves` are prepared for `f_Hz`, and their line is moved. */
  find(f_Hz: number, waves: FastWaves): this {
    const { air } = this.#model;
    const { fourth, facesPerBending, joined } = waves.free;
    const { states, struckExtraLoss } = waves.line;
    const omega = 2 * Math.PI * f_Hz;
    const k0 = omega / air.soundSpeed_m_s;
    const perFace = (air.density_kg_m3 * omega * omega) / k0 ** 5;
    let loss = states[0]!.lossFactor + struckExtraLoss;
    for (let i = 1; i < states.length; i++) loss = Math.min(loss, states[i]!.lossFactor);
    for (let i = 0; i < fourth.length; i++) {
      const load = perFace * facesPerBending[i]!;
      const r = loadedWave(fourth[i]!, load);
      const mu2 = 1 + r * r;
      const slope = 4 * r * mu2 + load / (r * r);
      this.places[i] = r;
      this.widths[i] = Math.min((loss * mu2 * mu2) / slope, Math.sqrt(r * r + (loss * mu2) / 2) - r);
      if (joined || f_Hz < this.#coupledBelow_Hz) this.#refine(i, waves);
    }
    return this;
  }

  /**
   * Leaves on a spring carry air unequally: place and width by Newton's steps to where the impedance has a zero. They stay as
   * they are where the steps do not end, or end where those of another wave did.
   */
  #refine(i: number, { line }: FastWaves): void {
    const { impedance } = line;
    let r = this.places[i]!;
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
      // The zero lies at r − z/z', a complex place.
      const shift = Math.min(Math.max(-(re * slopeRe + im * slopeIm) / slope2, -r / 2), r);
      const width = Math.abs(im * slopeRe - re * slopeIm) / slope2;
      r += shift;
      if (Math.abs(shift) > NEAR * width) continue;
      for (let j = 0; j < i; j++) if (Math.abs(r - this.places[j]!) < width) return;
      this.places[i] = r;
      this.widths[i] = width;
      return;
    }
  }
}
