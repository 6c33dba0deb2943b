import { breakAtCavityResonances } from './cavity-resonances.ts';
import type { CrowdedNodes } from './crowded-nodes.ts';
import type { FloorModel } from './floor-model.ts';
import { edgeRadiation } from './resonant-radiation.ts';

/** How far beyond the slowest bending wave the wave numbers go on; velocity falls with their fourth power there. */
const BEYOND = 4;

/** A free wave faster than sound by less than this, in k²/k0², still peaks into the slow ones. */
const NEAR = 0.75;

/**
 * Nodes in r = √(k²/k0² − 1) for waves slower than sound: broken and crowded at the free bending waves `mu` (half-width
 * ηk/4) and at the resonances of cavities, and broken where the edges' radiation reaches its cap.
 */
export function slowWaveNodes(
  nodes: CrowdedNodes,
  model: FloorModel,
  mu: Float64Array,
  narrowestLoss: number,
  f_Hz: number,
  radiationCap: number,
  pointsPerPiece: number,
): CrowdedNodes {
  let slowest = 1;
  nodes.begin().breakAt(0, Infinity);
  for (let i = 0; i < mu.length; i++) {
    const distance2 = mu[i]! * mu[i]! - 1;
    const damping = (narrowestLoss * mu[i]! * mu[i]!) / 2;
    if (distance2 > 0) {
      const r = Math.sqrt(distance2);
      slowest = Math.max(slowest, r);
      nodes.breakAt(r, Math.sqrt(distance2 + damping) - r);
    } else if (distance2 > -NEAR) nodes.breakAt(0, Math.sqrt(damping - distance2));
  }
  breakAtCavityResonances(nodes, model, f_Hz, 'slow');
  const end = BEYOND * slowest;
  const cap = capRoot((2 * Math.PI * f_Hz) / model.air.soundSpeed_m_s, model, radiationCap);
  return nodes
    .breakAt(Math.min(cap, end), cap / 2)
    .breakAt(end, Infinity)
    .fill(pointsPerPiece);
}

/** r at which the edges' radiation falls to the cap, by bisection in ln r. */
function capRoot(k0: number, { leafEdges }: FloorModel, cap: number): number {
  let low = 1e-3;
  let high = 10;
  for (let step = 0; step < 12; step++) {
    const r = Math.sqrt(low * high);
    if (edgeRadiation(Math.sqrt(1 + r * r), k0, leafEdges.at(-1)!) > cap) low = r;
    else high = r;
  }
  return Math.sqrt(low * high);
}
