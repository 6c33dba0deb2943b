/**
 * NR curves in octave bands, ISO/R 1996:1971, Appendix: L = a + b·NR. From memory, unverified; other coefficients
 * circulate.
 */
export interface NoiseRatingRow {
  readonly band_Hz: number;
  readonly a_dB: number;
  readonly b: number;
}

// biome-ignore format: table
const ROWS = [
  [31.5, 55.4, 0.681], [63, 35.5, 0.79], [125, 22, 0.87], [250, 12, 0.93], [500, 4.8, 0.974],
  [1000, 0, 1], [2000, -3.5, 1.015], [4000, -6.1, 1.025], [8000, -8, 1.03],
] as const;

export const NOISE_RATING: readonly NoiseRatingRow[] = ROWS.map(([band_Hz, a_dB, b]) => ({ band_Hz, a_dB, b }));
