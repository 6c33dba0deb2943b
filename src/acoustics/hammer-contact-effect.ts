import type { FloorModel } from './floor-model.ts';
import { surfaceContact } from './impact.ts';
import { naturalFrequency_Hz } from './natural-frequency.ts';
import { pointMobility_m_Ns } from './point-mobility.ts';
import { TAPPING_MACHINE, tappingForce2_N2_Hz } from './tapping-machine.ts';

/** What the struck surface does to the blows, beside one that does not give way. */
export interface ContactEffect {
  /** Of a hammer on the surface; Infinity where nothing gives way. */
  readonly resonance_Hz: number;
  /** Force on the surface over force on a rigid one, dB: below 0 where the surface takes some of a blow. */
  force_dB(f_Hz: number): number;
}

export function contactEffect(model: FloorModel): ContactEffect {
  const { stiffness_N_m, lossFactor } = surfaceContact(model);
  const { staticBending_Nm, surfaceMass_kg_m2 } = model.plates[0]!;
  const mobility = pointMobility_m_Ns(staticBending_Nm, surfaceMass_kg_m2);
  return {
    resonance_Hz: naturalFrequency_Hz(stiffness_N_m, TAPPING_MACHINE.hammerMass_kg),
    force_dB: (f_Hz) =>
      10 *
      Math.log10(
        tappingForce2_N2_Hz(f_Hz, mobility, stiffness_N_m, lossFactor) / tappingForce2_N2_Hz(f_Hz, mobility, Infinity),
      ),
  };
}
