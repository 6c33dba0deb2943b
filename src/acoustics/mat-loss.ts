import type { FloorModel } from './floor-model.ts';
import type { PlateState } from './leaf-plate.ts';

/**
 * Loss factor that the uppermost leaf gains from lying on a mat: its bending waves press on the mat and, through it, on
 * the leaf below. η = Re Z/(ωm'), 1/Z = 1/Z2 + jω/(s'(1+jη)), where Z2 = jω(m2 − B2 m'/B) + ωη2 B2 m'/B is the lower
 * leaf's impedance at the wave number of the upper's free bending waves. 0 where no mat lies below.
 *
 * Source: derived from the matrices of Allard & Atalla, 2nd ed. 2009, ch. 11; for a rigid floor it is s'η/(ω²m').
 * @param states Stiffness and loss of every leaf at this frequency.
 * @param lowerExtraLoss Added to the loss factor of the leaf below the mat.
 */
export function matLoss(
  { interlayers, plates }: FloorModel,
  states: readonly PlateState[],
  f_Hz: number,
  lowerExtraLoss: number,
): number {
  const layer = interlayers[0];
  if (layer?.kind !== 'mat') return 0;
  const omega = 2 * Math.PI * f_Hz;
  const mass = plates[0]!.surfaceMass_kg_m2;
  const bent = (states[1]!.bending_Nm * mass) / states[0]!.bending_Nm;
  const leafRe = omega * (states[1]!.lossFactor + lowerExtraLoss) * bent;
  const leafIm = omega * (plates[1]!.surfaceMass_kg_m2 - bent);
  const { dynamicStiffness_N_m3: stiffness, lossFactor } = layer.mat;
  const matRe = (stiffness * lossFactor) / omega;
  const matIm = -stiffness / omega;
  const productRe = leafRe * matRe - leafIm * matIm;
  const productIm = leafRe * matIm + leafIm * matRe;
  const sumRe = leafRe + matRe;
  const sumIm = leafIm + matIm;
  return (productRe * sumRe + productIm * sumIm) / (sumRe * sumRe + sumIm * sumIm) / (omega * mass);
}
