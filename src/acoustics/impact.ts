import { COVERING_LOSS_FACTOR } from './covering-loss.ts';
import type { FastWaves } from './fast-waves.ts';
import { type FloorModel, holdsLowerLeaf } from './floor-model.ts';
import { type Contact, contactOf } from './hammer-contact.ts';
import { plateAt } from './leaf-plate.ts';
import { naturalFrequency_Hz } from './natural-frequency.ts';
import type { Quadrature } from './quadrature.ts';
import type { ReverberantField } from './reverberant-field.ts';
import { ribFactor } from './ribbed-deck.ts';
import { SlowWaves } from './slow-waves.ts';
import { type StruckMotion, struckPlates } from './struck-plates.ts';
import { TAPPING_MACHINE, tappingForce2_N2_Hz } from './tapping-machine.ts';

/** Sound power below, per hertz, of the tapping machine on the floor, W/Hz. */
export interface ImpactShares {
  direct: number;
  supports: number;
}

/** Impact sound of a floor, frequency by frequency; buffers are kept between calls. */
export class Impact {
  readonly shares: ImpactShares = { direct: 0, supports: 0 };
  readonly #model: FloorModel;
  readonly #slow: SlowWaves;
  readonly #reverberant: ReverberantField;
  readonly #lowerExtraLoss: number;
  /** Of a hammer on the surface it strikes; Infinity on bare concrete. */
  readonly contactResonance_Hz: number;
  readonly #contact: Contact;
  readonly #hasSupports: boolean;
  /** The leaf whose field supports are given: the struck one, or the one below the mat that it lies on. */
  readonly #fieldIn: 0 | 1;
  /** Of a floor on a mat, at the resonance of hammer and surface; of others it is the same at every frequency. */
  readonly #reboundMobility_m_Ns: number | undefined;
  // Of the blows at hand: power below per sum of the waves, and per power of the reverberant field.
  #perRadiated = 0;
  #perReverberant = 0;

  /** @param reverberant Prepared by the caller. */
  constructor(model: FloorModel, quadrature: Quadrature, reverberant: ReverberantField) {
    this.#model = model;
    this.#slow = new SlowWaves(model, quadrature);
    this.#reverberant = reverberant;
    this.#lowerExtraLoss = model.plates[1]?.struckExtraLoss ?? 0;
    this.#contact = surfaceContact(model);
    this.contactResonance_Hz = naturalFrequency_Hz(this.#contact.stiffness_N_m, TAPPING_MACHINE.hammerMass_kg);
    this.#hasSupports = model.interlayers.some(holdsLowerLeaf);
    const floats = model.interlayers[0]?.kind === 'mat';
    this.#fieldIn = floats ? 1 : 0;
    this.#reboundMobility_m_Ns = floats ? mobilityAt(model, this.contactResonance_Hz) : undefined;
  }

  /**
   * Takes the blows at `f_Hz`, which `waves` are prepared for.
   *
   * Supports: the reverberant field of the leaf that they hang on, held back by the joists as ribs, and what they pass on.
   * @returns What the supports give per `waves.struck.radiated`, as far as no sum over waves is needed to tell.
   */
  prepare(f_Hz: number, waves: FastWaves): number {
    const { air, plates } = this.#model;
    const { line } = waves;
    const z0 = air.density_kg_m3 * air.soundSpeed_m_s;
    const omega = 2 * Math.PI * f_Hz;
    const k0 = omega / air.soundSpeed_m_s;
    const motion = struckPlates(this.#model, line.states, f_Hz, line.struckExtraLoss[0]!, this.#lowerExtraLoss, struck);
    const { stiffness_N_m, lossFactor } = this.#contact;
    const rebound = this.#reboundMobility_m_Ns ?? motion.mobility_m_Ns;
    const force2 = tappingForce2_N2_Hz(f_Hz, motion.mobility_m_Ns, stiffness_N_m, lossFactor, rebound);
    this.#perRadiated = (force2 * z0 * k0 * k0) / (2 * Math.PI);
    if (!this.#hasSupports) return 0;
    this.#perReverberant = force2 * motion.field_m4_s2 * ribFactor(this.#model, line.states, f_Hz);
    return plates.length === 2 ? this.#throughSupports(waves) / this.#perRadiated : 0;
  }

  /**
   * Fills `shares` for the blows taken, `waves` being summed.
   *
   * Waves: W = ∫₀^∞ F² |V_N(k)|² ρ0c0 σ(k) k dk/2π, with Davy's σ below k0 and the edges' radiation above.
   */
  at(f_Hz: number, waves: FastWaves): ImpactShares {
    const { shares } = this;
    shares.supports = this.#hasSupports ? this.#throughSupports(waves) : 0;
    const slow = this.#slow.radiated(f_Hz, waves, shares.supports / this.#perRadiated);
    shares.direct = this.#perRadiated * (waves.struck.radiated + slow);
    return shares;
  }

  #throughSupports(waves: FastWaves): number {
    return this.#perReverberant * this.#reverberant.throughSupports(waves, waves.struck, this.#fieldIn);
  }
}

/** Used by one frequency after another. */
const struck: StruckMotion = { mobility_m_Ns: 0, field_m4_s2: 0 };

/** Normalised impact sound level re 10 m² of a sound power in one band, dB: 10 lg(4ρ0c0W/A0 / p0²). ISO 10140-3. */
export function normalisedImpactLevel_dB(power_W: number, impedance_Pa_s_m: number): number {
  return 10 * Math.log10((4 * impedance_Pa_s_m * power_W) / 10 / 4e-10);
}

/** Covering and struck leaf as springs one after the other: each takes of a blow by what it gives way. */
export function surfaceContact({ construction: { covering }, plates }: FloorModel): Contact {
  const leaf = contactOf(plates[0]!.leaf.sheets);
  if (!covering) return leaf;
  const leafGive = 1 / leaf.stiffness_N_m;
  const coveringGive = 1 / covering.contactStiffness_N_m;
  const give = leafGive + coveringGive;
  return {
    stiffness_N_m: 1 / give,
    lossFactor: (COVERING_LOSS_FACTOR * coveringGive + leaf.lossFactor * leafGive) / give,
  };
}

function mobilityAt(model: FloorModel, f_Hz: number): number {
  const at_Hz = Math.min(f_Hz, FASTEST_CONTACT_Hz);
  const states = model.plates.map((plate) => plateAt(plate, at_Hz, { bending_Nm: 0, lossFactor: 0 }));
  return struckPlates(model, states, at_Hz, 0, 0, struck).mobility_m_Ns;
}

/** Harder contacts, bare concrete among them, do not rebound on any mat. */
const FASTEST_CONTACT_Hz = 20_000;
