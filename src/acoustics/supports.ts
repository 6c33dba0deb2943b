import type { Cavity } from './construction.ts';
import type { Lattice } from './fastening-impedance.ts';
import { isHeldAtEdges } from './held-at-edges.ts';
import type { ModelConstants } from './model-constants.ts';
import type { PlateEdges } from './resonant-radiation.ts';

/** The mechanical way from the leaf above a cavity to the leaf below, per m² of floor where it says so. */
export interface SupportChain {
  /** Fastenings of the upper leaf to the joists, or to what hangs on it without. */
  readonly upper: Lattice;
  /** Mass of the joists per m² of floor, kg/m²; 0 without joists. */
  readonly joistMass_kg_m2: number;
  /** Springs between joists and lower leaf; absent where it is screwed direct. */
  readonly spring?: SupportSpring;
  /** Fastenings of the lower leaf; absent where nothing holds it to the joists (ceiling joists of its own). */
  readonly lower?: Lattice;
  /**
   * Where a leaf on joists of its own meets the other all the same: in the walls that carry both, as lines across the floor.
   * Forced waves cross there; free ones have their nodes at what carries them, so that neither the leaf's reverberant field
   * nor blows do. Our own.
   */
  readonly edges?: Lattice;
}

/** What passes force on to the lower leaf; absent where nothing does. */
export function joint(chain: SupportChain | undefined): Lattice | undefined {
  return chain?.lower ?? chain?.edges;
}

export interface SupportSpring {
  /** Low-frequency stiffness per m² of floor, N/m³. */
  readonly stiffness_N_m3: number;
  /** s = s_0 (1 + (f/200 Hz)^x); absent: constant. */
  readonly exponent?: number;
}

/** Usual spacings, m. Common practice, no source: screws every 16 in, channel lines 24 in, clips 24 × 48 in, hangers 4 ft. */
export const USUAL_SPACING_m = { screws: 0.406, channelLines: 0.61, furringLines: 0.61, clips: 1.22, hangers: 1.22 };

/** @returns undefined for a cavity without joists whose leaves nothing but their edges holds, as panes of glass. */
export function supportChain(
  cavity: Cavity,
  carriedMass_kg_m2: number,
  { area_m2, perimeter_m }: PlateEdges,
  constants: ModelConstants,
): SupportChain | undefined {
  const framed = cavity.joists !== 'none';
  if (isHeldAtEdges(cavity)) return undefined;
  const screws = USUAL_SPACING_m.screws;
  const lower = lowerLattice(cavity);
  const edges = { line_m: area_m2 / (constants.sharedEdge * perimeter_m), point_m: screws };
  const spring = supportSpring(cavity, lower, carriedMass_kg_m2, constants);
  return {
    upper: framed ? { line_m: cavity.joistSpacing_m, point_m: screws } : (lower ?? edges),
    joistMass_kg_m2: framed ? joistMass_kg_m(cavity) / cavity.joistSpacing_m : 0,
    ...(spring ? { spring } : {}),
    ...(lower ? { lower } : { edges }),
  };
}

function lowerLattice(cavity: Cavity): Lattice | undefined {
  const { supportLineSpacing_m: line, supportPointSpacing_m: point } = cavity;
  const crossing = cavity.joists === 'none' ? USUAL_SPACING_m.channelLines : cavity.joistSpacing_m;
  switch (cavity.support) {
    case 'direct':
      return { line_m: cavity.joistSpacing_m, point_m: point ?? USUAL_SPACING_m.screws };
    case 'resilient-channel':
      return { line_m: line ?? USUAL_SPACING_m.channelLines, point_m: point ?? crossing };
    case 'clips':
      return {
        line_m: line ?? USUAL_SPACING_m.furringLines,
        point_m: point ?? USUAL_SPACING_m.clips,
        lineBending_Nm2: FURRING_Nm2,
      };
    case 'hangers':
      return { line_m: line ?? USUAL_SPACING_m.hangers, point_m: point ?? USUAL_SPACING_m.hangers };
    case 'separate-joists':
      return undefined;
  }
}

function supportSpring(
  cavity: Cavity,
  lower: Lattice | undefined,
  carriedMass_kg_m2: number,
  constants: ModelConstants,
): SupportSpring | undefined {
  if (!lower) return undefined;
  const perArea = 1 / (lower.line_m * lower.point_m);
  const stated = cavity.supportStiffness_N_m;
  switch (cavity.support) {
    case 'resilient-channel':
      return {
        stiffness_N_m3: (stated ?? constants.channelStiffness_N_m) * perArea,
        exponent: constants.channelExponent,
      };
    case 'clips':
      return { stiffness_N_m3: (stated ?? constants.clipStiffness_N_m) * perArea, exponent: constants.clipExponent };
    case 'hangers': {
      const omega = 2 * Math.PI * (cavity.hangerFrequency_Hz ?? USUAL_HANGER_Hz);
      return { stiffness_N_m3: stated ? stated * perArea : omega * omega * carriedMass_kg_m2 };
    }
    default:
      if (cavity.joists !== 'cold-formed-steel') return undefined;
      return {
        stiffness_N_m3: (stated ?? steelStiffness_N_m2(cavity, constants)) / cavity.joistSpacing_m,
        exponent: constants.studExponent,
      };
  }
}

/** Spring hangers are chosen for 6 to 12 Hz under their load; common practice, no source. */
const USUAL_HANGER_Hz = 10;

/**
 * Sheet thickness of cold-formed steel: wall studs up to 155 mm deep are light gauge, floor joists structural. Flanges are no
 * wider than 50 mm, however wide the joist is stated.
 */
const STEEL_m = { stud: 0.0005, joist: 0.0014, deepestStud: 0.155, widestFlange: 0.05 };

/** Depth of the stud that `studStiffness_N_m2` is stated for. */
const USUAL_STUD_m = 0.0635;

/** Boards pull on a flange in its middle, but no farther from the web than this; common practice, no source. */
const SCREW_FROM_WEB_m = 0.016;

/** Stiffness across the flanges, per length, that of the usual stud scaled by sheet thickness, depth and flanges. */
function steelStiffness_N_m2(cavity: Cavity, constants: ModelConstants): number {
  const joist = cavity.depth_m > STEEL_m.deepestStud;
  const softer = flangeGive_m3(cavity.joistWidth_m, cavity.depth_m) / flangeGive_m3(2 * SCREW_FROM_WEB_m, USUAL_STUD_m);
  return (constants.studStiffness_N_m2 * (joist ? (STEEL_m.joist / STEEL_m.stud) ** 3 : 1)) / softer;
}

/**
 * What a channel section gives across its flanges, times the bending stiffness B of its sheet: a force per length F, a beside
 * the web of height h, bends the web by the moment Fa, which turns both flanges and moves them apart by Fa²h/B; each
 * flange bends by Fa³/3B besides (beam theory).
 */
function flangeGive_m3(flange_m: number, web_m: number): number {
  const a = Math.min(flange_m / 2, SCREW_FROM_WEB_m);
  return a * a * web_m + (2 / 3) * a * a * a;
}

/** Furring channel of 22 mm and 0.5 mm steel, about its neutral axis: 4.2e-9 m⁴, a usual table value (from memory, unverified). */
const FURRING_Nm2 = 850;

const SOFTWOOD_kg_m3 = 450;
/** EN 1991-1-1, Annex A: 77 to 78.5 kN/m³ (from memory). */
const STEEL_kg_m3 = 7850;

/**
 * Mass of one joist per metre. Design values: softwood 450 kg/m³ (timber component catalogue); I-joists with flanges
 * 38 mm deep and a 10 mm web; trusses with two flat chords 38 mm deep and webs of a third of the chords' mass; steel
 * channels with flanges of the joist's width and sheet as above. Shapes are common practice, no source.
 */
export function joistMass_kg_m({ joists, joistWidth_m: width, depth_m: depth }: Cavity): number {
  const flanges = Math.min(2 * 0.038, depth) * width;
  switch (joists) {
    case 'none':
      return 0;
    case 'solid-timber':
      return SOFTWOOD_kg_m3 * width * depth;
    case 'i-joist':
      return SOFTWOOD_kg_m3 * flanges + 600 * Math.min(0.01, width) * Math.max(depth - 2 * 0.038, 0);
    case 'open-truss':
      return (4 / 3) * SOFTWOOD_kg_m3 * flanges;
    case 'cold-formed-steel': {
      const sheet = depth > STEEL_m.deepestStud ? STEEL_m.joist : STEEL_m.stud;
      return STEEL_kg_m3 * sheet * (depth + 2 * Math.min(width, STEEL_m.widestFlange));
    }
  }
}

/** Mean along the grain of strength class C22, EN 338 (from memory). */
const SOFTWOOD_Pa = 10e9;
/** EN 1993-1-1, clause 3.2.6 (from memory). */
const STEEL_Pa = 210e9;

/** Bending stiffness of one joist, N·m²: flanges alone for I-joists and trusses. */
export function joistBending_Nm2({ joists, joistWidth_m: width, depth_m: depth }: Cavity): number {
  const flange = Math.min(0.038, depth / 2);
  switch (joists) {
    case 'none':
      return 0;
    case 'solid-timber':
      return (SOFTWOOD_Pa * width * depth ** 3) / 12;
    case 'i-joist':
    case 'open-truss':
      return SOFTWOOD_Pa * 2 * width * flange * ((depth - flange) / 2) ** 2;
    case 'cold-formed-steel': {
      const sheet = depth > STEEL_m.deepestStud ? STEEL_m.joist : STEEL_m.stud;
      return STEEL_Pa * sheet * (depth ** 3 / 12 + 2 * Math.min(width, STEEL_m.widestFlange) * (depth / 2) ** 2);
    }
  }
}
