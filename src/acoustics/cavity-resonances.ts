import { bay4_m4, keptShare, outsideKx2 } from './air-in-bays.ts';
import type { CrowdedNodes } from './crowded-nodes.ts';
import { cavityLossFactor } from './fibre.ts';
import type { CavityModel, FloorModel } from './floor-model.ts';

/** Most resonances of one cavity that are given points of their own; beyond, they lie closer than their width. */
const MOST_MODES = 6;

/** Half-width in √(k²/k0² − 1) of what happens where waves begin to fade inside a cavity. */
const FADING = 0.15;

/** Filled to more than this share, a cavity has no sharp resonance across its depth. */
const DAMPED_SHARE = 0.15;

/** Half-width that fill on part of the depth gives, relative. */
const PARTLY_FILLED = 0.15;

/**
 * Breaks the nodes where a cavity resonates: the leaves on its air at u = f0/f, and across its depth at u = nc/(2df), with
 * u = kz/k0 inside the cavity. Between joists half of kx² counts until half a wave fits into a bay, so that some of these
 * waves run slower than sound outside; with fill the leaves resonate about where they begin to fade inside.
 *
 * @param side 'fast' breaks in cos θ, 'slow' in √(k²/k0² − 1). Cavities filled to more than half have no
 * sharp resonance, those filled to some part the first alone.
 */
export function breakAtCavityResonances(
  nodes: CrowdedNodes,
  model: FloorModel,
  f_Hz: number,
  side: 'fast' | 'slow',
): void {
  const { air, plates, interlayers, constants } = model;
  const k02 = ((2 * Math.PI * f_Hz) / air.soundSpeed_m_s) ** 2;
  for (let i = 0; i < interlayers.length; i++) {
    const layer = interlayers[i]!;
    if (layer.kind === 'mat') continue;
    const bay4 = bay4_m4(layer);
    const fading2 = outsideKx2(bay4, k02) / k02 - 1;
    if (side === 'slow' && fading2 > 0.05) nodes.breakAt(Math.sqrt(fading2), FADING);
    const fill = filledShare(layer);
    if (fill > 0.5) continue;
    const loss = fill > 0 ? PARTLY_FILLED : cavityLossFactor(f_Hz, layer.depth_m, constants.cavityAbsorption, air);
    const stiffness = (air.density_kg_m3 * air.soundSpeed_m_s * air.soundSpeed_m_s) / layer.depth_m;
    const inverseMass = 1 / plates[i]!.surfaceMass_kg_m2 + 1 / plates[i + 1]!.surfaceMass_kg_m2;
    const bounce = Math.sqrt(stiffness * inverseMass) / (2 * Math.PI * f_Hz);
    const step = air.soundSpeed_m_s / (2 * layer.depth_m * f_Hz);
    const modes = fill > DAMPED_SHARE ? 0 : MOST_MODES;
    for (let n = 0; n <= modes; n++) {
      const inside = n === 0 ? bounce : n * step;
      if (inside >= 1) break;
      const kx2 = outsideKx2(bay4, k02 * (1 - inside * inside));
      const s2 = kx2 / k02;
      const width2 = (loss * inside * inside) / keptShare(bay4, kx2);
      const place = Math.sqrt(Math.abs(1 - s2));
      if (s2 < 1 === (side === 'fast')) nodes.breakAt(place, width2 / (2 * Math.max(place, 0.05)));
    }
  }
}

function filledShare({ fluids, depth_m }: CavityModel): number {
  return fluids.reduce((sum, f) => sum + (f.flowResistivity_Pa_s_m2 === undefined ? 0 : f.thickness_m), 0) / depth_m;
}
