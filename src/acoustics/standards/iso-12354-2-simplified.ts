import { bareSlabLnw } from '../simple/bare-slab.ts';

/** Mean masses of the flanking walls without linings, kg/m²: columns of table 1. */
const WALL_MASSES = [100, 150, 200, 250, 300, 350, 400, 450, 500];

/** Mass of the floor, kg/m² → K, dB. EN 12354-2:2000, clause 4.3, table 1 (partly seen, the rest from memory). */
// biome-ignore format: table
const K_ROWS: readonly (readonly [floor_kg_m2: number, K_dB: readonly number[]])[] = [
  [100, [1, 0, 0, 0, 0, 0, 0, 0, 0]],
  [150, [1, 1, 0, 0, 0, 0, 0, 0, 0]],
  [200, [2, 1, 1, 0, 0, 0, 0, 0, 0]],
  [250, [2, 1, 1, 1, 0, 0, 0, 0, 0]],
  [300, [3, 2, 1, 1, 1, 0, 0, 0, 0]],
  [350, [3, 2, 1, 1, 1, 1, 0, 0, 0]],
  [400, [4, 2, 2, 1, 1, 1, 1, 0, 0]],
  [450, [4, 3, 2, 2, 1, 1, 1, 1, 1]],
  [500, [4, 3, 2, 2, 1, 1, 1, 1, 1]],
  [600, [5, 4, 3, 2, 2, 1, 1, 1, 1]],
  [700, [5, 4, 3, 3, 2, 2, 1, 1, 1]],
  [800, [6, 4, 4, 3, 2, 2, 2, 1, 1]],
  [900, [6, 5, 4, 3, 3, 2, 2, 2, 2]],
];

/**
 * Correction K for flanking transmission of impact sound, dB: the entry of the table nearest to these masses.
 *
 * @returns NaN unless both are > 0. Lighter and heavier than the table: its edge.
 */
export function impactFlankingCorrection_dB(floorMass_kg_m2: number, meanWallMass_kg_m2: number): number {
  if (!(floorMass_kg_m2 > 0 && meanWallMass_kg_m2 > 0)) return NaN;
  const row = nearest(
    K_ROWS.map(([mass]) => mass),
    floorMass_kg_m2,
  );
  return K_ROWS[row]![1][nearest(WALL_MASSES, meanWallMass_kg_m2)]!;
}

export interface ImpactSimplifiedInput {
  readonly floorMass_kg_m2: number;
  readonly meanWallMass_kg_m2: number;
  /** ΔL_w of the covering, dB. Absent: bare. */
  readonly covering_dB?: number;
}

export interface ImpactSimplified {
  /** L'_n,w = L_n,w,eq − ΔL_w + K, dB; NaN outside 100–600 kg/m². */
  readonly Lnw_dB: number;
  readonly bare_dB: number;
  readonly flanking_dB: number;
}

/** Simplified model of impact sound between rooms above each other with heavy floors. Source: EN 12354-2:2000, clause 4.3. */
export function impactSimplified(input: ImpactSimplifiedInput): ImpactSimplified {
  const { floorMass_kg_m2, meanWallMass_kg_m2, covering_dB = 0 } = input;
  const bare_dB = bareSlabLnw(floorMass_kg_m2);
  const flanking_dB = impactFlankingCorrection_dB(floorMass_kg_m2, meanWallMass_kg_m2);
  return { Lnw_dB: bare_dB - covering_dB + flanking_dB, bare_dB, flanking_dB };
}

/**
 * ΔL_w of a cement screed on a mat, dB: 13 lg m' − 14.2 lg s' + 20.8, s' in MN/m³.
 *
 * Source: ISO 12354-2:2017, Annex C (partly seen). The charts of the edition of 2000 cover about 60–160 kg/m² on
 * 6–50 MN/m³ (from memory).
 */
export function screedImprovement_dB(surfaceMass_kg_m2: number, dynamicStiffness_N_m3: number): number {
  return 13 * Math.log10(surfaceMass_kg_m2) - 14.2 * Math.log10(dynamicStiffness_N_m3 / 1e6) + 20.8;
}

function nearest(grid: readonly number[], value: number): number {
  return grid.reduce((best, g, i) => (Math.abs(g - value) < Math.abs(grid[best]! - value) ? i : best), 0);
}
