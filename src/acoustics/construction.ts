/**
 * What the engine is given: one floor-ceiling, from the upper room down, in SI units and with no references left.
 *
 * A construction is leaf – interlayer – leaf – … – leaf. A leaf is one or more sheets lying on each other; an interlayer
 * is a mat or a cavity. A sheet of thickness 0 is absent; a leaf without sheets is absent together with the interlayer
 * next to it (see `normalise-construction.ts`), so that a slider may run down to zero.
 */
export interface Construction {
  /** Sides of the floor, m, each > 0. The laboratory specimen behind most published values is about 10 m². */
  readonly length_m: number;
  readonly width_m: number;
  /** What lies on the uppermost leaf and is struck first; absent on a bare floor. */
  readonly covering?: Covering;
  /** Alternating leaf, interlayer, …, leaf, from the upper room down. */
  readonly layers: readonly ConstructionLayer[];
  /** Sound that goes around by the walls. Absent: none. */
  readonly flanking?: FlankingLimit | FlankingWalls;
  /** Gaps and penetrations. Absent: none. */
  readonly leaks?: readonly Leak[];
}

export type ConstructionLayer = Leaf | Interlayer;
export type Interlayer = Mat | Cavity;

/** How sheets of one leaf lie on each other: free to slide, glued, or with a thin viscoelastic layer between. */
export const SHEET_CONTACTS = ['loose', 'bonded', 'damped'] as const;
export type SheetContact = (typeof SHEET_CONTACTS)[number];

export interface Leaf {
  readonly kind: 'leaf';
  readonly sheets: readonly Sheet[];
  readonly contact: SheetContact;
}

export const SHEET_FORMS = ['slab', 'board'] as const;
export type SheetForm = (typeof SHEET_FORMS)[number];

export interface Sheet {
  /** Shown to people only; the engine does not read it. */
  readonly name: string;
  readonly thickness_m: number;
  readonly density_kg_m3: number;
  /** Along the stiffer direction where the two differ. */
  readonly youngsModulus_Pa: number;
  /** Across it; absent for an isotropic sheet. */
  readonly youngsModulusAcross_Pa?: number;
  readonly poissonRatio: number;
  readonly lossFactor: number;
  /** 'slab' for concrete and screeds cast in one piece, 'board' for sheets fastened to a frame. */
  readonly form: SheetForm;
  /** Local stiffness under a hammer, N/m. Absent: rigid, as bare concrete. */
  readonly contactStiffness_N_m?: number;
}

export interface Covering {
  readonly name: string;
  readonly surfaceMass_kg_m2: number;
  readonly contactStiffness_N_m: number;
  readonly thickness_m: number;
}

export interface Mat {
  readonly kind: 'mat';
  readonly name: string;
  readonly thickness_m: number;
  /** s', dynamic stiffness per area as declared, under 200 kg/m² (ISO 9052-1), N/m³; see `mat-under-load.ts`. */
  readonly dynamicStiffness_N_m3: number;
  readonly lossFactor: number;
}

export const JOIST_KINDS = ['none', 'solid-timber', 'i-joist', 'open-truss', 'cold-formed-steel'] as const;
export type JoistKind = (typeof JOIST_KINDS)[number];

/**
 * How the leaf below hangs: screwed to the joists, on resilient channel, on isolation clips with furring channel, on
 * spring hangers, or on ceiling joists of its own.
 */
export const SUPPORT_KINDS = ['direct', 'resilient-channel', 'clips', 'hangers', 'separate-joists'] as const;
export type SupportKind = (typeof SUPPORT_KINDS)[number];

export interface Cavity {
  readonly kind: 'cavity';
  readonly joists: JoistKind;
  /** Height of the joists, or of the gap where there are none, m. The support's own height comes on top. */
  readonly depth_m: number;
  readonly joistWidth_m: number;
  readonly joistSpacing_m: number;
  readonly support: SupportKind;
  /** Distance between channel lines, m. Absent: usual for the kind of support. */
  readonly supportLineSpacing_m?: number;
  /** Distance between fastenings along one line, m. Absent: usual for the kind of support. */
  readonly supportPointSpacing_m?: number;
  /** Height the support adds below the joists, m. Absent: usual for the kind of support. */
  readonly supportHeight_m?: number;
  /** Stiffness of one support at low audio frequency, N/m. Absent: the engine's fitted constant for the kind. */
  readonly supportStiffness_N_m?: number;
  /** Natural frequency stated for spring hangers under the ceiling they carry, Hz; read for 'hangers' only. */
  readonly hangerFrequency_Hz?: number;
  /** Fibre lying on the lower leaf; absent: empty. The list allows several kinds, from the lower leaf up. */
  readonly fill: readonly FibreLayer[];
}

export interface FibreLayer {
  readonly name: string;
  readonly thickness_m: number;
  /** Flow resistivity r_f, Pa·s/m². */
  readonly flowResistivity_Pa_s_m2: number;
  /** Bulk density, kg/m³: weight only. */
  readonly density_kg_m3: number;
}

/** A limit curve for everything that goes around the floor: R at 500 Hz and its slope. Values are assumed, not measured. */
export interface FlankingLimit {
  readonly R500_dB: number;
  readonly slope_dB_per_octave: number;
}

/** The walls beside the floor one by one, each going on from the room above to the room below. */
export interface FlankingWalls {
  readonly walls: readonly FlankingWall[];
}

export interface FlankingWall {
  readonly name: string;
  /** Length along which the wall meets the floor, m. */
  readonly junctionLength_m: number;
  /** Height of the wall in each of the two rooms, m. */
  readonly height_m: number;
  readonly surfaceMass_kg_m2: number;
  readonly reduction: WallReduction;
  readonly junction: WallJunction;
}

/** A laboratory rating alone, or what the transmission loss of a homogeneous wall is computed from. */
export type WallReduction =
  | { readonly kind: 'rated'; readonly Rw_dB: number }
  | {
      readonly kind: 'homogeneous';
      readonly thickness_m: number;
      readonly longitudinalSpeed_m_s: number;
      readonly internalLossFactor: number;
    };

/** How the floor meets the wall, where that tells K_ij. */
export const USUAL_JUNCTIONS = ['cross', 'tee', 'light-facade', 'joists'] as const;

/**
 * How the floor meets the wall: a heavy floor on both sides of it ('cross') or on one ('tee'), a light facade past a heavy
 * floor, joists against a heavy wall that goes on through, or K_ij as measured.
 */
export type WallJunction =
  | { readonly kind: (typeof USUAL_JUNCTIONS)[number] }
  | { readonly kind: 'measured'; readonly straightK_dB: number; readonly cornerK_dB: number };

/** A slit along `length_m` or, without length, a round hole, open all the way; with a side of 0 it is closed. */
export interface Leak {
  readonly name: string;
  readonly width_m: number;
  readonly length_m?: number;
  readonly depth_m: number;
}
