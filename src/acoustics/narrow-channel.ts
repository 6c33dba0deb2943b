import type { Air } from './air.ts';

/** Between parallel planes or in a round tube. */
export type ChannelShape = 'slit' | 'tube';

/** Order of the Bessel functions that describe the flow: tanh y / y is one of half an order. */
const ORDER: Readonly<Record<ChannelShape, number>> = { slit: 0.5, tube: 1 };

/** Terms of the continued fraction that are written out before its tail is estimated: within 2e-4 for any width. */
const TERMS = 6;

/**
 * Air in a channel so narrow that it rubs and warms at the walls: density and compressibility as complex multiples of those
 * of free air, time factor e^{+jωt}.
 *
 * Source: Stinson, J. Acoust. Soc. Am. 89, 1991; Allard & Atalla, Propagation of Sound in Porous Media, 2nd ed. 2009, ch. 4
 * (both from memory). With h half the width or the radius, y = h √(jωρ0/η) and G(y) = tanh y / y between planes, 2 I1(y) /
 * (y I0(y)) in a tube: ρ/ρ0 = 1/(1 − G(y)), K0/K = 1 + (γ − 1) G(y √Pr). Walls stay at the air's mean temperature. Not for
 * widths near the mean free path, 0.07 µm, where air slips along walls.
 */
export class NarrowChannel {
  densityRe = 1;
  densityIm = 0;
  compressibilityRe = 1;
  compressibilityIm = 0;
  readonly #order: number;
  /** |y|² per Hz. */
  readonly #perHertz: number;
  readonly #heatRatio: number;
  readonly #prandtl: number;
  // t of `#fraction`.
  #tRe = 0;
  #tIm = 0;

  /** @param width_m Distance of the planes or diameter of the tube, > 0. */
  constructor(shape: ChannelShape, width_m: number, air: Air) {
    this.#order = ORDER[shape];
    this.#perHertz = (2 * Math.PI * air.density_kg_m3 * (width_m / 2) ** 2) / air.viscosity_Pa_s;
    this.#heatRatio = air.heatRatio;
    this.#prandtl = air.prandtlNumber;
  }

  /** Sets density and compressibility for one frequency, > 0. */
  prepare(f_Hz: number): void {
    const y2 = this.#perHertz * f_Hz;
    const twice = 2 * this.#order;
    // With t of `fraction`, G = 1/(1 + y²/2νt) and 1/(1 − G) = 1 + 2νt/y²: nothing cancels, however narrow.
    this.#fraction(y2);
    this.densityRe = 1 + (twice * this.#tIm) / y2;
    this.densityIm = (-twice * this.#tRe) / y2;
    const heat = this.#prandtl * y2;
    this.#fraction(heat);
    const t2 = twice * (this.#tRe * this.#tRe + this.#tIm * this.#tIm);
    const re = 1 + (heat * this.#tIm) / t2;
    const im = (heat * this.#tRe) / t2;
    const size = re * re + im * im;
    this.compressibilityRe = 1 + ((this.#heatRatio - 1) * re) / size;
    this.compressibilityIm = (-(this.#heatRatio - 1) * im) / size;
  }

  /**
   * t = y I_ν(y)/I_{ν+1}(y) for y² = jY, by t_m = 2m + y²/t_{m+1}, the recurrence of Bessel functions (Abramowitz & Stegun,
   * 1964, 9.6.26), begun with t_m ≈ m − ½ + √((m + ½)² + y²) (Amos, Math. Comp. 28, 1974; from memory).
   */
  #fraction(Y: number): void {
    let m = this.#order + TERMS;
    const square = (m + 0.5) ** 2;
    const root = Math.sqrt((Math.sqrt(square * square + Y * Y) + square) / 2);
    let re = m - 0.5 + root;
    let im = Y / (2 * root);
    for (let term = 1; term < TERMS; term++) {
      m--;
      const quotient = Y / (re * re + im * im);
      const above = re;
      re = 2 * m + quotient * im;
      im = quotient * above;
    }
    this.#tRe = re;
    this.#tIm = im;
  }
}
