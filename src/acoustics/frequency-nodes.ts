import type { CrowdedNodes } from './crowded-nodes.ts';
import type { ExactBand } from './standards/iec-61260.ts';

/**
 * Nodes in ln f across one band, broken at the frequencies `breaks_Hz` inside it. Weights sum to 1, so that Σ w τ is the
 * plain mean over log-spaced frequencies.
 */
export function frequencyNodes(
  nodes: CrowdedNodes,
  band: ExactBand,
  breaks_Hz: readonly number[],
  pointsPerPiece: number,
): CrowdedNodes {
  const lower = Math.log(band.lower_Hz);
  const upper = Math.log(band.upper_Hz);
  nodes.begin().breakAt(lower, Infinity).breakAt(upper, Infinity);
  for (const f of breaks_Hz) if (f > band.lower_Hz && f < band.upper_Hz) nodes.breakAt(Math.log(f), Infinity);
  nodes.fill(pointsPerPiece);
  for (let i = 0; i < nodes.count; i++) {
    nodes.x[i] = Math.exp(nodes.x[i]!);
    nodes.weight[i] = nodes.weight[i]! / (upper - lower);
  }
  return nodes;
}
