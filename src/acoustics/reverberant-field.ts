import { CrowdedNodes } from './crowded-nodes.ts';
import type { FastWaves } from './fast-waves.ts';
import { bendingWaveSpeed_m_s } from './fastening-impedance.ts';
import type { FloorModel } from './floor-model.ts';
import type { ForcedRadiation } from './forced-radiation.ts';
import { edgeRadiation, resonantRadiation } from './resonant-radiation.ts';
import { criticalFrequency_Hz } from './support-radiation.ts';

/**
 * Radiation efficiency of a wave of wave number `mu`·k0 > k0 on the last leaf: its edges, never more than a panel forced
 * along at grazing incidence.
 */
export function slowWaveRadiation(mu: number, k0: number, model: FloorModel, forced: ForcedRadiation): number {
  return Math.min(edgeRadiation(mu, k0, model.leafEdges.at(-1)!), forced.at(0));
}

/** Used by one average after another. */
const sharedNodes = new CrowdedNodes();

/** How far around the bending wave number the reverberant field's share is averaged, in half-widths. */
const REACH = 8;

/** Power per m² radiated below for a mean square velocity of 1 (m/s)² of the uppermost leaf's reverberant field, W/m². */
export interface ReverberantPower {
  /** Through air, fill and mats; left alone where `scratch.airborne` is false. */
  direct: number;
  /** Through the supports of every cavity, incoherently. */
  supports: number;
}

/** What the average over the leaf's resonance works with, kept between calls. */
export interface ReverberantScratch {
  readonly leafVelocity2: Float64Array;
  readonly points: number;
  /** For airborne sound, which wants `out.direct`, or for the struck floor. */
  readonly airborne: boolean;
}

/**
 * Where the reverberant field of the uppermost leaf goes on to: the waves of the transfer matrices around the leaf's
 * bending wave number, averaged over its resonance, and the chain of supports between unbounded leaves.
 *
 * `waves` stand at `f_Hz`; their line is moved by this call. What a lower leaf is given reaches the last one as the faster
 * waves do. For a single leaf the power is ρ0c0σ_res.
 */
export function reverberantPower(
  model: FloorModel,
  waves: FastWaves,
  f_Hz: number,
  scratch: ReverberantScratch,
  out: ReverberantPower,
): void {
  const { air, plates } = model;
  const { line } = waves;
  const z0 = air.density_kg_m3 * air.soundSpeed_m_s;
  const last = plates.length - 1;
  const first = plates[0]!;
  const state = line.states[0]!;
  out.supports = 0;
  if (last === 0) {
    const fc_Hz = criticalFrequency_Hz(model, first, state);
    out.direct = z0 * resonantRadiation(f_Hz, fc_Hz, model.leafEdges[0]!, air.soundSpeed_m_s);
    return;
  }
  const { velocity2 } = scratch.airborne ? waves.airborne : waves.struck;
  const { leafVelocity2 } = scratch;
  leafVelocity2.fill(1);
  if (
    scratch.airborne ||
    model.interlayers.some((layer, i) => i > 0 && layer.kind === 'cavity' && layer.chain?.lower)
  ) {
    out.direct = z0 * averageAround(model, waves, f_Hz, scratch);
  }
  for (let i = 0; i < last; i++) {
    const power = waves.supportPower[i]!;
    if (power === 0) continue;
    const above = leafVelocity2[i]! / leafVelocity2[0]!;
    out.supports += above * waves.reverberantCoupling[i]! * power * (velocity2[last]! / velocity2[i + 1]!);
  }
}

/**
 * Averages over the resonance of the uppermost leaf: fills the mean square velocity of each leaf (any common factor), and
 * returns σ v² of the last one per v² of the first.
 */
function averageAround(
  model: FloorModel,
  waves: FastWaves,
  f_Hz: number,
  { leafVelocity2, points, airborne }: ReverberantScratch,
): number {
  const { air, plates } = model;
  const { line, forced } = waves;
  const last = plates.length - 1;
  const state = line.states[0]!;
  const first = plates[0]!;
  const omega = 2 * Math.PI * f_Hz;
  const k0 = omega / air.soundSpeed_m_s;
  const muBend = air.soundSpeed_m_s / bendingWaveSpeed_m_s(state.bending_Nm, first.surfaceMass_kg_m2, omega);
  const width = (muBend * state.lossFactor) / 4;
  leafVelocity2.fill(0);
  let radiated = 0;
  const low = Math.max(muBend - REACH * width, muBend / 2);
  const high = muBend + REACH * width;
  const nodes = sharedNodes.begin().breakAt(low, Infinity).breakAt(muBend, width).breakAt(high, Infinity);
  if (low < 1 && high > 1) nodes.breakAt(1, Infinity);
  let narrowest = width;
  for (let i = 1; i <= last; i++) narrowest = Math.min(narrowest, (muBend * line.states[i]!.lossFactor) / 4);
  const free = waves.free.mu;
  for (let i = 0; i <= last; i++) if (free[i]! > low && free[i]! < high) nodes.breakAt(free[i]!, narrowest);
  const { s2, width2, count } = waves.cavities;
  for (let j = 0; j < count; j++) {
    const mu = Math.sqrt(s2[j]!);
    if (mu > low && mu < high) nodes.breakAt(mu, width2[j]! / (2 * mu));
  }
  nodes.fill(points);
  for (let j = 0; j < nodes.count; j++) {
    const mu = nodes.x[j]!;
    const evanescent = mu > 1;
    const u = Math.max(Math.sqrt(Math.abs(mu * mu - 1)), 1e-4);
    line.at(mu, u, evanescent).march(airborne);
    const weight = nodes.weight[j]! * mu;
    for (let i = 0; i <= last; i++) leafVelocity2[i]! += weight * line.velocity2[i]!;
    const sigma = evanescent ? slowWaveRadiation(mu, k0, model, forced) : forced.at(u);
    radiated += weight * line.velocity2[last]! * sigma;
  }
  const own = leafVelocity2[0]!;
  return radiated / own;
}
