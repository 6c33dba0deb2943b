import { breakAtCavityResonances } from './cavity-resonances.ts';
import type { CrowdedNodes } from './crowded-nodes.ts';
import type { FloorModel } from './floor-model.ts';
import { edgeRadiation } from './resonant-radiation.ts';

/** How far beyond the slowest bending wave the wave numbers go on; velocity falls with their fourth power there. */
const BEYOND = 4;

/** A free wave faster than sound by less than this, in k²/k0², still peaks into the slow ones. */
const NEAR = 0.75;

/** Half-octaves between the limits of r within which roots are sought, halved as often as this. */
const HALVINGS = 12;

/**
 * Nodes in r = √(k²/k0² − 1) for waves slower than sound: broken and crowded at the free bending waves `mu` as the air
 * beside the leaf slows them, and at the resonances of cavities, and broken where the edges' radiation reaches its cap.
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
  const { plates, air } = model;
  const k0 = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
  let slowest = 1;
  nodes.begin().breakAt(0, Infinity);
  for (let i = 0; i < mu.length; i++) {
    const free2 = mu[i]! * mu[i]!;
    if (!(free2 > 1 - NEAR)) continue;
    const load = (2 * air.density_kg_m3) / (k0 * plates[i]!.surfaceMass_kg_m2);
    const r = loadedWave(free2, load);
    const mu2 = 1 + r * r;
    const damping = (narrowestLoss * mu2) / 2;
    const slope = 4 * r * mu2 + (free2 * free2 * load) / (r * r);
    slowest = Math.max(slowest, r);
    nodes.breakAt(r, Math.min((narrowestLoss * mu2 * mu2) / slope, Math.sqrt(r * r + damping) - r));
  }
  breakAtCavityResonances(nodes, model, f_Hz, 'slow');
  const end = BEYOND * slowest;
  const cap = capRoot(k0, model, radiationCap);
  return nodes
    .breakAt(Math.min(cap, end), cap / 2)
    .breakAt(end, Infinity)
    .fill(pointsPerPiece);
}

/**
 * r of a free bending wave whose leaf carries the air it moves on both sides, (1 + r²)² = μ⁴ (1 + load/r) with
 * load = 2ρ0/(k0 m'). Always slower than without air; by bisection in ln r.
 */
function loadedWave(free2: number, load: number): number {
  const free4 = free2 * free2;
  let low = 1e-3;
  let high = 2 * Math.sqrt(free2) + load + 1;
  for (let step = 0; step < HALVINGS + 2; step++) {
    const r = Math.sqrt(low * high);
    const mu2 = 1 + r * r;
    if (mu2 * mu2 < free4 * (1 + load / r)) low = r;
    else high = r;
  }
  return Math.sqrt(low * high);
}

/** r at which the edges' radiation falls to the cap, by bisection in ln r. */
function capRoot(k0: number, { leafEdges }: FloorModel, cap: number): number {
  let low = 1e-3;
  let high = 10;
  for (let step = 0; step < HALVINGS; step++) {
    const r = Math.sqrt(low * high);
    if (edgeRadiation(Math.sqrt(1 + r * r), k0, leafEdges.at(-1)!) > cap) low = r;
    else high = r;
  }
  return Math.sqrt(low * high);
}
