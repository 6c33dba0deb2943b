import type { JunctionPath } from './vibration-reduction.ts';

export interface LightJunctionInput {
  /** 'straight': on in the heavy element past the light one; 'corner': from one into the other. */
  readonly path: JunctionPath;
  readonly heavy_kg_m2: number;
  readonly light_kg_m2: number;
  readonly frequency_Hz: number;
}

/** K_ij of the heavy element straight on stays within these, dB. */
const STRAIGHT_K_DB = [-4, 0] as const;
const REFERENCE_FREQUENCY_HZ = 500;

/**
 * Vibration reduction index K_ij where a light double-leaf element meets a heavy homogeneous one that goes on through the
 * junction, dB: joists that end at a masonry wall. M = lg(m' heavy/m' light):
 * straight on in the heavy one 3 − 14.1 M + 5.7 M², from −4 to 0; around the corner 10 + 10 |M| + 3.3 lg(f/500 Hz).
 *
 * Source: EN 12354-1:2000, Annex E (from memory, unverified). Valid where the heavy element has more than three times
 * the mass of the light one.
 */
export function lightJunctionK_dB({ path, heavy_kg_m2, light_kg_m2, frequency_Hz }: LightJunctionInput): number {
  const M = Math.log10(heavy_kg_m2 / light_kg_m2);
  if (path === 'corner') return 10 + 10 * Math.abs(M) + 3.3 * Math.log10(frequency_Hz / REFERENCE_FREQUENCY_HZ);
  const [least, most] = STRAIGHT_K_DB;
  // Beyond its least value the parabola would rise again for very heavy walls.
  const falling = Math.min(M, 14.1 / (2 * 5.7));
  return Math.min(Math.max(3 - 14.1 * falling + 5.7 * falling ** 2, least), most);
}
