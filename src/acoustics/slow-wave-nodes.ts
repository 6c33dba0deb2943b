import type { CrowdedNodes } from './crowded-nodes.ts';
import type { FloorModel } from './floor-model.ts';
import type { PlateState } from './leaf-plate.ts';
import { edgeRadiation } from './resonant-radiation.ts';

/** How far beyond the slowest bending wave the wave numbers go on; velocity falls with their fourth power there. */
const BEYOND = 4;

/**
 * Nodes in r = √(k²/k0² − 1) for waves slower than sound: broken and crowded at the bending wave number of each leaf
 * (width ηk/4), of leaves that a mat joins (they bend together below its resonance, and with less mass than their own
 * above), and where the edges' radiation reaches its cap.
 */
export function slowWaveNodes(
  nodes: CrowdedNodes,
  model: FloorModel,
  states: readonly PlateState[],
  extraLoss: number,
  f_Hz: number,
  radiationCap: number,
  pointsPerPiece: number,
): CrowdedNodes {
  const { plates, interlayers, air } = model;
  const omega = 2 * Math.PI * f_Hz;
  const k0 = omega / air.soundSpeed_m_s;
  let slowest = 1;
  nodes
    .begin()
    .breakAt(0, Infinity)
    .breakAt(capRoot(k0, model, radiationCap), Infinity);
  const bend = (mass: number, stiffness: number, lossFactor: number): void => {
    const mu2 = (omega * Math.sqrt(mass / stiffness)) / (k0 * k0);
    if (!(mu2 > 1)) return;
    const r = Math.sqrt(mu2 - 1);
    slowest = Math.max(slowest, r);
    nodes.breakAt(r, Math.min((lossFactor * mu2) / (4 * r), r));
  };
  for (let i = 0; i < plates.length; i++) {
    const mass = plates[i]!.surfaceMass_kg_m2;
    const { bending_Nm, lossFactor } = states[i]!;
    const loss = lossFactor + (i === 0 ? extraLoss : 0);
    bend(mass, bending_Nm, loss);
    const layer = interlayers[i];
    if (layer?.kind !== 'mat') continue;
    const below = plates[i + 1]!.surfaceMass_kg_m2;
    const bendingBelow = states[i + 1]!.bending_Nm;
    const spring = layer.mat.dynamicStiffness_N_m3 / (omega * omega);
    const heavier = Math.max(loss, states[i + 1]!.lossFactor);
    bend(mass + below, bending_Nm + bendingBelow, heavier);
    if (mass > spring) bend(mass - spring, bending_Nm, loss);
    if (below > spring) bend(below - spring, bendingBelow, states[i + 1]!.lossFactor);
  }
  return nodes.breakAt(BEYOND * slowest, Infinity).fill(pointsPerPiece);
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
