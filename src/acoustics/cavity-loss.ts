import type { CavityModel, FloorModel } from './floor-model.ts';

/** Above it the loss of an empty cavity is no longer small, and the formula for weak damping fails. */
const LARGEST_LOSS = 0.5;

/**
 * Loss factor of the air in an empty cavity of depth d whose surfaces absorb α of the sound falling on them: a diffuse field
 * decays by cαS/4V per second, S/V = 2/d, so that η = αc/(2dω). Own derivation from Sabine's decay; α is fitted for cavities
 * between joists, and that of hard surfaces where there are none, as between panes of glass.
 */
export function cavityLossFactor(
  f_Hz: number,
  { cavity, depth_m }: CavityModel,
  { air, constants }: FloorModel,
): number {
  const absorption = cavity.joists === 'none' ? constants.openCavityAbsorption : constants.cavityAbsorption;
  return Math.min((absorption * air.soundSpeed_m_s) / (2 * depth_m * 2 * Math.PI * f_Hz), LARGEST_LOSS);
}
