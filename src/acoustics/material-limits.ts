/** Young's modulus, Pa. No solid is stiffer than diamond, 1.1 to 1.2 TPa (from memory). */
export const MODULUS_Pa = [1e5, 1.3e12] as const;

/** Beyond any covering; they keep the arithmetic finite. Our own, no source. */
export const COVERING_LIMITS = {
  surfaceMass_kg_m2: [0, 500],
  thickness_m: [0, 5],
  contactStiffness_N_m: [1, 1e12],
} as const;
