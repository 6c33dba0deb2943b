import type { Air } from './air.ts';
import type { Leak } from './construction.ts';
import { leakArea_m2 } from './leak-area.ts';
import { LeakMouth } from './leak-mouth.ts';
import { NarrowChannel } from './narrow-channel.ts';

/** The largest e-folding along a leak: e^−60 is 520 dB, beyond it nothing is left to count. */
const MOST_DECAY = 60;

/**
 * Where a leak resonates: τ is a smooth function times 1/|1 − g e^{−jθ}|², which peaks where θ is a multiple of 2π, the more
 * sharply the nearer g is to 1.
 */
export interface Swing {
  /** θ, rising with frequency in all but wide openings, which do not resonate. */
  readonly phase: number;
  /** g, 0–1: what is left of sound that went back and forth once. */
  readonly echo: number;
}

/**
 * A slit or a round hole between two rooms in a diffuse field (own derivation). Air in it moves as a plane wave with friction
 * at the walls (`narrow-channel.ts`), specific impedance Z and phase φ = kd, and meets the mouths' impedance z = r + jx
 * (`leak-mouth.ts`) at both ends, all against ρ0c0. By the blocked pressure of a diffuse field, which a small opening meets
 * as p² = 8 ρ0c0 I,
 *
 * τ = 8 r/|D|², D = 2z cos φ + j (Z + z²/Z) sin φ,
 *
 * per the leak's own area. Without friction a narrow slit is that of Gomperts & Kihlman, Acustica 18, 1967 (m = 8, n = 1;
 * from memory), and a hole a tube with flanged ends; very narrow ones resist as Poiseuille flow does. The wider an opening is
 * beside the wavelength, the more waves besides the plane one pass, each of them 4π/(k²S) by reciprocity: together what
 * falls on it, τ = 1.
 */
export class OpenLeak {
  readonly area_m2: number;
  readonly #depth_m: number;
  readonly #channel: NarrowChannel;
  readonly #mouth: LeakMouth;
  readonly #wavePerHertz: number;
  // At the frequency prepared last: Z, z, and φ = #phase − j #decay.
  #lineRe = 1;
  #lineIm = 0;
  #endRe = 0;
  #endIm = 0;
  #phase = 0;
  #decay = 0;

  /** @param leak One whose area is not 0. */
  constructor(leak: Leak, air: Air) {
    const { depth_m } = leak;
    // What is wider than long is a slit the other way.
    const long_m = leak.length_m === undefined ? undefined : Math.max(leak.width_m, leak.length_m);
    const width_m = Math.min(leak.width_m, leak.length_m ?? Infinity);
    this.area_m2 = leakArea_m2(leak);
    this.#depth_m = depth_m;
    this.#channel = new NarrowChannel(long_m === undefined ? 'tube' : 'slit', width_m, air);
    this.#mouth = new LeakMouth(width_m, long_m);
    this.#wavePerHertz = (2 * Math.PI) / air.soundSpeed_m_s;
  }

  /** Transmission coefficient per area of the opening. */
  transmission(f_Hz: number): number {
    this.#prepare(f_Hz);
    const zRe = this.#endRe;
    const zIm = this.#endIm;
    const lineSize = this.#lineRe * this.#lineRe + this.#lineIm * this.#lineIm;
    const z2Re = zRe * zRe - zIm * zIm;
    const z2Im = 2 * zRe * zIm;
    // Z + z²/Z
    const sumRe = this.#lineRe + (z2Re * this.#lineRe + z2Im * this.#lineIm) / lineSize;
    const sumIm = this.#lineIm + (z2Im * this.#lineRe - z2Re * this.#lineIm) / lineSize;
    const cos = Math.cos(this.#phase);
    const sin = Math.sin(this.#phase);
    const cosh = Math.cosh(this.#decay);
    const sinh = Math.sinh(this.#decay);
    // cos(p − jq) = cos p cosh q + j sin p sinh q, j sin(p − jq) = cos p sinh q + j sin p cosh q
    const cRe = cos * cosh;
    const cIm = sin * sinh;
    const sRe = cos * sinh;
    const sIm = sin * cosh;
    const dRe = 2 * (zRe * cRe - zIm * cIm) + sumRe * sRe - sumIm * sIm;
    const dIm = 2 * (zRe * cIm + zIm * cRe) + sumRe * sIm + sumIm * sRe;
    return (4 * this.#mouth.resistance ** 2 * this.#mouth.waves) / (dRe * dRe + dIm * dIm);
  }

  /** θ and g of the sound that is thrown back and forth, at one frequency. */
  swing(f_Hz: number): Swing {
    this.#prepare(f_Hz);
    const zRe = this.#endRe;
    const zIm = this.#endIm;
    // (Z − z)/(Z + z) is what a mouth throws back.
    const minusRe = this.#lineRe - zRe;
    const minusIm = zIm - this.#lineIm;
    const plusRe = this.#lineRe + zRe;
    const plusIm = this.#lineIm + zIm;
    const thrownBack = (minusRe * minusRe + minusIm * minusIm) / (plusRe * plusRe + plusIm * plusIm);
    return {
      phase: 2 * (this.#phase + Math.atan2(minusIm, minusRe) + Math.atan2(plusIm, plusRe)),
      echo: thrownBack * Math.exp(-2 * this.#decay),
    };
  }

  #prepare(f_Hz: number): void {
    const k = this.#wavePerHertz * f_Hz;
    const channel = this.#channel;
    const mouth = this.#mouth;
    channel.prepare(f_Hz);
    mouth.prepare(k);
    const { densityRe, densityIm, compressibilityRe, compressibilityIm } = channel;
    // Friction at the mouths beyond the mass of the air there: jk (ρ/ρ0 − 1) times a length.
    this.#endRe = mouth.resistance - k * densityIm * mouth.friction_m;
    this.#endIm = mouth.reactance + k * (densityRe - 1) * mouth.friction_m;
    // k = k0 √(ρ/ρ0 K0/K), Z = √(ρ/ρ0 K/K0), both in the fourth quadrant.
    const nRe = densityRe * compressibilityRe - densityIm * compressibilityIm;
    const nIm = densityRe * compressibilityIm + densityIm * compressibilityRe;
    const n = Math.sqrt((Math.sqrt(nRe * nRe + nIm * nIm) + Math.abs(nRe)) / 2);
    const slowness = nRe >= 0 ? n : -nIm / (2 * n);
    const loss = nRe >= 0 ? -nIm / (2 * n) : n;
    this.#phase = k * this.#depth_m * slowness;
    this.#decay = Math.min(k * this.#depth_m * loss, MOST_DECAY);
    // Z = (ρ/ρ0)/(slowness − j loss)
    const size = slowness * slowness + loss * loss;
    this.#lineRe = (densityRe * slowness - densityIm * loss) / size;
    this.#lineIm = (densityIm * slowness + densityRe * loss) / size;
  }
}
