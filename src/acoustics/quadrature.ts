/** How finely the engine integrates: points per piece between breakpoints. */
export interface Quadrature {
  /** In a band, or a piece of one, across which all is smooth. */
  readonly frequencies: number;
  /** In pieces beside a peak, and where the tapping machine's force beats. */
  readonly peakFrequencies: number;
  readonly angles: number;
  readonly slowWaves: number;
  readonly resonance: number;
}

/** Within 0.1 dB of a dense reference; `tests/property/engine-quadrature.test.ts` holds it to that. */
export const QUADRATURE: Quadrature = { frequencies: 2, peakFrequencies: 4, angles: 5, slowWaves: 4, resonance: 4 };
