import { carriedAlong } from './carried-along.ts';
import { bendingWaveSpeed_m_s, type Lattice, pointLike } from './fastening-impedance.ts';
import type { FloorModel } from './floor-model.ts';
import { joinedLeaf } from './joined-leaf.ts';
import { coincidence_Hz, type PlateState } from './leaf-plate.ts';
import { panelRadiation } from './panel-radiation.ts';
import { pointMobility_m_Ns } from './point-mobility.ts';

/**
 * Sound power per m² that leaf number `leaf` radiates for a mean square force of 1 (N/m²)² through its fastenings, incoherently, W/m².
 *
 * Two parts. (a) Near field of each fastening, below the leaf's critical frequency: lines F'²ρ0/(2ωm'²)/b, points
 * nF_p²ρ0/(2πc0m'²) (Cremer, Heckl & Petersson, Structure-Borne Sound), with the high-pass 1/(1+(f_g/f)⁴), f_g = c/(πb) or
 * c√n/2.5, below which neighbours act together. (b) Reverberant field that the forces feed: W = F'²/(4m'c_B)/b or
 * nF_p²/(8√(Bm')), v² = W/(ωηm'), radiating ρ0c0σ_res v². What hangs on a mat below the leaf counts with it as far as both move
 * as one.
 * @param states Stiffness and loss of every leaf at this frequency.
 */
export function supportRadiation(
  model: FloorModel,
  leaf: number,
  states: readonly PlateState[],
  lattice: Lattice,
  f_Hz: number,
): number {
  const { air } = model;
  const { nearFieldWeight, reverberantWeight } = model.constants;
  const part = carriedAlong(model, f_Hz, leaf);
  const { bending_Nm, lossFactor, surfaceMass_kg_m2: mass, edges } = joinedLeaf(model, states, leaf, leaf + 1, part);
  const omega = 2 * Math.PI * f_Hz;
  const b = lattice.line_m;
  const share = pointLike(lattice.point_m, bending_Nm, mass, omega);
  const fc_Hz = coincidence_Hz(mass, bending_Nm, air);
  // Mean square force per line and per point: (F b)²/b per m², n (F/n)² per m².
  const perPoint = b * Math.min(lattice.point_m, 1e3);

  const belowCoincidence = 1 / (1 + fourth((f_Hz / fc_Hz) * (f_Hz / fc_Hz)));
  const lineKnee = fourth(air.soundSpeed_m_s / (Math.PI * b) / f_Hz);
  const pointKnee = fourth(air.soundSpeed_m_s / (2.5 * Math.sqrt(perPoint)) / f_Hz);
  const nearLine = (b * air.density_kg_m3) / (2 * omega * mass * mass) / (1 + lineKnee);
  const nearPoint = (perPoint * air.density_kg_m3) / (2 * Math.PI * air.soundSpeed_m_s * mass * mass) / (1 + pointKnee);

  const speed = bendingWaveSpeed_m_s(bending_Nm, mass, omega);
  const powerLine = b / (4 * mass * speed);
  const powerPoint = perPoint * pointMobility_m_Ns(bending_Nm, mass);
  const velocity2 = ((1 - share) * powerLine + share * powerPoint) / (omega * lossFactor * mass);
  const sigma = panelRadiation(f_Hz, fc_Hz, edges, air.soundSpeed_m_s);

  return (
    nearFieldWeight * belowCoincidence * ((1 - share) * nearLine + share * nearPoint) +
    reverberantWeight * air.density_kg_m3 * air.soundSpeed_m_s * sigma * velocity2
  );
}

/** x⁴ by multiplication: this runs for every frequency. */
function fourth(x: number): number {
  return x * x * x * x;
}
