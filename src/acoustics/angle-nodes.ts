import type { CrowdedNodes } from './crowded-nodes.ts';
import type { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import type { PlateState } from './leaf-plate.ts';

/**
 * Nodes in u = cos θ from 0 to 1 for one frequency: broken at Davy's limit and at each leaf's coincidence angle, points
 * crowded to the peak's width. Near coincidence Z ∝ 1 − r²(1−u²)² with r = f/fc, so that the half-width solves
 * 4 r u w + 2 r w² = η + 2ρ0c0/(ωm'u), the second term the radiation damping; of leaves on a mat with ωB k⁴ of their common
 * wave in place of ω³m'.
 */
export function angleNodes(
  nodes: CrowdedNodes,
  model: FloorModel,
  { line, free, forced, cavities }: FastWaves,
  f_Hz: number,
  pointsPerPiece: number,
): CrowdedNodes {
  const { plates, air } = model;
  const omega = 2 * Math.PI * f_Hz;
  const k02 = (omega * omega) / (air.soundSpeed_m_s * air.soundSpeed_m_s);
  const perK04_m4 = 1 / (k02 * k02);
  nodes.begin().breakAt(1, Infinity);
  if (forced.limit < 1) nodes.breakAt(forced.limit, Infinity);
  let grazing = Infinity;
  // Waves of leaves that a mat joins belong to both; of neighbours so joined the less damped may rule.
  const least = free.joined ? leastLoss(line.states) : undefined;
  for (let i = 0; i < plates.length; i++) {
    const lossFactor = least ?? line.states[i]!.lossFactor;
    const mu = free.mu[i]!;
    const r = 1 / (mu * mu);
    if (r > 1) {
      const radiation = air.density_kg_m3 * air.soundSpeed_m_s * free.facesPerBending[i]! * omega * perK04_m4 * r * r;
      const u = Math.sqrt(1 - 1 / r);
      const damping = lossFactor + radiation / Math.max(u, 0.1);
      nodes.breakAt(u, Math.sqrt(u * u + damping / (2 * r)) - u);
    } else if (r > 0.25) {
      grazing = Math.min(grazing, Math.sqrt((1 - r * r + lossFactor) / (2 * r)));
    }
  }
  cavities.breakSide(nodes, 'fast');
  return nodes.breakAt(0, grazing).fill(pointsPerPiece);
}

function leastLoss(states: readonly PlateState[]): number {
  return states.reduce((least, { lossFactor }) => Math.min(least, lossFactor), Infinity);
}
