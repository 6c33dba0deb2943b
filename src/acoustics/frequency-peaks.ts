import { cavityLossFactor } from './fibre.ts';
import type { FloorModel } from './floor-model.ts';
import type { FrequencyPeak } from './frequency-nodes.ts';
import { type PlateState, plateAt } from './leaf-plate.ts';
import { MAXIMUM_RADIATION, resonantRadiation } from './resonant-radiation.ts';
import { criticalFrequency_Hz } from './support-radiation.ts';

/** Most resonances across one empty cavity that are given points of their own. */
const MOST_MODES = 4;

/** How far the meeting of coincidence and cavity resonance is spread and shifted by the leaves' mass, relative. */
const MEETING = 0.06;

/**
 * Where transmission changes fast: each leaf's critical frequency, with the stiffness it has there, and where its
 * radiation reaches the cap, the first resonances across each empty cavity, and where a leaf's coincidence meets one of these at the same angle.
 */
export function frequencyPeaks(model: FloorModel): FrequencyPeak[] {
  const critical = coincidences(model);
  return [...critical, ...radiationCaps(model, critical), ...cavityPeaks(model, critical)];
}

/** Where the resonant radiation efficiency of a leaf reaches its cap below fc: a kink, no peak. By bisection. */
function radiationCaps(model: FloorModel, critical: readonly FrequencyPeak[]): FrequencyPeak[] {
  return critical.flatMap(({ frequency_Hz: fc }, i) => {
    const sigma = (f: number) => resonantRadiation(f, fc, model.leafEdges[i]!, model.air.soundSpeed_m_s);
    let low = fc / 2;
    let high = fc;
    if (sigma(low) >= MAXIMUM_RADIATION) return [];
    for (let step = 0; step < 20; step++) {
      const middle = (low + high) / 2;
      if (sigma(middle) < MAXIMUM_RADIATION) low = middle;
      else high = middle;
    }
    return [{ frequency_Hz: low, relativeWidth: Number.POSITIVE_INFINITY }];
  });
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

function cavityPeaks({ interlayers, air, constants }: FloorModel, critical: readonly FrequencyPeak[]): FrequencyPeak[] {
  return interlayers.flatMap((layer, i) => {
    if (layer.kind === 'mat' || layer.fluids.some((f) => f.flowResistivity_Pa_s_m2 !== undefined)) return [];
    const leaves = [critical[i]!.frequency_Hz, critical[i + 1]!.frequency_Hz];
    return Array.from({ length: MOST_MODES }, (_, n) => {
      const frequency_Hz = ((n + 1) * air.soundSpeed_m_s) / (2 * layer.depth_m);
      const loss = cavityLossFactor(frequency_Hz, layer.depth_m, constants.cavityAbsorption, air);
      // 1 − fc/f = (f_n/f)²
      const meetings = leaves.map((fc) => ({
        frequency_Hz: (fc + Math.hypot(fc, 2 * frequency_Hz)) / 2,
        relativeWidth: MEETING,
      }));
      return [{ frequency_Hz, relativeWidth: loss / 2 }, ...meetings];
    }).flat();
  });
}
