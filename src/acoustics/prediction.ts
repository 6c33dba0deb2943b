import type { ModelConstants } from './model-constants.ts';
import type { Quadrature } from './quadrature.ts';

/** What the engine returns: plain data, safe to clone into another thread and to write as JSON. */
export interface Prediction {
  /** Nominal one-third-octave mid-band frequencies, Hz. All band arrays below have this length. */
  readonly bands_Hz: readonly number[];
  /** Transmission loss with every path added. NaN: no value. */
  readonly R_dB: readonly number[];
  /** R of each path as if it were alone. A path that does not exist is absent. */
  readonly paths_dB: PathLevels;
  /** Normalised impact sound level re 10 m², every path added. */
  readonly Ln_dB: readonly number[];
  readonly impactPaths_dB: PathLevels;
  readonly ratings: Ratings;
  readonly surfaceMass_kg_m2: number;
  /** Overall height of the build-up, m. */
  readonly height_m: number;
  readonly resonances_Hz: readonly NamedFrequency[];
  readonly criticalFrequencies_Hz: readonly NamedFrequency[];
  /** What rules R in each band, found from the computation. Same length as `bands_Hz`. */
  readonly mechanisms: readonly BandMechanism[];
  /** What rules Ln. */
  readonly impactMechanisms: readonly BandMechanism[];
}

/** What is heard below: sound in the air above, or blows on the floor. */
export type Sound = 'airborne' | 'impact';

export type PathName = 'direct' | 'supports' | 'flanking' | 'leaks';
export type PathLevels = Partial<Record<PathName, readonly number[]>>;

export interface NamedFrequency {
  readonly frequency_Hz: number;
  /** In plain words, e.g. "deck and ceiling bounce on the air and the channel". */
  readonly name: string;
  readonly kind: 'mass-spring-mass' | 'floating' | 'cavity' | 'critical' | 'bay';
}

export type Mechanism =
  | 'mass'
  | 'mobility'
  | 'hammer-contact'
  | 'mass-spring-mass'
  | 'double-leaf'
  | 'cavity-mode'
  | 'coincidence'
  | 'bay-resonance'
  | 'supports'
  | 'flanking'
  | 'leak';

export interface BandMechanism {
  readonly path: PathName;
  /** Share of the transmitted energy that takes this path, 0–1. */
  readonly share: number;
  readonly mechanism: Mechanism;
  /** The frequency behind the mechanism (f0, fc, first cavity mode …), where there is one. */
  readonly frequency_Hz?: number;
  /**
   * How much the mechanism shows in the band, dB: a resonance by how far R lies below, or Ln above, what the bands beside it
   * or the same floor moving as one lead one to expect; hammers on a soft surface by how much less their force is.
   */
  readonly effect_dB?: number;
}

/** Integers unless the standard says otherwise. NaN where the bands do not suffice. */
export interface Ratings {
  readonly STC: number;
  readonly OITC: number;
  readonly Rw: number;
  readonly C: number;
  readonly Ctr: number;
  readonly C50_3150: number;
  readonly Ctr50_3150: number;
  readonly C50_5000: number;
  readonly Ctr50_5000: number;
  readonly C100_5000: number;
  readonly Ctr100_5000: number;
  readonly IIC: number;
  readonly Lnw: number;
  readonly CI: number;
  readonly CI50_2500: number;
}

export interface PredictOptions {
  /** Lowest band, nominal Hz: 50 unless extended to 20. */
  readonly lowestBand_Hz?: 20 | 25 | 31.5 | 40 | 50;
  /** The model's global constants, to vary them; absent: the fitted ones. */
  readonly constants?: ModelConstants;
  /** How finely to integrate; absent: within 0.1 dB of a dense reference. */
  readonly quadrature?: Quadrature;
}
