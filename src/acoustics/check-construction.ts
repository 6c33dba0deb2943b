import { CAVITY_DEPTH_m } from './cavity-limits.ts';
import {
  type Cavity,
  type Construction,
  type Covering,
  type FlankingLimit,
  type FlankingWall,
  type FlankingWalls,
  JOIST_KINDS,
  type Leaf,
  type Mat,
  SHEET_CONTACTS,
  SHEET_FORMS,
  type Sheet,
  SUPPORT_KINDS,
  USUAL_JUNCTIONS,
} from './construction.ts';
import { listed } from './listed.ts';
import { COVERING_LIMITS, MODULUS_Pa } from './material-limits.ts';
import { cavityDepth_m } from './normalise-construction.ts';

/**
 * Refuses what the model cannot compute. Layers are counted from 1, the uppermost first.
 *
 * @throws TypeError for the wrong kind, RangeError for the wrong value, as `thickness_m must be >= 0, got -0.012 (layer 2,
 * "board")`. Thickness 0 means "absent" and passes. The upper limits are beyond any floor; they keep the
 * arithmetic finite.
 */
export function checkConstruction(construction: Construction): void {
  within('length_m', construction.length_m, SIDE, 'floor');
  within('width_m', construction.width_m, SIDE, 'floor');
  if (construction.covering) checkCovering(construction.covering);
  if (!Array.isArray(construction.layers)) {
    throw new TypeError(`layers must be an array, got ${describe(construction.layers)} (floor)`);
  }
  if (construction.layers.length > MOST_LAYERS) {
    throw new RangeError(`layers must be at most ${MOST_LAYERS}, got ${construction.layers.length} (floor)`);
  }
  construction.layers.forEach((layer, i) => {
    const wanted = i % 2 === 0 ? 'leaf' : 'mat or cavity';
    const isLeaf = layer.kind === 'leaf';
    if (isLeaf !== (i % 2 === 0)) {
      throw new RangeError(`layers must alternate: a ${wanted} was expected, got "${layer.kind}" (layer ${i + 1})`);
    }
    if (layer.kind === 'leaf') checkLeaf(layer, i + 1);
    else if (layer.kind === 'mat') checkMat(layer, i + 1);
    else if (layer.kind === 'cavity') checkCavity(layer, i + 1);
    else throw new TypeError(`kind must be leaf, mat or cavity, got ${describe(layer)} (layer ${i + 1})`);
  });
  if (construction.layers.length % 2 === 0) {
    throw new RangeError(`layers must begin and end with a leaf, got ${construction.layers.length} layers (floor)`);
  }
  if (construction.flanking) checkFlanking(construction.flanking);
  construction.leaks?.forEach((leak) => {
    const place = `leak "${leak.name}"`;
    within('width_m', leak.width_m, [0, 10], place);
    if (leak.length_m !== undefined) within('length_m', leak.length_m, [0, 1000], place);
    within('depth_m', leak.depth_m, [0, 10], place);
  });
}

type Interval = readonly [least: number, most: number];

const MOST_LAYERS = 21;
const SIDE: Interval = [0.3, 100];
const THICKNESS: Interval = [0, 5];
/** What is thicker is no plate at any frequency that is heard. */
const SHEET: Interval = [0, 2];
/** Depth of a cavity with the usual height of any support. */
const WHOLE_CAVITY: Interval = [0, 2.5];
const DENSITY: Interval = [5, 25000];
const LOSS: Interval = [1e-4, 2];
const STIFFNESS_PER_AREA: Interval = [1e3, 1e12];
const POINT_STIFFNESS: Interval = [1, 1e12];

function checkLeaf(leaf: Leaf, layer: number): void {
  oneOf('contact', leaf.contact, SHEET_CONTACTS, `layer ${layer}`);
  if (!Array.isArray(leaf.sheets)) {
    throw new TypeError(`sheets must be an array, got ${describe(leaf.sheets)} (layer ${layer})`);
  }
  for (const sheet of leaf.sheets) checkSheet(sheet, `layer ${layer}, "${sheet.name}"`);
}

function checkSheet(sheet: Sheet, place: string): void {
  within('thickness_m', sheet.thickness_m, SHEET, place);
  within('density_kg_m3', sheet.density_kg_m3, DENSITY, place);
  within('youngsModulus_Pa', sheet.youngsModulus_Pa, MODULUS_Pa, place);
  if (sheet.youngsModulusAcross_Pa !== undefined) {
    within('youngsModulusAcross_Pa', sheet.youngsModulusAcross_Pa, MODULUS_Pa, place);
  }
  oneOf('form', sheet.form, SHEET_FORMS, place);
  within('poissonRatio', sheet.poissonRatio, [0, 0.49], place);
  within('lossFactor', sheet.lossFactor, LOSS, place);
  if (sheet.contactStiffness_N_m !== undefined) {
    within('contactStiffness_N_m', sheet.contactStiffness_N_m, POINT_STIFFNESS, place);
  }
}

function checkCovering(covering: Covering): void {
  const place = `covering "${covering.name}"`;
  within('surfaceMass_kg_m2', covering.surfaceMass_kg_m2, COVERING_LIMITS.surfaceMass_kg_m2, place);
  within('contactStiffness_N_m', covering.contactStiffness_N_m, COVERING_LIMITS.contactStiffness_N_m, place);
  within('thickness_m', covering.thickness_m, COVERING_LIMITS.thickness_m, place);
}

function checkMat(mat: Mat, layer: number): void {
  const place = `layer ${layer}, "${mat.name}"`;
  within('thickness_m', mat.thickness_m, THICKNESS, place);
  within('dynamicStiffness_N_m3', mat.dynamicStiffness_N_m3, STIFFNESS_PER_AREA, place);
  within('lossFactor', mat.lossFactor, LOSS, place);
}

function checkCavity(cavity: Cavity, layer: number): void {
  const place = `layer ${layer}, cavity`;
  oneOf('joists', cavity.joists, JOIST_KINDS, place);
  oneOf('support', cavity.support, SUPPORT_KINDS, place);
  within('depth_m', cavity.depth_m, CAVITY_DEPTH_m, place);
  if (cavity.joists !== 'none') {
    within('joistWidth_m', cavity.joistWidth_m, [0.0003, 2], place);
    within('joistSpacing_m', cavity.joistSpacing_m, [0.03, 20], place);
  }
  const spacing: Interval = [0.03, 20];
  optional('supportLineSpacing_m', cavity.supportLineSpacing_m, spacing, place);
  optional('supportPointSpacing_m', cavity.supportPointSpacing_m, spacing, place);
  optional('supportHeight_m', cavity.supportHeight_m, CAVITY_DEPTH_m, place);
  within('depth_m with the height of the support', cavityDepth_m(cavity), WHOLE_CAVITY, place);
  optional('supportStiffness_N_m', cavity.supportStiffness_N_m, POINT_STIFFNESS, place);
  optional('hangerFrequency_Hz', cavity.hangerFrequency_Hz, [0.5, 1000], place);
  if (!Array.isArray(cavity.fill))
    throw new TypeError(`fill must be an array, got ${describe(cavity.fill)} (${place})`);
  for (const fibre of cavity.fill) {
    const inside = `layer ${layer}, "${fibre.name}"`;
    within('thickness_m', fibre.thickness_m, THICKNESS, inside);
    within('flowResistivity_Pa_s_m2', fibre.flowResistivity_Pa_s_m2, [50, 1e7], inside);
    within('density_kg_m3', fibre.density_kg_m3, [0, 1000], inside);
  }
}

function checkFlanking(flanking: FlankingLimit | FlankingWalls): void {
  if ('walls' in flanking) flanking.walls.forEach(checkWall);
  else {
    within('R500_dB', flanking.R500_dB, [-200, 300], 'flanking');
    within('slope_dB_per_octave', flanking.slope_dB_per_octave, [-30, 30], 'flanking');
  }
}

function checkWall(wall: FlankingWall): void {
  const place = `wall "${wall.name}"`;
  within('junctionLength_m', wall.junctionLength_m, SIDE, place);
  within('height_m', wall.height_m, SIDE, place);
  within('surfaceMass_kg_m2', wall.surfaceMass_kg_m2, [1, 10_000], place);
  oneOf('reduction', wall.reduction.kind, ['rated', 'homogeneous'], place);
  oneOf('junction', wall.junction.kind, [...USUAL_JUNCTIONS, 'measured'], place);
  if (wall.reduction.kind === 'rated') within('Rw_dB', wall.reduction.Rw_dB, [0, 150], place);
  else {
    within('thickness_m', wall.reduction.thickness_m, [0.01, 5], place);
    within('longitudinalSpeed_m_s', wall.reduction.longitudinalSpeed_m_s, [100, 10_000], place);
    within('internalLossFactor', wall.reduction.internalLossFactor, LOSS, place);
  }
  if (wall.junction.kind !== 'measured') return;
  within('straightK_dB', wall.junction.straightK_dB, [-30, 100], place);
  within('cornerK_dB', wall.junction.cornerK_dB, [-30, 100], place);
}

function optional(name: string, value: number | undefined, limits: Interval, place: string): void {
  if (value !== undefined) within(name, value, limits, place);
}

function within(name: string, value: number, [least, most]: Interval, place: string): void {
  if (typeof value !== 'number') throw new TypeError(`${name} must be a number, got ${describe(value)} (${place})`);
  if (value >= least && value <= most) return;
  const wanted = value > most ? `<= ${most}` : least === 0 || value > 0 ? `>= ${least}` : '> 0';
  throw new RangeError(`${name} must be ${Number.isNaN(value) ? 'finite' : wanted}, got ${value} (${place})`);
}

function oneOf(name: string, value: string, allowed: readonly string[], place: string): void {
  if (allowed.includes(value)) return;
  throw new RangeError(`${name} must be ${listed(allowed, 'or')}, got ${describe(value)} (${place})`);
}

function describe(value: unknown): string {
  return typeof value === 'string' ? JSON.stringify(value) : value === null ? 'null' : typeof value;
}
