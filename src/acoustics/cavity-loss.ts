import type { CavityModel, FloorModel } from './floor-model.ts';

/** Above it the loss of an empty cavity is no longer small, and the formulas for weak damping fail. */
const LARGEST_LOSS = 0.5;

/**
 * Loss factor of the air in an empty cavity, by Sabine's decay of a diffuse field (own derivation).
 *
 * Between joists it is lost at all surfaces, αc/(2dω) for depth d: S/V = 2/d. Where no joists stand, as between panes of glass,
 * surfaces are smooth and hard and it is lost at the edges: sound that runs along meets one every πS/U, so that
 * η = α_e cU/(πSω) for area S and perimeter U, however thin the cavity.
 */
export function cavityLossFactor(
  f_Hz: number,
  { cavity, depth_m }: CavityModel,
  { air, constants, edges }: FloorModel,
): number {
  const perMetre =
    cavity.joists === 'none'
      ? (constants.openCavityEdgeAbsorption * edges.perimeter_m) / (Math.PI * edges.area_m2)
      : constants.cavityAbsorption / (2 * depth_m);
  return Math.min((perMetre * air.soundSpeed_m_s) / (2 * Math.PI * f_Hz), LARGEST_LOSS);
}
