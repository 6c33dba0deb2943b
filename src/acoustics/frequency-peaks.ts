import { cavityLossFactor } from './fibre.ts';
import type { FloorModel } from './floor-model.ts';
import type { FrequencyPeak } from './frequency-nodes.ts';
import { type PlateState, plateAt } from './leaf-plate.ts';
import { criticalFrequency_Hz } from './support-radiation.ts';

/** Most resonances across one empty cavity that are given points of their own. */
const MOST_MODES = 4;

/**
 * Where transmission changes fast: each leaf's critical frequency, with the stiffness it has there, and the first
 * resonances across each empty cavity.
 */
export function frequencyPeaks(model: FloorModel): FrequencyPeak[] {
  return [...coincidences(model), ...cavityModes(model)];
}

function coincidences(model: FloorModel): FrequencyPeak[] {
  const state: PlateState = { bending_Nm: 0, lossFactor: 0 };
  return model.plates.map((plate) => {
    let frequency_Hz = plate.criticalFrequency_Hz;
    for (let i = 0; i < 12; i++) {
      plateAt(plate, frequency_Hz, model.constants, state);
      frequency_Hz = Math.sqrt(frequency_Hz * criticalFrequency_Hz(model, plate, state));
    }
    return { frequency_Hz, relativeWidth: state.lossFactor / 2 };
  });
}

function cavityModes({ interlayers, air, constants }: FloorModel): FrequencyPeak[] {
  return interlayers.flatMap((layer) => {
    if (layer.kind === 'mat' || layer.fluids.some((f) => f.flowResistivity_Pa_s_m2 !== undefined)) return [];
    return Array.from({ length: MOST_MODES }, (_, i) => {
      const frequency_Hz = ((i + 1) * air.soundSpeed_m_s) / (2 * layer.depth_m);
      const loss = cavityLossFactor(frequency_Hz, layer.depth_m, constants.cavityAbsorption, air);
      return { frequency_Hz, relativeWidth: loss / 2 };
    });
  });
}
