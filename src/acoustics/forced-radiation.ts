/**
 * Radiation efficiency of a finite panel that an incident wave forces along, as a function of u = cos θ.
 *
 * Source: J. L. Davy, "The forced radiation efficiency of finite size flat panels that are excited by incident sound",
 * JASA 126, 2009 (page numbers unverified): a = 2S/U, σ = 1/√(G² + q²). Valid for floors of rooms, not for single
 * narrow bays. Checked against the infinite panel (σ → 1/cos θ) and Sewell's limp panel in the tests.
 */
export class ForcedRadiation {
  /** cos θ below which the panel's finite size rules. */
  limit = 1;
  /** Of the panel in sound, k0 a with a = 2S/U. */
  size = 0;
  #q2 = 0;
  #grazing = 1;
  #slope = 0;
  /** k0, area and perimeter at hand. */
  readonly #known = new Float64Array(3);

  /** Prepares for wave number `k0_rad_m` and a panel of `area_m2` and `perimeter_m`; the same again costs nothing. */
  prepare(k0_rad_m: number, area_m2: number, perimeter_m: number): this {
    const known = this.#known;
    if (known[0] === k0_rad_m && known[1] === area_m2 && known[2] === perimeter_m) return this;
    known[0] = k0_rad_m;
    known[1] = area_m2;
    known[2] = perimeter_m;
    this.size = (k0_rad_m * 2 * area_m2) / perimeter_m;
    const ka = Math.max(this.size, KA_GUARD);
    const q = (2 * Math.PI) / (k0_rad_m * k0_rad_m * area_m2);
    this.#q2 = q * q;
    this.limit = Math.min(1.3 * Math.sqrt(Math.PI / (2 * ka)), 1);
    this.#grazing = 1 / ((2 / 3) * Math.sqrt((2 * ka) / Math.PI) - 0.124);
    this.#slope = this.#grazing / this.limit - 1;
    return this;
  }

  at(u: number): number {
    const g = u >= this.limit ? u : this.#grazing - this.#slope * u;
    return 1 / Math.sqrt(g * g + this.#q2);
  }

  /**
   * What share of a free wave's energy at `u` a floor of finite size takes in, against an endless one: as much, by
   * reciprocity, as the limit leaves of its radiation, u against g.
   */
  taken(u: number): number {
    return u >= this.limit ? 1 : u / (this.#grazing - this.#slope * u);
  }
}

/** Below it the grazing term changes sign; the panel is then far smaller than a wavelength and q rules. */
const KA_GUARD = 0.08;
