/**
 * How well the numbers of a construction are usually known: one standard uncertainty as a share of the value.
 *
 * All of them are assumed, no source: products as declared, thicknesses as built, stiffness and loss of springs and fibre
 * as they scatter from one make to the next. What is not named here is taken as known.
 */
export const ASSUMED_TOLERANCES: Readonly<Record<string, number>> = {
  thickness_m: 0.03,
  density_kg_m3: 0.03,
  youngsModulus_Pa: 0.15,
  youngsModulusAcross_Pa: 0.15,
  lossFactor: 0.3,
  contactStiffness_N_m: 0.3,
  dynamicStiffness_N_m3: 0.15,
  depth_m: 0.02,
  joistWidth_m: 0.03,
  joistSpacing_m: 0.02,
  supportLineSpacing_m: 0.05,
  supportPointSpacing_m: 0.05,
  supportHeight_m: 0.1,
  supportStiffness_N_m: 0.3,
  hangerFrequency_Hz: 0.15,
  flowResistivity_Pa_s_m2: 0.2,
};

/** By the last word of the number's path; undefined: taken as known. */
export function assumedTolerance(path: string): number | undefined {
  const key = path.slice(path.lastIndexOf('/') + 1);
  return Object.hasOwn(ASSUMED_TOLERANCES, key) ? ASSUMED_TOLERANCES[key] : undefined;
}
