import type { Air } from './air.ts';
import { type BendingSheet, constrainedPair } from './constrained-layer.ts';
import type { Leaf } from './construction.ts';
import { LEAST_LOSS_FACTOR } from './least-loss.ts';
import type { ModelConstants } from './model-constants.ts';
import {
  bendingParts_Nm,
  longitudinalSpeed_m_s,
  meanModulus_Pa,
  sheetBending_Nm,
  sheetInPlane_N_m,
  total,
} from './sheet-bending.ts';
import { softeningKink_Hz, thickPlateFactor } from './thick-plate.ts';

/** A leaf as one plate: what does not change with frequency, and the way to what does. */
export interface LeafPlate {
  readonly leaf: Leaf;
  readonly sheets: readonly PlateSheet[];
  readonly surfaceMass_kg_m2: number;
  readonly thickness_m: number;
  /** Static bending stiffness per width, the geometric mean of both directions, N·m. */
  readonly staticBending_Nm: number;
  /** Static stiffness along and across, as a ratio to that mean: 1 for an isotropic leaf. */
  readonly alongRatio: number;
  /** c²/2π √(m'/B) with the static stiffness, Hz. */
  readonly criticalFrequency_Hz: number;
  /** What sheets cast in one piece hold of the bending energy, 0–1. */
  readonly castShare: number;
  /** What slabs hold of it that rest on their edges and are built in, not a screed on a mat or a topping on boards. */
  readonly builtInShare: number;
  /** Loss factor added while the leaf is struck: of boards on joists, which drain their reverberant field. */
  readonly struckExtraLoss: number;
}

/** One sheet of a leaf by itself, its stiffness static and the mean of both directions. */
export interface PlateSheet extends BendingSheet {
  readonly thickness_m: number;
  readonly longitudinalSpeed_m_s: number;
  /** What it holds of the leaf's bending energy at low frequency, 0–1. */
  readonly energyShare: number;
}

/** Bending stiffness (mean of both directions) and total loss factor, `LEAST_LOSS_FACTOR` at least, at one frequency. */
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

/**
 * A slab sheet laid on boards or on a mat loses energy at the interface and at its edges: the model's `toppingLossFactor` at
 * least. It counts, as all loss, by what the sheet holds of the leaf's bending energy, so that a thin topping leaves a deck
 * as it was. In the same way the joists drain only what the boards on them hold. Where neither joists nor a mat carry the
 * boards, a slab on them spans itself by what it is stiffer than they, and is built in as far as that.
 */
export function leafPlate(
  leaf: Leaf,
  { onMat, onJoists, carried_kg_m2 }: LeafPlace,
  constants: ModelConstants,
  air: Air,
): LeafPlate {
  const mass = carried_kg_m2 + total(leaf.sheets.map((s) => s.density_kg_m3 * s.thickness_m));
  const along = total(bendingParts_Nm(leaf, (s) => s.youngsModulus_Pa));
  const across = total(bendingParts_Nm(leaf, (s) => s.youngsModulusAcross_Pa ?? s.youngsModulus_Pa));
  const bending = Math.sqrt(along * across);
  const parts = bendingParts_Nm(leaf, meanModulus_Pa);
  const whole = total(parts);
  const castShares = parts.map((part, i) => (leaf.sheets[i]!.form === 'slab' ? part / whole : 0));
  const castShare = Math.min(total(castShares), 1);
  const lowestBoard = leaf.sheets.findLastIndex((s) => s.form === 'board');
  const onBoards = onJoists ? 1 : 1 - castShare;
  const laid = leaf.sheets.map(({ form }, i) => (form === 'board' ? 0 : onMat ? 1 : i < lowestBoard ? onBoards : 0));
  return {
    leaf,
    sheets: leaf.sheets.map((sheet, i) => {
      const lossFactor = sheet.lossFactor + laid[i]! * Math.max(constants.toppingLossFactor - sheet.lossFactor, 0);
      return {
        bending_Nm: sheetBending_Nm(sheet, meanModulus_Pa(sheet)),
        lossFactor,
        inPlane_N_m: sheetInPlane_N_m(sheet, meanModulus_Pa(sheet)),
        inPlaneLossFactor: lossFactor,
        thickness_m: sheet.thickness_m,
        upperFace_m: sheet.thickness_m / 2,
        lowerFace_m: sheet.thickness_m / 2,
        surfaceMass_kg_m2: sheet.density_kg_m3 * sheet.thickness_m,
        longitudinalSpeed_m_s: longitudinalSpeed_m_s(sheet),
        energyShare: parts[i]! / whole,
      };
    }),
    surfaceMass_kg_m2: mass,
    thickness_m: total(leaf.sheets.map((s) => s.thickness_m)),
    staticBending_Nm: bending,
    alongRatio: along / bending,
    criticalFrequency_Hz: coincidence_Hz(mass, bending, air),
    castShare,
    builtInShare: total(castShares.map((share, i) => share * (1 - laid[i]!))),
    struckExtraLoss: onJoists ? constants.deckImpactLossFactor * (1 - castShare) : 0,
  };
}

/**
 * Stiffness and loss factor at `f_Hz`, written into `out`.
 *
 * Heavy slabs built in lose energy to the walls: η + m'/(485 √f), EN 12354-1:2000, Annex C (from memory).
 */
export function plateAt(plate: LeafPlate, f_Hz: number, out: PlateState): PlateState {
  const { sheets } = plate;
  const { contact } = plate.leaf;
  if (contact === 'loose' || sheets.length === 1) looseState(sheets, f_Hz, out);
  else if (contact === 'damped') dampedState(sheets, f_Hz, out);
  else bondedState(plate, f_Hz, out);
  if (plate.builtInShare > 0) {
    out.lossFactor += (plate.builtInShare * plate.surfaceMass_kg_m2) / (485 * Math.sqrt(f_Hz));
  }
  out.lossFactor = Math.max(out.lossFactor, LEAST_LOSS_FACTOR);
  return out;
}

function looseState(sheets: readonly PlateSheet[], f_Hz: number, out: PlateState): void {
  let bending = 0;
  let loss = 0;
  for (const sheet of sheets) {
    const own = softened_Nm(sheet, f_Hz);
    bending += own;
    loss += own * sheet.lossFactor;
  }
  out.lossFactor = loss / bending;
  out.bending_Nm = bending;
}

/** One section, its loss weighed by what each sheet holds of the energy, stretched or bent. */
function bondedState(plate: LeafPlate, f_Hz: number, out: PlateState): void {
  let loss = 0;
  for (const sheet of plate.sheets) loss += sheet.energyShare * sheet.lossFactor;
  out.lossFactor = loss;
  out.bending_Nm = plate.staticBending_Nm * thickPlateFactor(f_Hz, plate.thickness_m, meanSpeed_m_s(plate));
}

function dampedState(sheets: readonly PlateSheet[], f_Hz: number, out: PlateState): void {
  let stack: BendingSheet = { ...sheets[0]!, bending_Nm: softened_Nm(sheets[0]!, f_Hz) };
  for (const sheet of sheets.slice(1)) {
    stack = constrainedPair(stack, { ...sheet, bending_Nm: softened_Nm(sheet, f_Hz) }, 2 * Math.PI * f_Hz);
  }
  out.bending_Nm = stack.bending_Nm;
  out.lossFactor = stack.lossFactor;
}

function softened_Nm({ bending_Nm, thickness_m, longitudinalSpeed_m_s }: PlateSheet, f_Hz: number): number {
  return bending_Nm * thickPlateFactor(f_Hz, thickness_m, longitudinalSpeed_m_s);
}

/** Where the stiffness of the leaf has a kink over frequency, Hz. */
export function softeningKinks_Hz(plate: LeafPlate): number[] {
  const { leaf, sheets, thickness_m } = plate;
  if (leaf.contact !== 'bonded' || sheets.length === 1) {
    return sheets.map((s) => softeningKink_Hz(s.thickness_m, s.longitudinalSpeed_m_s));
  }
  return [softeningKink_Hz(thickness_m, meanSpeed_m_s(plate))];
}

function meanSpeed_m_s({ sheets, thickness_m }: LeafPlate): number {
  let sum = 0;
  for (const sheet of sheets) sum += sheet.longitudinalSpeed_m_s * sheet.thickness_m;
  return sum / thickness_m;
}
