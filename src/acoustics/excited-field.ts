import type { FloorModel } from './floor-model.ts';
import { type JoinedLeaf, joinedLeaf } from './joined-leaf.ts';
import { coincidence_Hz, type PlateState } from './leaf-plate.ts';
import { matLoss } from './mat-loss.ts';
import { panelRadiation } from './panel-radiation.ts';

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
  return excitedField(model, f_Hz, {
    bending_Nm,
    lossFactor: lossFactor + matLoss(model, states, f_Hz, 0),
    surfaceMass_kg_m2: plates[0]!.surfaceMass_kg_m2,
    edges: leafEdges[0]!,
  });
}

/** Of the first leaf and the one it lies on, moving as one. */
export function fieldOfFirstTwo(model: FloorModel, states: readonly PlateState[], f_Hz: number): ExcitedField {
  return excitedField(model, f_Hz, joinedLeaf(model, states, 1, 0, 1));
}

function excitedField(
  { air }: FloorModel,
  f_Hz: number,
  { surfaceMass_kg_m2: mass, bending_Nm, lossFactor, edges }: JoinedLeaf,
): ExcitedField {
  const fc_Hz = coincidence_Hz(mass, bending_Nm, air);
  const sigma = f_Hz < fc_Hz ? panelRadiation(f_Hz, fc_Hz, edges, air.soundSpeed_m_s) : 0;
  return { sigma, velocity2: (sigma * fc_Hz) / (2 * f_Hz * f_Hz * mass * mass * 2 * Math.PI * f_Hz * lossFactor) };
}
