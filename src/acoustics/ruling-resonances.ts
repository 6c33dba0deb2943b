import { bayResonance_Hz } from './bay-resonance.ts';
import { firstAcross_Hz } from './cavity-resonances.ts';
import type { FloorModel, InterlayerModel } from './floor-model.ts';
import type { Mechanism } from './prediction.ts';
import { airStiffness_N_m3, bounceResonances, criticalFrequencies, interlayerStiffness_N_m3 } from './resonances.ts';

/** What may make a dip in the direct path. */
export interface RulingResonance {
  readonly mechanism: Mechanism;
  /** As the prediction lists it. */
  readonly frequency_Hz: number;
  /** Where it rings: the same, or a multiple of it. */
  readonly rings_Hz: number;
  /** How far above that it shows, octaves; as far below unless it begins there. */
  readonly above_octaves: number;
  readonly below_octaves: number;
}

/**
 * A dip lies within half an octave of what makes it: the frequencies are those of the simplest case, leaves without stiffness
 * on springs without mass, or one stiff leaf. Our own.
 */
const NEAR_octaves = 0.5;

/** Sound that falls in aslant resonates in a cavity from c/2d up; a dip is known to a third of an octave. */
const BAND_octaves = 1 / 6;

/** Waves slower than sound radiate ever better up to fc; sound that falls in aslant meets faster ones beyond. */
const COINCIDENCE_BELOW_octaves = 1 / 3;

/** Of the resonances across a cavity the first few stand out. */
const ACROSS = 3;

/**
 * Of what lies about as near to a dip, the first tells most. Between joists f0 is that of boards which swing there, with the
 * air added; a leaf whose waves run as fast as sound lets sound through whatever it rests on or the air beside it does.
 */
const TELLING: readonly Mechanism[] = ['bay-resonance', 'coincidence', 'mass-spring-mass', 'cavity-mode'];

/** What else moves with the leaves, joists and fastenings, brings their swinging down. */
const SWING_BELOW_octaves = 2 / 3;

/** Resonances of what carries the direct sound. */
export function rulingResonances(model: FloorModel): RulingResonance[] {
  const bounces = bounceResonances(model).map(({ frequency_Hz }) => ({
    ...around('mass-spring-mass', frequency_Hz),
    below_octaves: SWING_BELOW_octaves,
  }));
  const coincidences = criticalFrequencies(model).map(({ frequency_Hz }) => ({
    ...around('coincidence', frequency_Hz),
    below_octaves: COINCIDENCE_BELOW_octaves,
  }));
  const others = model.interlayers.flatMap((layer, i) => [
    ...across(model, layer, i),
    ...betweenJoists(model, layer, i),
  ]);
  return [...bounces, ...coincidences, ...others];
}

function around(mechanism: Mechanism, frequency_Hz: number): RulingResonance {
  return {
    mechanism,
    frequency_Hz,
    rings_Hz: frequency_Hz,
    above_octaves: NEAR_octaves,
    below_octaves: NEAR_octaves,
  };
}

/**
 * Fill leaves no sharp resonance. Through a leaf whose bending waves are faster, most sound comes where they meet one of the
 * cavity at the same angle: N = (2df/c) √(1 − fc/f), see `cavity-peaks.ts`.
 */
function across({ air, plates }: FloorModel, layer: InterlayerModel, i: number): RulingResonance[] {
  if (layer.kind === 'mat' || layer.fluids.some((f) => f.flowResistivity_Pa_s_m2 !== undefined)) return [];
  const first_Hz = firstAcross_Hz(layer, air);
  return Array.from({ length: ACROSS }, (_, n) => (n + 1) * first_Hz).flatMap((whole_Hz) => {
    const met_Hz = [plates[i]!, plates[i + 1]!]
      .map(({ criticalFrequency_Hz }) => criticalFrequency_Hz / 2)
      .filter((half_Hz) => 2 * half_Hz < whole_Hz)
      .map((half_Hz) => half_Hz + Math.hypot(half_Hz, whole_Hz));
    return [whole_Hz, ...met_Hz].map((rings_Hz) => ({
      ...around('cavity-mode', first_Hz),
      rings_Hz,
      below_octaves: BAND_octaves,
    }));
  });
}

/** Boards screwed to the same joists, if they are the stiffer spring beside the air: on springs of their own leaves bounce. */
function betweenJoists(model: FloorModel, layer: InterlayerModel, i: number): RulingResonance[] {
  if (layer.kind === 'mat' || layer.cavity.support !== 'direct' || !layer.chain || layer.chain.spring) return [];
  const { air, plates } = model;
  if (interlayerStiffness_N_m3(model, i) < 2 * airStiffness_N_m3(layer, air)) return [];
  const { line_m } = layer.chain.upper;
  return [plates[i]!, plates[i + 1]!].map((plate) => ({
    ...around('bay-resonance', bayResonance_Hz(plate, line_m)),
    below_octaves: SWING_BELOW_octaves,
  }));
}

/** The one that lies nearest to the bottom of a dip, if any is near enough; of several about as near the most telling. */
export function resonanceNear(resonances: readonly RulingResonance[], band_Hz: number): RulingResonance | undefined {
  const away = (r: RulingResonance) => Math.abs(Math.log2(band_Hz / r.rings_Hz));
  const near = resonances.filter((r) => away(r) <= (band_Hz > r.rings_Hz ? r.above_octaves : r.below_octaves));
  const least = Math.min(...near.map(away));
  const rank = (r: RulingResonance) => TELLING.indexOf(r.mechanism);
  return near
    .filter((r) => away(r) <= least + BAND_octaves)
    .toSorted((a, b) => rank(a) - rank(b) || away(a) - away(b))[0];
}
