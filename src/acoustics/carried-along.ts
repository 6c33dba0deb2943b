import type { FloorModel } from './floor-model.ts';

/**
 * How far a leaf on a mat moves as one with the leaf below, 1 far below the resonance of both on it and 0 far above; our own.
 */
export function carriedAlong({ interlayers, plates }: FloorModel, f_Hz: number): number {
  const layer = interlayers[0];
  if (layer?.kind !== 'mat') return 0;
  const omega = 2 * Math.PI * f_Hz;
  const give = 1 / plates[0]!.surfaceMass_kg_m2 + 1 / plates[1]!.surfaceMass_kg_m2;
  const over2 = (omega * omega) / (layer.mat.dynamicStiffness_N_m3 * give);
  return 1 / (1 + over2 * over2);
}
