import type { FloorModel } from './floor-model.ts';
import { withResonance } from './leaf-edges.ts';
import { coincidence_Hz, type PlateState } from './leaf-plate.ts';
import { matLoss } from './mat-loss.ts';
import { panelRadiation } from './panel-radiation.ts';
import type { PlateEdges } from './resonant-radiation.ts';

/** Reverberant field of free bending waves slower than sound, which diffuse sound excites; none from fc on. */
export interface ExcitedField {
  /** Radiation efficiency. */
  readonly sigma: number;
  /** Mean square velocity σ fc/(2f²m'²ωη), (m/s)², where the incident power is W_inc = 1/(2ρ0c0). */
  readonly velocity2: number;
}

/** Of the first leaf by itself, what the mat below takes included. */
export function fieldOfFirst(model: FloorModel, states: readonly PlateState[], f_Hz: number): ExcitedField {
  const { plates, leafEdges } = model;
  const { bending_Nm, lossFactor } = states[0]!;
  const loss = lossFactor + matLoss(model, states, f_Hz, 0);
  return excitedField(model, f_Hz, plates[0]!.surfaceMass_kg_m2, { bending_Nm, lossFactor: loss }, leafEdges[0]!);
}

/** Of the first leaf and the one it lies on, moving as one. */
export function fieldOfFirstTwo(model: FloorModel, states: readonly PlateState[], f_Hz: number): ExcitedField {
  const { plates, leafEdges } = model;
  const [upper, lower] = [states[0]!, states[1]!];
  const bending_Nm = upper.bending_Nm + lower.bending_Nm;
  const lossFactor = (upper.bending_Nm * upper.lossFactor + lower.bending_Nm * lower.lossFactor) / bending_Nm;
  const lowerMass = plates[1]!.surfaceMass_kg_m2;
  const mass = plates[0]!.surfaceMass_kg_m2 + lowerMass;
  const higher = Math.sqrt(bending_Nm / mass / (lower.bending_Nm / lowerMass));
  const edges = withResonance(leafEdges[1]!, higher);
  return excitedField(model, f_Hz, mass, { bending_Nm, lossFactor }, edges);
}

function excitedField(
  { air }: FloorModel,
  f_Hz: number,
  surfaceMass_kg_m2: number,
  { bending_Nm, lossFactor }: PlateState,
  edges: PlateEdges,
): ExcitedField {
  const fc_Hz = coincidence_Hz(surfaceMass_kg_m2, bending_Nm, air);
  const sigma = f_Hz < fc_Hz ? panelRadiation(f_Hz, fc_Hz, edges, air.soundSpeed_m_s) : 0;
  const mass = surfaceMass_kg_m2;
  return { sigma, velocity2: (sigma * fc_Hz) / (2 * f_Hz * f_Hz * mass * mass * 2 * Math.PI * f_Hz * lossFactor) };
}
