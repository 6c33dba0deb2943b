export interface ImpactPathInput {
  /** L_n of the floor with what lies on it, dB, in one band: without the ceiling below. */
  readonly floorLn_dB: number;
  /** R of the carrying floor alone and of the wall in the receiving room, dB. */
  readonly floorR_dB: number;
  readonly wallR_dB: number;
  readonly vibrationReductionIndex_dB: number;
  readonly floorArea_m2: number;
  readonly junctionLength_m: number;
}

/**
 * L_n,ij = L_n,ii − ΔL_i + (R_i − R_j)/2 − K_ij − 10 lg(S_i/(l0 l_ij)), l0 = 1 m: what a struck floor sends down by one wall,
 * in one band, dB re 10 m².
 *
 * Source: EN 12354-2:2000, clause 4.2 (from memory, unverified), without linings on the wall.
 */
export function impactPathLn_dB(path: ImpactPathInput): number {
  return (
    path.floorLn_dB +
    (path.floorR_dB - path.wallR_dB) / 2 -
    path.vibrationReductionIndex_dB -
    10 * Math.log10(path.floorArea_m2 / path.junctionLength_m)
  );
}
