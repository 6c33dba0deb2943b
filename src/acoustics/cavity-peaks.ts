import { insideKx2, keptShare } from './air-in-bays.ts';
import { cavityLossFactor } from './cavity-loss.ts';
import { DAMPED_SHARE, filledShare, firstAcross_Hz, MOST_MODES } from './cavity-resonances.ts';
import { type CoincidenceCourse, TO_Hz } from './coincidence-course.ts';
import type { CavityModel, FloorModel } from './floor-model.ts';
import type { FrequencyPeak } from './frequency-nodes.ts';

/**
 * What empty cavities do to a frequency: their first resonances across, n half waves at normal incidence, and where n half
 * waves fit across for the sound that a leaf's bending waves meet, so that both resonate at the same angle.
 */
export function cavityPeaks(model: FloorModel, course: CoincidenceCourse): FrequencyPeak[] {
  return model.interlayers.flatMap((layer, i) => {
    if (layer.kind === 'mat' || filledShare(layer) > DAMPED_SHARE) return [];
    const waves = [...wavesOf(model, i), ...wavesOf(model, i + 1)];
    // Twice the same leaf meets the same waves.
    const different = waves.filter((wave, n) => !waves.slice(0, n).some((other) => course.alike(wave, other)));
    return [...crossModes(model, layer), ...different.flatMap((wave) => meetings(model, course, layer, wave))];
  });
}

/** The free waves that move a leaf: its own, or those of all leaves that mats join to it. */
function wavesOf({ interlayers }: FloorModel, leaf: number): number[] {
  let first = leaf;
  let last = leaf;
  while (interlayers[first - 1]?.kind === 'mat') first--;
  while (interlayers[last]?.kind === 'mat') last++;
  return Array.from({ length: last - first + 1 }, (_, n) => first + n);
}

function crossModes(model: FloorModel, layer: CavityModel): FrequencyPeak[] {
  const { air } = model;
  const lowest_Hz = firstAcross_Hz(layer, air);
  return Array.from({ length: Math.min(Math.floor(TO_Hz / lowest_Hz), MOST_MODES) }, (_, n) => {
    const frequency_Hz = (n + 1) * lowest_Hz;
    const loss = cavityLossFactor(frequency_Hz, layer, model);
    return { frequency_Hz, relativeWidth: loss / 2, doubtful: 'step' };
  });
}

/** Half waves across the cavity N = (2df/c) √(1 − κ fc/f), κ the part of kx² that counts between joists; peaks at whole N. */
function meetings(model: FloorModel, course: CoincidenceCourse, layer: CavityModel, wave: number): FrequencyPeak[] {
  const { air, plates } = model;
  const { bays } = layer;
  const halfWaves = (x: number, logRatio: number): number => {
    const f_Hz = Math.exp(x);
    const s2 = Math.exp(-logRatio);
    const k0 = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
    const inside = 1 - insideKx2(bays, k0 * k0 * s2) / (k0 * k0);
    return inside > 0 ? ((2 * layer.depth_m * f_Hz) / air.soundSpeed_m_s) * Math.sqrt(inside) : 0;
  };
  const values = course.free[wave]!.map((y, j) => halfWaves(course.logFrequency[j]!, y));
  const most = Math.min(Math.floor(Math.max(...values)), MOST_MODES);
  const peaks: FrequencyPeak[] = [];
  for (let n = 1; n <= most; n++) {
    for (const { logFrequency, slope } of course.crossings(values, (x) => halfWaves(x, course.freeAt(wave, x)), n)) {
      const f_Hz = Math.exp(logFrequency);
      const s2 = Math.exp(-course.freeAt(wave, logFrequency));
      const k0 = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
      const kept = keptShare(bays, k0 * k0 * s2);
      // Half-widths along s² = sin² θ inside the cavity: of coincidence, by loss and radiation, and of the cavity resonance.
      const u = Math.sqrt(Math.max(1 - s2, 0.01));
      const radiation =
        (2 * air.density_kg_m3 * air.soundSpeed_m_s) / (2 * Math.PI * f_Hz * plates[wave]!.surfaceMass_kg_m2 * u);
      const width =
        (kept * s2 * (course.freeLoss(wave, logFrequency) + radiation)) / 2 + cavityLossFactor(f_Hz, layer, model);
      // N² = (2df/c)² (1 − κs²): what a shift of N is along s².
      const across = (2 * layer.depth_m * f_Hz) / air.soundSpeed_m_s;
      peaks.push({
        frequency_Hz: f_Hz,
        relativeWidth: (width * across * across) / (2 * n * Math.abs(slope)),
        doubtful: 'peak',
      });
    }
  }
  return peaks;
}
