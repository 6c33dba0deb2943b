import type { FloorModel } from './floor-model.ts';

/**
 * How far the leaf above interlayer `index` moves as one with the leaf below: on a mat, 1 far below the resonance of both on it
 * and 0 far above; over a cavity 0. Our own.
 */
export function carriedAlong({ interlayers, plates }: FloorModel, f_Hz: number, index = 0): number {
  const layer = interlayers[index];
  if (layer?.kind !== 'mat') return 0;
  const omega = 2 * Math.PI * f_Hz;
  const give = 1 / plates[index]!.surfaceMass_kg_m2 + 1 / plates[index + 1]!.surfaceMass_kg_m2;
  const over2 = (omega * omega) / (layer.mat.dynamicStiffness_N_m3 * give);
  return 1 / (1 + over2 * over2);
}

/**
 * How far a leaf bends with the one across the mat `index` from line to line of that one's fastenings: as far as it is carried
 * along, and the less the more its own B(2π/b)⁴ sets against the mat's stiffness; over a cavity 0. Our own.
 * @param bending_Nm B of the leaf that is not fastened.
 * @param line_m b, from one line of fastenings of the other leaf to the next.
 */
export function bentAlong(
  model: FloorModel,
  f_Hz: number,
  index: number,
  { bending_Nm, line_m }: { readonly bending_Nm: number; readonly line_m: number },
): number {
  const layer = model.interlayers[index];
  if (layer?.kind !== 'mat') return 0;
  const perLine = (2 * Math.PI) / line_m;
  const againstMat = (bending_Nm * perLine * perLine * perLine * perLine) / layer.mat.dynamicStiffness_N_m3;
  return 1 / (1 / carriedAlong(model, f_Hz, index) + againstMat);
}
