import type { BandTable } from './standards/table.ts';

/**
 * Rms of predicted minus measured transmission loss in octave bands, dB: the reference constructions of ACCURACY.md, each
 * predicted with constants that were fitted without it. Written by `npm run accuracy -- --write`.
 */
export const MODEL_RESIDUAL_RMS: BandTable = [
  [125, 2.6],
  [250, 3.4],
  [500, 2.2],
  [1000, 3.0],
  [2000, 4.3],
  [4000, 6.3],
];

/** The same of single numbers: of how many constructions, and how far off they were on average and at most. */
export const RATING_ERRORS = {
  STC: { rows: 23, meanAbsolute: 1.8, worst: 4 },
  IIC: { rows: 8, meanAbsolute: 3.4, worst: 11 },
  Rw: { rows: 4, meanAbsolute: 4.5, worst: 10 },
  Lnw: { rows: 4, meanAbsolute: 4.8, worst: 14 },
} as const;
