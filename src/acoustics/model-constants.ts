/**
 * The constants of the model that no handbook gives: one set for every construction, fitted on the reference
 * constructions of `tests/published/` with the priors of `accuracy-fit.ts` in `src/commands/`. Passed as an argument
 * so that the fit, and a curious reader, may vary it. METHOD.md lists what each does.
 */
export interface ModelConstants {
  /** Loss factor of the bays between fastenings, in the impedance of lines and points of fastening. */
  readonly bayLossFactor: number;
  /** Stiffness of one crossing of a resilient channel with a joist at low audio frequency, N/m. */
  readonly channelStiffness_N_m: number;
  /** Rise of that stiffness with frequency: s = s_0 (1 + (f/200 Hz)^x). */
  readonly channelExponent: number;
  /** Stiffness of one isolation clip at low audio frequency, N/m. */
  readonly clipStiffness_N_m: number;
  /** The same rise for clips; assumed: their rubber stiffens less than a channel that twists. Not fitted. */
  readonly clipExponent: number;
  /** Stiffness of a light steel stud (0.5 mm) across its flanges, N/m per metre of stud. */
  readonly studStiffness_N_m2: number;
  readonly studExponent: number;
  /** Weight of the sound that the near fields of the fastenings radiate, incoherently. */
  readonly nearFieldWeight: number;
  /** Weight of the sound of the reverberant field that the supports feed. */
  readonly reverberantWeight: number;
  /** Loss factor added to a deck fastened to joists while it is struck, by what its boards hold of its stiffness. */
  readonly deckImpactLossFactor: number;
  /** Frequency above which the mass of the joists no longer moves with the leaf, Hz. Empirical. */
  readonly joistInertiaLimit_Hz: number;
  /** Absorption coefficient of the leaves and joists around a cavity: η = αc/(2dω) for depth d, diffuse sound inside. */
  readonly cavityAbsorption: number;
  /** Absorption coefficient of the edges of a cavity without joists. Set by hand to double glazing of EN 12758 (METHOD.md). */
  readonly openCavityEdgeAbsorption: number;
  /** Part of its edges along which a leaf on joists of its own meets the other leaf in the walls around. Set by hand (METHOD.md). */
  readonly sharedEdge: number;
  /** Loss factor of channels, clips and hangers; assumed, of the order of rubber. */
  readonly supportLossFactor: number;
  /**
   * Least loss factor of a slab sheet laid on boards or on a mat: friction at the interface and at the edges. Common practice, no
   * source: of usual toppings 0.10 to 0.12.
   */
  readonly toppingLossFactor: number;
}

export const MODEL_CONSTANTS: ModelConstants = {
  bayLossFactor: 0.276,
  channelStiffness_N_m: 3.39e5,
  channelExponent: 0.906,
  clipStiffness_N_m: 8.63e5,
  clipExponent: 0.3,
  studStiffness_N_m2: 2.89e5,
  studExponent: 1.22,
  nearFieldWeight: 0.834,
  reverberantWeight: 0.43,
  deckImpactLossFactor: 0.356,
  joistInertiaLimit_Hz: 147,
  cavityAbsorption: 0.103,
  openCavityEdgeAbsorption: 0.15,
  sharedEdge: 0.05,
  supportLossFactor: 0.1,
  toppingLossFactor: 0.11,
};
