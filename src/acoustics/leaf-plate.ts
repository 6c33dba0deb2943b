import type { Air } from './air.ts';
import { type BendingSheet, constrainedPair } from './constrained-layer.ts';
import type { Leaf, Sheet } from './construction.ts';
import type { ModelConstants } from './model-constants.ts';
import { softeningKink_Hz, thickPlateFactor } from './thick-plate.ts';

/** A leaf as one plate: what does not change with frequency, and the way to what does. */
export interface LeafPlate {
  readonly leaf: Leaf;
  readonly surfaceMass_kg_m2: number;
  readonly thickness_m: number;
  /** Static bending stiffness per width, the geometric mean of both directions, N·m. */
  readonly staticBending_Nm: number;
  /** Static stiffness along and across, as a ratio to that mean: 1 for an isotropic leaf. */
  readonly alongRatio: number;
  /** c²/2π √(m'/B) with the static stiffness, Hz. */
  readonly criticalFrequency_Hz: number;
  readonly kind: 'slab' | 'board' | 'topping-on-deck';
  /** A deck of boards on joists, which drain its reverberant field when it is struck. */
  readonly deckOnJoists: boolean;
  /** Rests on its edges and is built in, as a structural slab; a screed on a mat is not. */
  readonly builtIn: boolean;
}

/** Bending stiffness (mean of both directions) and total loss factor at one frequency. */
export interface PlateState {
  bending_Nm: number;
  lossFactor: number;
}

/** Where a leaf stands in the floor. */
export interface LeafPlace {
  /** Lies on a mat: then its edges are free and it loses no energy to walls. */
  readonly onMat: boolean;
  /** Lies on joists. */
  readonly onJoists: boolean;
  /** Mass per area of what lies on it without stiffness of its own. */
  readonly carried_kg_m2: number;
}

/** c²/2π √(m'/B): the frequency at which bending waves of a plate run as fast as sound, Hz. */
export function coincidence_Hz(surfaceMass_kg_m2: number, bending_Nm: number, { soundSpeed_m_s: c }: Air): number {
  return ((c * c) / (2 * Math.PI)) * Math.sqrt(surfaceMass_kg_m2 / bending_Nm);
}

export function leafPlate(leaf: Leaf, { onMat, onJoists, carried_kg_m2 }: LeafPlace, air: Air): LeafPlate {
  const mass = leaf.sheets.reduce((sum, s) => sum + s.density_kg_m3 * s.thickness_m, carried_kg_m2);
  const along = leafBending(leaf, (s) => s.youngsModulus_Pa);
  const across = leafBending(leaf, (s) => s.youngsModulusAcross_Pa ?? s.youngsModulus_Pa);
  const bending = Math.sqrt(along * across);
  const slabs = leaf.sheets.filter((s) => s.form === 'slab').length;
  const kind = slabs === 0 ? 'board' : slabs === leaf.sheets.length ? 'slab' : 'topping-on-deck';
  return {
    leaf,
    surfaceMass_kg_m2: mass,
    thickness_m: leaf.sheets.reduce((sum, s) => sum + s.thickness_m, 0),
    staticBending_Nm: bending,
    alongRatio: along / bending,
    criticalFrequency_Hz: coincidence_Hz(mass, bending, air),
    kind,
    deckOnJoists: kind === 'board' && onJoists,
    builtIn: kind === 'slab' && !onMat,
  };
}

/**
 * Stiffness and loss factor at `f_Hz`, written into `out`.
 *
 * Heavy slabs built in lose energy to the walls: η + m'/(485 √f), EN 12354-1:2000, Annex C (from memory). A topping on a
 * deck loses it at the interface: the model's `toppingLossFactor`.
 */
export function plateAt(plate: LeafPlate, f_Hz: number, constants: ModelConstants, out: PlateState): PlateState {
  const { leaf } = plate;
  if (leaf.contact === 'damped' && leaf.sheets.length > 1) dampedState(leaf, f_Hz, out);
  else sumState(plate, f_Hz, out);
  if (plate.builtIn) out.lossFactor += plate.surfaceMass_kg_m2 / (485 * Math.sqrt(f_Hz));
  else if (plate.kind !== 'board') out.lossFactor = Math.max(out.lossFactor, constants.toppingLossFactor);
  return out;
}

function sumState(plate: LeafPlate, f_Hz: number, out: PlateState): void {
  const { leaf, thickness_m } = plate;
  const bonded = leaf.contact === 'bonded' && leaf.sheets.length > 1;
  let bending = 0;
  let loss = 0;
  let speed = 0;
  for (const sheet of leaf.sheets) {
    const cL = longitudinalSpeed_m_s(sheet);
    const own =
      sheetBending(sheet, meanModulus_Pa(sheet)) * (bonded ? 1 : thickPlateFactor(f_Hz, sheet.thickness_m, cL));
    bending += own;
    loss += own * sheet.lossFactor;
    speed += (cL * sheet.thickness_m) / thickness_m;
  }
  out.lossFactor = loss / bending;
  out.bending_Nm = bonded ? plate.staticBending_Nm * thickPlateFactor(f_Hz, thickness_m, speed) : bending;
}

/** Where the stiffness of the leaf has a kink over frequency, Hz. */
export function softeningKinks_Hz({ leaf, thickness_m }: LeafPlate): number[] {
  if (leaf.contact !== 'bonded' || leaf.sheets.length === 1) {
    return leaf.sheets.map((s) => softeningKink_Hz(s.thickness_m, longitudinalSpeed_m_s(s)));
  }
  const speed = leaf.sheets.reduce((sum, s) => sum + longitudinalSpeed_m_s(s) * s.thickness_m, 0) / thickness_m;
  return [softeningKink_Hz(thickness_m, speed)];
}

function dampedState(leaf: Leaf, f_Hz: number, out: PlateState): void {
  let stack = bendingSheet(leaf.sheets[0]!, f_Hz);
  for (const sheet of leaf.sheets.slice(1)) {
    const next = bendingSheet(sheet, f_Hz);
    const pair = constrainedPair(stack, next, 2 * Math.PI * f_Hz);
    stack = {
      ...pair,
      inPlane_N_m: stack.inPlane_N_m + next.inPlane_N_m,
      thickness_m: stack.thickness_m + next.thickness_m,
      surfaceMass_kg_m2: stack.surfaceMass_kg_m2 + next.surfaceMass_kg_m2,
    };
  }
  out.bending_Nm = stack.bending_Nm;
  out.lossFactor = stack.lossFactor;
}

function bendingSheet(sheet: Sheet, f_Hz: number): BendingSheet {
  const modulus = meanModulus_Pa(sheet);
  return {
    bending_Nm: sheetBending(sheet, modulus) * thickPlateFactor(f_Hz, sheet.thickness_m, longitudinalSpeed_m_s(sheet)),
    lossFactor: sheet.lossFactor,
    inPlane_N_m: modulus * sheet.thickness_m,
    thickness_m: sheet.thickness_m,
    surfaceMass_kg_m2: sheet.density_kg_m3 * sheet.thickness_m,
  };
}

/** Static stiffness of the leaf: sheets that slide add up; a bonded (or, statically, damped) leaf is one section. */
function leafBending(leaf: Leaf, modulusOf: (sheet: Sheet) => number): number {
  const own = leaf.sheets.reduce((sum, s) => sum + sheetBending(s, modulusOf(s)), 0);
  if (leaf.contact !== 'bonded') return own;
  let depth = 0;
  let stiffness = 0;
  let moment = 0;
  let second = 0;
  for (const sheet of leaf.sheets) {
    const inPlane = (modulusOf(sheet) * sheet.thickness_m) / (1 - sheet.poissonRatio ** 2);
    const middle = depth + sheet.thickness_m / 2;
    stiffness += inPlane;
    moment += inPlane * middle;
    second += inPlane * middle * middle;
    depth += sheet.thickness_m;
  }
  return own + second - (moment * moment) / stiffness;
}

function sheetBending(sheet: Sheet, modulus_Pa: number): number {
  const { thickness_m: h, poissonRatio: nu } = sheet;
  return (modulus_Pa * h * h * h) / (12 * (1 - nu * nu));
}

function meanModulus_Pa(sheet: Sheet): number {
  return Math.sqrt(sheet.youngsModulus_Pa * (sheet.youngsModulusAcross_Pa ?? sheet.youngsModulus_Pa));
}

function longitudinalSpeed_m_s(sheet: Sheet): number {
  const { poissonRatio: nu } = sheet;
  return Math.sqrt(meanModulus_Pa(sheet) / (sheet.density_kg_m3 * (1 - nu * nu)));
}
