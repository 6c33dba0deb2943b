/**
 * Vibration reduction index K_ij of junctions of heavy elements: EN 12354-1:2000, Annex E (from memory, unverified).
 *
 * M = lg(m'⊥/m'), m' the mass per area of the element in which the sound travels and m'⊥ that of the one across it.
 * Framed walls and joist floors have no K_ij of this kind: for them use measured values.
 */
export type Junction = 'rigid cross' | 'rigid T' | 'rigid corner' | 'change of thickness' | 'light facade';

/** 'straight': on into the element beyond; 'corner': around into the element across. */
export type JunctionPath = 'straight' | 'corner';

export interface JunctionInput {
  readonly junction: Junction;
  readonly path: JunctionPath;
  /** Mass per area of the element in which the sound comes, kg/m². */
  readonly mass_kg_m2: number;
  /** Mass per area of the element across it, or of the thicker or thinner continuation, kg/m². */
  readonly massAcross_kg_m2: number;
}

/**
 * K_ij, dB, independent of frequency.
 *
 * @returns NaN for a path that the junction does not have: straight on at a corner, or around at a change of thickness.
 */
export function vibrationReductionIndex_dB({ junction, path, mass_kg_m2, massAcross_kg_m2 }: JunctionInput): number {
  const M = Math.log10(massAcross_kg_m2 / mass_kg_m2);
  const straight = path === 'straight';
  switch (junction) {
    case 'rigid cross':
      return 8.7 + (straight ? 17.1 * M : 0) + 5.7 * M ** 2;
    case 'rigid T':
      return 5.7 + (straight ? 14.1 * M : 0) + 5.7 * M ** 2;
    case 'rigid corner':
      return straight ? NaN : Math.max(15 * Math.abs(M) - 3, -2);
    case 'change of thickness':
      return straight ? 5 * M ** 2 - 5 : NaN;
    case 'light facade':
      return straight ? Math.max(5 + 10 * M, 5) : 10 + 10 * Math.abs(M);
  }
}

/** Least K_ij by geometry, 10 lg[l_ij l0 (1/S_i + 1/S_j)], l0 = 1 m: EN 12354-1:2000, clause 4.4.2. */
export function leastVibrationReductionIndex_dB(
  junctionLength_m: number,
  area_m2: number,
  otherArea_m2: number,
): number {
  return 10 * Math.log10(junctionLength_m * (1 / area_m2 + 1 / otherArea_m2));
}
