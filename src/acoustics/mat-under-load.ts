import type { Interlayer, Mat } from './construction.ts';

/** Load when dynamic stiffness is measured, kg/m²: 8 kg on 200 mm × 200 mm, ISO 9052-1:1989 (from memory). */
export const DECLARED_UNDER_kg_m2 = 200;

/** Stiffness of touching fibres and grains grows with the cube root of what presses them together (Hertz 1882). */
const CONTACT_EXPONENT = 1 / 3;

/**
 * A mat as stiff as it is under the floor it carries, from the stiffness declared for it: s' (m/200 kg/m²)^⅓.
 *
 * The exponent is Hertz's for contacts and not fitted. With it, dry floors of 15–30 kg/m² gain about what ISO 12354-2 states
 * for them (`tests/acoustics/mat-under-load.test.ts`); with s' as declared they gain 3 dB less. A sheet of solid rubber has
 * no contacts: there the rule makes light floors too soft.
 * @param carried_kg_m2 Mass per area of all that rests on the mat, > 0.
 */
export function matUnderLoad(mat: Mat, carried_kg_m2: number): Mat {
  const share = (carried_kg_m2 / DECLARED_UNDER_kg_m2) ** CONTACT_EXPONENT;
  return { ...mat, dynamicStiffness_N_m3: mat.dynamicStiffness_N_m3 * share };
}

/** Mass per area resting on mat number `index`: the leaves above it up to the next cavity, whose joists carry the rest. */
export function carriedByMat_kg_m2(
  interlayers: readonly Interlayer[],
  leaves: readonly { readonly surfaceMass_kg_m2: number }[],
  index: number,
): number {
  let carried = 0;
  for (let i = index; i >= 0; i--) {
    if (i < index && interlayers[i]!.kind === 'cavity') break;
    carried += leaves[i]!.surfaceMass_kg_m2;
  }
  return carried;
}
