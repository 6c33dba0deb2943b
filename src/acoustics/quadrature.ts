/** How finely the engine integrates: points per piece between breakpoints. */
export interface Quadrature {
  readonly frequencies: number;
  readonly angles: number;
  readonly slowWaves: number;
  readonly resonance: number;
}

/** Within 0.1 dB of a dense reference; `tests/property/engine-quadrature.test.ts` holds it to that. */
export const QUADRATURE: Quadrature = { frequencies: 4, angles: 6, slowWaves: 5, resonance: 4 };
