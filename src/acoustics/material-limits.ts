/** Young's modulus, Pa. No solid is stiffer than diamond, 1.1 to 1.2 TPa (from memory). */
export const MODULUS_Pa = [1e5, 1.3e12] as const;
