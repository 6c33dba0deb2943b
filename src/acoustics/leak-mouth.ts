const EULER = 0.57722;
/** End correction of a tube in a wall, in radii; 8/3π for a piston. */
const TUBE_END = 0.85;
/** Where the low-frequency end correction of a slit, (ln(8/K) − γ)/π, ends. */
const SLIT_END = 8 * Math.exp(-EULER);
/** A slit shorter than the wave has the end correction of a wave this many times 1/k long, by the mean of 1/r over it. */
const SHORT_SLIT = Math.exp(1 - EULER);
/** Extra depth per mouth for friction, in widths: Hasimoto, J. Phys. Soc. Japan 13, 1958, and Sampson 1891 (from memory). */
const SLIT_FRICTION = 4 / (3 * Math.PI);
const HOLE_FRICTION = (3 * Math.PI) / 32;

/**
 * Radiation of a leak's mouth in a large wall, specific impedance r + jx against ρ0c0.
 *
 * Slit: r0 = K/2, x = K (ln(8/K) − 0.57722)/π, K = kw, as in Gomperts & Kihlman, Acustica 18, 1967 (from memory); a slit
 * shorter than half a wave of sound radiates as its area, r0 = k²S/2π. Hole of radius a: r0 = (ka)²/2, x = 0.85 ka. Where the opening
 * is no longer narrow both go over into r = 1, x = 0, by functions of our own: r = tanh r0, and x falls off as 1/K.
 */
export class LeakMouth {
  resistance = 0;
  reactance = 0;
  /** 8 ρ0c0 r of the incident sound is 4 r² times this: 2/r0 of a narrow opening, 1 of a wide one. */
  waves = 1;
  /** Extra depth that the air rubs along at this mouth, m. */
  readonly friction_m: number;
  readonly #width_m: number;
  readonly #length_m: number | undefined;

  /**
   * @param width_m Width of a slit or diameter of a hole, > 0.
   * @param length_m Length of a slit; undefined for a hole.
   */
  constructor(width_m: number, length_m: number | undefined) {
    this.#width_m = width_m;
    this.#length_m = length_m;
    this.friction_m = width_m * (length_m === undefined ? HOLE_FRICTION : SLIT_FRICTION);
  }

  /** @param k Wave number in free air, rad/m. */
  prepare(k: number): void {
    const length_m = this.#length_m;
    const kw = k * this.#width_m;
    let low: number;
    if (length_m === undefined) {
      const ka = kw / 2;
      low = (ka * ka) / 2;
      // 0.85 ka, and 2/(π ka) of a wide piston.
      this.reactance = (TUBE_END * ka) / Math.sqrt(1 + (TUBE_END * Math.PI * low) ** 2);
    } else {
      low = (kw / 2) * Math.tanh((k * length_m) / Math.PI);
      const short = (SHORT_SLIT * this.#width_m) / length_m;
      // ½ ln(1 + n²) is ln n while the slit is narrow.
      this.reactance = (kw * Math.log1p(SLIT_END ** 2 / (kw * kw + short * short))) / (2 * Math.PI);
    }
    this.resistance = Math.tanh(low);
    this.waves = Math.sqrt(1 + 4 / (low * low));
  }
}
