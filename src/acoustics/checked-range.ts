/**
 * What of a floor lies far outside the walls and floors that the engine was fitted on or judged by.
 *
 * The ranges are those of the fitted and judged rows of the accuracy table (ACCURACY.md); a test holds them to
 * `tests/published/reference-constructions.ts`. Outside them the physics goes on, but nobody has compared it with a
 * measurement: worth a remark, never a verdict. A value that lies outside by no more than the slack is taken as near
 * enough: our own choice, no source. The sides of the floor are not among the ranges: descriptions of measured floors
 * seldom state them.
 */
import type { Cavity, Construction, Leaf, Sheet } from './construction.ts';
import { type NormalConstruction, normaliseConstruction } from './normalise-construction.ts';

export type CheckedKey =
  | 'joistDepth_m'
  | 'joistSpacing_m'
  | 'joistWidth_m'
  | 'slabThickness_m'
  | 'boardThickness_m'
  | 'sheetDensity_kg_m3'
  | 'sheetLossFactor'
  | 'sheetsInLeaf'
  | 'leafMass_kg_m2'
  | 'leaves'
  | 'cavities'
  | 'matStiffness_N_m3'
  | 'fillFlowResistivity_Pa_s_m2';

/** What no row of the table has at all. */
export type UncheckedKind = 'hangers' | 'separate-joists' | 'no-joists';

export interface CheckedRange {
  readonly least: number;
  readonly most: number;
  /** Where the range comes from, and what is known of the engine beyond it. */
  readonly reason: string;
  /** How many times beyond a limit still is near enough. */
  readonly slack: number;
}

const SLACK = 1.25;

export const CHECKED_RANGES: Readonly<Record<CheckedKey, CheckedRange>> = {
  joistDepth_m: range(0.0635, 0.457, 'rows from 64 mm steel studs (w4) to 457 mm open joists (f4)'),
  joistSpacing_m: range(
    0.406,
    0.61,
    'rows at 406 mm, steel studs (w4) at 610 mm; how far joists stiffen a deck goes by it',
  ),
  joistWidth_m: range(0.032, 0.063, 'rows from 32 mm steel flanges (w4) to 63 mm flanges of I-joists (t4)'),
  slabThickness_m: range(
    0.0254,
    0.2,
    'rows from 25 mm of gypsum concrete (t4) to a 200 mm concrete slab (c200); thinner toppings follow from theory alone',
  ),
  boardThickness_m: range(0.003, 0.16, 'rows from 3 mm glass (g1) to 160 mm cross-laminated timber (a1)'),
  sheetDensity_kg_m3: range(
    450,
    2500,
    'rows from cross-laminated timber of 450 kg/m³ (a4) to glass and screed of 2500 kg/m³ (g1, a1)',
  ),
  sheetLossFactor: range(
    0.01,
    0.3,
    'rows from concrete with 0.01 (c100) to chippings with 0.3 (a1); whatever is built in counts as losing 0.001 at least',
  ),
  sheetsInLeaf: range(
    1,
    2,
    'rows have one or two sheets on each other (w3, t1); of double boards the 4 kHz octave is up to 8 dB off already',
    1.5,
  ),
  leafMass_kg_m2: range(7.5, 460, 'rows from 3 mm glass (g1) to a 200 mm concrete slab (c200)'),
  leaves: range(1, 3, 'rows have up to three leaves (t4: a topping on a mat, deck and ceiling)'),
  cavities: range(1, 1, 'no row has two cavities one below the other'),
  matStiffness_N_m3: range(
    6e6,
    50e6,
    'rows from 6 (a2) to 50 MN/m³ (a4), of which light screeds on stiff mats come out far too low (a3); stiffer rubber is printed only (t5 to t7)',
  ),
  fillFlowResistivity_Pa_s_m2: range(8000, 12000, 'rows with glass fibre (f3) and mineral wool (t3)'),
};

export const UNCHECKED_KINDS: Readonly<Record<UncheckedKind, string>> = {
  hangers: 'no measured floor with spring hangers was at hand: they are computed from their stated resonance',
  'separate-joists':
    'no measured floor with a ceiling on joists of its own was at hand; what crosses in common bearings, the walls that carry both, is set to match a few remembered walls, for airborne sound only; for impact no such way is counted',
  'no-joists':
    'no measured floor with a cavity without joists was at hand; panes of glass with 12 mm of air between come out within 1 dB of EN 12758',
};

export type OutsideChecked =
  | {
      readonly key: CheckedKey;
      readonly value: number;
      readonly range: CheckedRange;
      /** Of the sheet, mat or fill, where it is about one. */
      readonly name?: string;
    }
  | { readonly key: UncheckedKind; readonly reason: string };

/** Every key at most once, with the value that lies farthest out. Nothing for a floor of which nothing is left. */
export function outsideChecked(construction: Construction): readonly OutsideChecked[] {
  const floor = normalised(construction);
  if (!floor) return [];
  const farthest = new Map<CheckedKey, Measured>();
  for (const measured of measuredOf(floor)) {
    const { slack } = CHECKED_RANGES[measured.key];
    const before = farthest.get(measured.key);
    if (timesBeyond(measured) > (before ? timesBeyond(before) : slack)) farthest.set(measured.key, measured);
  }
  return [
    ...[...farthest.values()].map((measured) => ({ ...measured, range: CHECKED_RANGES[measured.key] })),
    ...kindsOf(cavitiesOf(floor)).map((key) => ({ key, reason: UNCHECKED_KINDS[key] })),
  ];
}

interface Measured {
  readonly key: CheckedKey;
  readonly value: number;
  readonly name?: string;
}

/** 1 within the range. */
function timesBeyond({ key, value }: Measured): number {
  const { least, most } = CHECKED_RANGES[key];
  return Math.max(least / value, value / most, 1);
}

function measuredOf(floor: NormalConstruction): readonly Measured[] {
  const cavities = cavitiesOf(floor);
  return [
    ...(cavities.length === 0 ? [] : [{ key: 'cavities', value: cavities.length } as const]),
    ...cavities.flatMap(ofCavity),
    ...floor.interlayers.flatMap((layer): readonly Measured[] =>
      layer.kind === 'mat' ? [{ key: 'matStiffness_N_m3', value: layer.dynamicStiffness_N_m3, name: layer.name }] : [],
    ),
    { key: 'leaves', value: floor.leaves.length },
    ...floor.leaves.flatMap(ofLeaf),
  ];
}

function ofCavity({ joists, depth_m, joistSpacing_m, joistWidth_m, fill }: Cavity): readonly Measured[] {
  const framing: readonly Measured[] = [
    { key: 'joistDepth_m', value: depth_m },
    { key: 'joistSpacing_m', value: joistSpacing_m },
    { key: 'joistWidth_m', value: joistWidth_m },
  ];
  return [
    ...(joists === 'none' ? [] : framing),
    ...fill.map(({ name, flowResistivity_Pa_s_m2: value }): Measured => {
      return { key: 'fillFlowResistivity_Pa_s_m2', value, name };
    }),
  ];
}

function ofLeaf({ sheets }: Leaf): readonly Measured[] {
  const mass_kg_m2 = sheets.reduce((sum, { thickness_m, density_kg_m3 }) => sum + thickness_m * density_kg_m3, 0);
  return [
    { key: 'sheetsInLeaf', value: sheets.length },
    { key: 'leafMass_kg_m2', value: mass_kg_m2 },
    ...sheets.flatMap(ofSheet),
  ];
}

function ofSheet({ name, form, thickness_m, density_kg_m3, lossFactor }: Sheet): readonly Measured[] {
  return [
    { key: form === 'slab' ? 'slabThickness_m' : 'boardThickness_m', value: thickness_m, name },
    { key: 'sheetDensity_kg_m3', value: density_kg_m3, name },
    { key: 'sheetLossFactor', value: lossFactor, name },
  ];
}

function kindsOf(cavities: readonly Cavity[]): readonly UncheckedKind[] {
  const has = (test: (cavity: Cavity) => boolean, key: UncheckedKind) => (cavities.some(test) ? [key] : []);
  return [
    ...has((c) => c.joists === 'none', 'no-joists'),
    ...has((c) => c.support === 'hangers', 'hangers'),
    ...has((c) => c.support === 'separate-joists', 'separate-joists'),
  ];
}

function cavitiesOf({ interlayers }: NormalConstruction): readonly Cavity[] {
  return interlayers.filter((layer) => layer.kind === 'cavity');
}

function range(least: number, most: number, reason: string, slack = SLACK): CheckedRange {
  return { least, most, reason, slack };
}

function normalised(construction: Construction): NormalConstruction | undefined {
  try {
    return normaliseConstruction(construction);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
