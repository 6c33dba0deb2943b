/**
 * The document. Values are plain data in SI units; nothing here is ever changed in place: an edit makes a new notebook.
 *
 * The shapes are checked where text enters (`read-file.ts`), by a schema that must agree with these types.
 */
import type { JoistKind, SheetContact, SupportKind, WallJunction } from '#src/acoustics/construction.ts';
import type { Sound } from '#src/acoustics/prediction.ts';

export const FORMAT = 'slab-and-spring';
export const VERSION = 2;

export interface Notebook {
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
  readonly id: string;
  readonly title: string;
  readonly units: UnitSystem;
  readonly parameters: readonly Parameter[];
  readonly stacks: readonly Stack[];
  readonly materials: readonly OwnMaterial[];
  readonly flanking: Flanking;
  readonly cells: readonly Cell[];
  /** The first has no parent and no changes: it is the base. */
  readonly scenarios: readonly Scenario[];
  /** Ids of the scenarios that are shown, in order. */
  readonly shown: readonly string[];
  /** Id of the scenario that differences are taken from. */
  readonly reference: string;
  /** Id of the scenario that sliders and stack edits write to. */
  readonly active: string;
}

export type UnitSystem = 'SI' | 'inch-pound';

export type Parameter = QuantityParameter | ChoiceParameter;

/** Kinds of quantity that a parameter may carry; each has its units in `src/quantities/`. */
export type QuantityKind =
  | 'length'
  | 'span'
  | 'density'
  | 'surface-mass'
  | 'frequency'
  | 'dynamic-stiffness'
  | 'stiffness'
  | 'modulus'
  | 'flow-resistivity'
  | 'level'
  | 'ratio';

export interface QuantityParameter {
  readonly key: string;
  readonly label: string;
  readonly quantity: QuantityKind;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

export interface ChoiceParameter {
  readonly key: string;
  readonly label: string;
  readonly choices: readonly Choice[];
  readonly value: string;
}

export interface Choice {
  readonly value: string;
  readonly label: string;
}

export type ParameterValue = number | string;

/** A literal or a reference to a parameter. */
export type Field<T extends ParameterValue> = T | { readonly parameter: string };

export interface Stack {
  readonly id: string;
  readonly name: string;
  readonly length_m: Field<number>;
  readonly width_m: Field<number>;
  /** Key of a covering, built in or the notebook's own, or 'none'. */
  readonly covering: Field<string>;
  /** Alternating leaf, interlayer, …, leaf, from the upper room down. */
  readonly layers: readonly Layer[];
  /** Gaps and penetrations; absent: none. */
  readonly leaks?: readonly StackLeak[];
}

export type StackLeak = SlitLeak | HoleLeak;

export interface SlitLeak {
  readonly kind: 'slit';
  readonly id: string;
  readonly name: string;
  readonly width_m: Field<number>;
  readonly length_m: Field<number>;
  /** Of the way through, m. */
  readonly depth_m: Field<number>;
}

export interface HoleLeak {
  readonly kind: 'hole';
  readonly id: string;
  readonly name: string;
  readonly diameter_m: Field<number>;
  readonly depth_m: Field<number>;
}

export type Layer = LeafLayer | Interlayer;
export type Interlayer = MatLayer | CavityLayer;

export interface LeafLayer {
  readonly kind: 'leaf';
  readonly id: string;
  readonly name: string;
  readonly contact: Field<SheetContact>;
  readonly sheets: readonly SheetField[];
}

export interface SheetField {
  /** Key of a sheet material, built in or the notebook's own. */
  readonly material: Field<string>;
  /** 0: absent. */
  readonly thickness_m: Field<number>;
  /** Overrides the material's density, kg/m³. */
  readonly density_kg_m3?: Field<number>;
}

export interface MatLayer {
  readonly kind: 'mat';
  readonly id: string;
  readonly name: string;
  readonly thickness_m: Field<number>;
  readonly dynamicStiffness_N_m3: Field<number>;
  readonly lossFactor: Field<number>;
  /** Where the numbers come from; absent: not stated. */
  readonly source?: string;
}

export interface CavityLayer {
  readonly kind: 'cavity';
  readonly id: string;
  readonly name: string;
  readonly joists: Field<JoistKind>;
  readonly depth_m: Field<number>;
  readonly joistWidth_m: Field<number>;
  readonly joistSpacing_m: Field<number>;
  readonly support: Field<SupportKind>;
  readonly supportLineSpacing_m?: Field<number>;
  readonly supportPointSpacing_m?: Field<number>;
  readonly supportHeight_m?: Field<number>;
  readonly supportStiffness_N_m?: Field<number>;
  readonly hangerFrequency_Hz?: Field<number>;
  /** Key of a fibre material, or 'none'. */
  readonly fill: Field<string>;
  readonly fillThickness_m: Field<number>;
  /** Fibres lying on that one, from the lower one up; absent: none. */
  readonly fillsAbove?: readonly FillField[];
}

export interface FillField {
  /** Key of a fibre material, or 'none'. */
  readonly fill: Field<string>;
  /** 0: absent. */
  readonly fillThickness_m: Field<number>;
}

/** A material of the notebook's own. `source` says where the numbers come from. */
export type OwnMaterial = OwnSheetMaterial | OwnFibreMaterial | OwnCovering;

export interface OwnSheetMaterial {
  readonly kind: 'sheet';
  readonly key: string;
  readonly name: string;
  readonly source: string;
  readonly form: 'slab' | 'board';
  readonly density_kg_m3: number;
  readonly youngsModulus_Pa: number;
  /** Across the stiff direction; absent for an isotropic material. */
  readonly youngsModulusAcross_Pa?: number;
  readonly poissonRatio: number;
  readonly lossFactor: number;
  /** Local stiffness under a hammer, N/m; absent: that of a timber sheet for a board, rigid for a slab. */
  readonly contactStiffness_N_m?: number;
}

export interface OwnFibreMaterial {
  readonly kind: 'fibre';
  readonly key: string;
  readonly name: string;
  readonly source: string;
  readonly density_kg_m3: number;
  readonly flowResistivity_Pa_s_m2: number;
}

export interface OwnCovering {
  readonly kind: 'covering';
  readonly key: string;
  readonly name: string;
  readonly source: string;
  readonly surfaceMass_kg_m2: number;
  readonly thickness_m: number;
  /** Local stiffness under a hammer, N/m. */
  readonly contactStiffness_N_m: number;
}

/**
 * 'own' reads the two numbers, 'by the walls' the walls; the named limits are assumed values, shown as such. What a kind does
 * not read is kept for the day it is chosen again.
 */
export interface Flanking {
  readonly kind: 'none' | 'well isolated' | 'ordinary' | 'weak' | 'own' | 'by the walls';
  readonly R500_dB: number;
  readonly slope_dB_per_octave: number;
  readonly walls?: readonly FlankingWall[];
}

/** One wall beside the floor, above and below it alike. */
export type FlankingWall = HomogeneousWall | RatedWall;

interface WallBase {
  readonly id: string;
  readonly name: string;
  readonly junctionLength_m: number;
  readonly height_m: number;
  readonly junction: WallJunctionKind;
  /** K_ij straight on and around the corner, dB; read for the junction 'measured' only. */
  readonly straightK_dB: number;
  readonly cornerK_dB: number;
}

export interface HomogeneousWall extends WallBase {
  readonly kind: 'homogeneous';
  readonly material: WallMaterial;
  readonly thickness_m: number;
}

export interface RatedWall extends WallBase {
  readonly kind: 'rated';
  readonly surfaceMass_kg_m2: number;
  readonly Rw_dB: number;
}

export type WallJunctionKind = WallJunction['kind'];
export type WallMaterial = 'concrete' | 'calcium-silicate' | 'lightweight-concrete' | 'aerated-concrete';

export interface Scenario {
  readonly id: string;
  readonly name: string;
  /** Number of the colour, dash and marker it is drawn with, from 0. Its own for good; no other scenario has the same. */
  readonly mark: number;
  /** Null for the base only. */
  readonly parent: string | null;
  /** Sparse: parameter values that differ from the parent's. */
  readonly changes: Readonly<Record<string, ParameterValue>>;
}

interface CellBase {
  readonly id: string;
  readonly folded: boolean;
}

export interface CommentaryCell extends CellBase {
  readonly kind: 'commentary';
  /**
   * CommonMark; a link to `value:stack/quantity` or `value:scenario/stack/quantity` is a live value. A block quote whose
   * first line is `Answer:` is an answer, folded away until the reader asks; words behind the colon ("Answer: why the
   * ceiling rules") are what stands on the fold.
   */
  readonly text: string;
}

export interface ParametersCell extends CellBase {
  readonly kind: 'parameters';
  readonly title: string;
  /** Which parameters, in order; empty: all of the notebook's. */
  readonly parameters: readonly string[];
}

export interface StackCell extends CellBase {
  readonly kind: 'stack';
  readonly stack: string;
}

export type CurveQuantity = 'airborne' | 'impact' | 'difference' | 'impact-difference';
export type CurveOverlay =
  | 'mass-law'
  | 'contour'
  | 'resonances'
  | 'critical'
  | 'paths'
  | 'uncertainty'
  | 'limp-panel'
  | 'double-leaf'
  | 'floating-floor'
  | 'bare-slab';

export interface CurvesCell extends CellBase {
  readonly kind: 'curves';
  readonly title: string;
  readonly stack: string;
  readonly quantity: CurveQuantity;
  readonly overlays: readonly CurveOverlay[];
  /** Absent: 50. Ratings do not depend on it. */
  readonly lowestBand_Hz?: 20 | 50;
  /** Measured bands, drawn over the curves of their quantity; absent: none. */
  readonly measured?: readonly MeasuredBands[];
}

/** What somebody measured: transmission loss or normalised impact sound level. */
export interface MeasuredBands {
  readonly id: string;
  readonly name: string;
  /** Where the numbers come from; never blank. */
  readonly source: string;
  readonly quantity: Sound;
  /** Nominal mid-band frequencies of IEC 61260-1, ascending: one-third octaves, or octaves if all are such. */
  readonly bands_Hz: readonly number[];
  /** One per band; a band without a value is left out. */
  readonly values_dB: readonly number[];
}

export interface RatingsCell extends CellBase {
  readonly kind: 'ratings';
  readonly title: string;
  readonly stack: string;
  /** What goes around by the walls is left out of the ratings; absent: it is in them as the notebook counts it. */
  readonly floorAlone?: boolean;
  /** What a covering and what floats on a mat take off impact sound on the standard slab is unfolded; absent: it is not. */
  readonly laidPart?: boolean;
  /** The room below, for values as they would be measured in the building; absent: not asked for. */
  readonly receivingVolume_m3?: number;
  readonly reverberationTime_s?: number;
}

export interface PathsCell extends CellBase {
  readonly kind: 'paths';
  readonly title: string;
  readonly stack: string;
  readonly sound: Sound;
}

export type Cell = CommentaryCell | ParametersCell | StackCell | CurvesCell | RatingsCell | PathsCell;
export type CellKind = Cell['kind'];
