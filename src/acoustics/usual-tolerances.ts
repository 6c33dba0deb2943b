import type { Leak } from './construction.ts';

/**
 * How far a number of a construction may be off when nobody has measured it: half the width of a range that is not left,
 * as a share of the value. Assumed, no source; a maker's or a builder's own tolerance is better than any of these.
 */
const HALF_WIDTHS: Readonly<Record<string, number>> = {
  thickness_m: 0.05,
  density_kg_m3: 0.05,
  surfaceMass_kg_m2: 0.05,
  youngsModulus_Pa: 0.25,
  youngsModulusAcross_Pa: 0.25,
  poissonRatio: 0.1,
  lossFactor: 0.5,
  contactStiffness_N_m: 0.3,
  dynamicStiffness_N_m3: 0.3,
  supportStiffness_N_m: 0.3,
  hangerFrequency_Hz: 0.1,
  flowResistivity_Pa_s_m2: 0.3,
  depth_m: 0.02,
  joistWidth_m: 0.02,
  joistSpacing_m: 0.02,
  supportLineSpacing_m: 0.02,
  supportPointSpacing_m: 0.02,
  supportHeight_m: 0.02,
};

/** Of gaps and penetrations. A joint is as wide as it happens to be, a hole as its drill. */
const LEAK_HALF_WIDTHS = {
  slit: { width_m: 0.5, length_m: 0.1, depth_m: 0.1 },
  hole: { width_m: 0.1, depth_m: 0.1 },
} as const;

/** Of each number of a leak, by its name. */
export function leakTolerances(leak: Leak): Readonly<Record<string, number>> {
  return LEAK_HALF_WIDTHS[leak.length_m === undefined ? 'hole' : 'slit'];
}

/** @param name Of the number, as the construction calls it. @throws RangeError for a number that has none here. */
export function usualTolerance(name: string): number {
  const halfWidth = Object.hasOwn(HALF_WIDTHS, name) ? HALF_WIDTHS[name] : undefined;
  if (halfWidth === undefined) throw new RangeError(`name must be that of a number with a tolerance, got "${name}"`);
  return halfWidth;
}
