/**
 * ISO 717-2: the floors and the covering that improvements are referred to.
 */
import { thirdOctaves } from './table.ts';

/** Heavy reference floor, L_n,r,0: clause 5.2, table 4. The same curve stands in ASTM E2179, clause 7. */
// biome-ignore format: table
export const HEAVY_FLOOR = thirdOctaves(100, [
  67, 67.5, 68, 68.5, 69, 69.5, 70, 70.5, 71, 71.5, 72, 72, 72, 72, 72, 72,
]);
/** L_n,r,0,w and C_I,r,0 of the heavy floor: clauses 5.2 and A.2.2. */
export const HEAVY_FLOOR_LNW_DB = 78;
export const HEAVY_FLOOR_CI_DB = -11;
/** IIC of the same floor: ASTM E2179, clause 7 (from memory, unverified). */
export const HEAVY_FLOOR_IIC = 28;

export type LightFloorType = 1 | 2 | 3;

/** Lightweight reference floors, L_n,t,r,0: clause 5.4, table 5 (from memory, unverified). Types 1 and 2 are equal. */
// biome-ignore format: table
const TYPE_1_AND_2 = thirdOctaves(100, [78, 78, 78, 78, 78, 78, 76, 74, 72, 69, 66, 63, 60, 57, 54, 51]);
// biome-ignore format: table
const TYPE_3 = thirdOctaves(100, [69, 72, 75, 78, 78, 78, 78, 78, 78, 76, 74, 72, 69, 66, 63, 60]);

export const LIGHT_FLOORS = { 1: TYPE_1_AND_2, 2: TYPE_1_AND_2, 3: TYPE_3 } as const;
/** L_n,t,r,0,w of each. */
export const LIGHT_FLOORS_LNW_DB = { 1: 72, 2: 72, 3: 75 } as const;

/** Reference covering, ΔL_r, and its ΔL_r,w: Annex B. */
// biome-ignore format: table
export const REFERENCE_COVERING = thirdOctaves(100, [0, 0, 0, 2, 6, 10, 14, 18, 22, 26, 30, 30, 30, 30, 30, 30]);
export const REFERENCE_COVERING_DLW_DB = 19;
