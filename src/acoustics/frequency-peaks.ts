import { cavityLossFactor } from './fibre.ts';
import type { FloorModel } from './floor-model.ts';
import type { FrequencyPeak } from './frequency-nodes.ts';
import { type PlateState, plateAt } from './leaf-plate.ts';
import { resonances } from './resonances.ts';
import { MAXIMUM_RADIATION, resonantRadiation } from './resonant-radiation.ts';
import { criticalFrequency_Hz } from './support-radiation.ts';

/** Most resonances across one empty cavity that are given points of their own; more where no support outdoes them. */
const MOST_MODES = { supported: 4, apart: 10 };

/** How far the meeting of coincidence and cavity resonance is spread and shifted by the leaves' mass, relative. */
const MEETING = 0.06;

/** Where a leaf's bending waves may meet sound in air and matter to a band. */
const FROM_Hz = 15;
const TO_Hz = 7000;
const STEP = Math.SQRT2;

const BOUNCE_WIDTH = 0.05;

interface LeafPeak extends FrequencyPeak {
  readonly leaf: number;
}

/**
 * Where transmission changes fast: each leaf's critical frequencies, with the stiffness it has there, and where its
 * radiation reaches the cap, the first resonances across each empty cavity, and where a leaf's coincidence meets one of these at the same angle.
 */
export function frequencyPeaks(model: FloorModel): FrequencyPeak[] {
  const critical = coincidences(model);
  return [...critical, ...radiationCaps(model, critical), ...cavityPeaks(model, critical), ...bounces(model)];
}

/** Where the resonant radiation efficiency of a leaf reaches its cap on its way up to fc: a kink. By bisection. */
function radiationCaps(model: FloorModel, critical: readonly LeafPeak[]): FrequencyPeak[] {
  return critical.flatMap(({ frequency_Hz: fc, leaf }) => {
    const sigma = (f: number) => resonantRadiation(f, fc, model.leafEdges[leaf]!, model.air.soundSpeed_m_s);
    let low = fc / 2;
    let high = fc;
    if (sigma(low) >= MAXIMUM_RADIATION) return [];
    for (let step = 0; step < 20; step++) {
      const middle = (low + high) / 2;
      if (sigma(middle) < MAXIMUM_RADIATION) low = middle;
      else high = middle;
    }
    return [{ frequency_Hz: low, relativeWidth: Math.log(fc / low) }];
  });
}

/**
 * Where a leaf's bending waves run as fast as sound along it: f = fc(f). Thick and damped leaves soften with frequency, so
 * that it may happen more than once. Scanned by half octaves over all that is heard, then by bisection in ln f.
 */
function coincidences(model: FloorModel): LeafPeak[] {
  const state: PlateState = { bending_Nm: 0, lossFactor: 0 };
  return model.plates.flatMap((plate, leaf) => {
    const slower = (f_Hz: number): boolean =>
      f_Hz < criticalFrequency_Hz(model, plate, plateAt(plate, f_Hz, model.constants, state));
    const peaks: LeafPeak[] = [];
    let below = slower(FROM_Hz);
    for (let f_Hz = FROM_Hz; f_Hz < TO_Hz; f_Hz *= STEP) {
      const above = slower(f_Hz * STEP);
      if (below !== above) {
        let low = f_Hz;
        let high = f_Hz * STEP;
        for (let i = 0; i < 12; i++) {
          const middle = Math.sqrt(low * high);
          if (slower(middle) === below) low = middle;
          else high = middle;
        }
        peaks.push({ leaf, frequency_Hz: Math.sqrt(low * high), relativeWidth: state.lossFactor / 2 });
      }
      below = above;
    }
    return peaks;
  });
}

/** The leaves on their springs: half-width by the loss of the supports and mats, roughly. */
function bounces(model: FloorModel): FrequencyPeak[] {
  return resonances(model)
    .filter(({ kind }) => kind === 'mass-spring-mass' || kind === 'floating')
    .map(({ frequency_Hz }) => ({ frequency_Hz, relativeWidth: BOUNCE_WIDTH }));
}

function cavityPeaks({ interlayers, air, constants }: FloorModel, critical: readonly LeafPeak[]): FrequencyPeak[] {
  return interlayers.flatMap((layer, i) => {
    if (layer.kind === 'mat' || layer.fluids.some((f) => f.flowResistivity_Pa_s_m2 !== undefined)) return [];
    const leaves = critical.filter(({ leaf }) => leaf === i || leaf === i + 1);
    const modes = layer.chain?.lower ? MOST_MODES.supported : MOST_MODES.apart;
    return Array.from({ length: modes }, (_, n) => {
      const frequency_Hz = ((n + 1) * air.soundSpeed_m_s) / (2 * layer.depth_m);
      const loss = cavityLossFactor(frequency_Hz, layer.depth_m, constants.cavityAbsorption, air);
      // 1 − fc/f = (f_n/f)²
      const meetings = leaves.map(({ frequency_Hz: fc }) => ({
        frequency_Hz: (fc + Math.hypot(fc, 2 * frequency_Hz)) / 2,
        relativeWidth: MEETING,
      }));
      return [{ frequency_Hz, relativeWidth: loss / 2 }, ...meetings];
    }).flat();
  });
}
