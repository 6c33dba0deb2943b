import type { BandTable } from './standards/table.ts';

/**
 * Rms of predicted minus measured transmission loss in octave bands, dB: the reference constructions of ACCURACY.md, each
 * predicted with constants that were fitted without it. Written by `npm run accuracy -- --write`.
 */
export const MODEL_RESIDUAL_RMS: BandTable = [
  [125, 2.6],
  [250, 3.3],
  [500, 2.2],
  [1000, 3.2],
  [2000, 4.3],
  [4000, 6.3],
];
