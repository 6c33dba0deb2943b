import type { FloorModel } from './floor-model.ts';
import { cavityDepth_m } from './normalise-construction.ts';

/** Mass of the build-up per m² of floor: leaves with the covering, joists, fill. Mats and supports weigh little. */
export function surfaceMass_kg_m2({ plates, interlayers }: FloorModel): number {
  let mass = 0;
  for (const plate of plates) mass += plate.surfaceMass_kg_m2;
  for (const layer of interlayers) {
    if (layer.kind !== 'cavity') continue;
    mass += layer.chain?.joistMass_kg_m2 ?? 0;
    for (const fibre of layer.cavity.fill) mass += fibre.thickness_m * fibre.density_kg_m3;
  }
  return mass;
}

/** Overall height, m. */
export function height_m({ construction, plates, interlayers }: FloorModel): number {
  let height = construction.covering?.thickness_m ?? 0;
  for (const plate of plates) height += plate.thickness_m;
  for (const layer of interlayers) {
    height += layer.kind === 'mat' ? layer.mat.thickness_m : cavityDepth_m(layer.cavity);
  }
  return height;
}
