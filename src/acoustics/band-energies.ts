import { Airborne } from './airborne.ts';
import { azimuths } from './azimuths.ts';
import { CrowdedNodes } from './crowded-nodes.ts';
import { FastWaves } from './fast-waves.ts';
import { FloatingLimit } from './floating-limit.ts';
import type { FloorModel } from './floor-model.ts';
import { frequencyNodes } from './frequency-nodes.ts';
import { frequencyPeaks } from './frequency-peaks.ts';
import { Impact } from './impact.ts';
import { leakArea_m2, leakTransmission } from './leaks.ts';
import type { Quadrature } from './quadrature.ts';
import { exactBandOf } from './standards/iec-61260.ts';

/** Transmission coefficient per band, each path as if it were alone. */
export interface AirborneBands {
  readonly direct: Float64Array;
  readonly supports: Float64Array;
  readonly leaks: Float64Array;
}

/** Sound power of the tapping machine below, per band, W. */
export interface ImpactBands {
  readonly direct: Float64Array;
  readonly supports: Float64Array;
}

/** Beyond this many times the resonance of hammer and surface, blow and rebound beat more than once in a band or two. */
const BEATING = 2;

/**
 * Energies of each band, airborne and impact, from the same waves. τ is the plain mean over log-spaced frequencies; the
 * power of the tapping machine is the integral over them, ∫ W df = ∫ W f d(ln f). Both are averaged over directions where
 * leaves are orthotropic.
 */
export function bandEnergies(
  model: FloorModel,
  bands_Hz: readonly number[],
  quadrature: Quadrature,
): { readonly airborne: AirborneBands; readonly impact: ImpactBands } {
  const waves = new FastWaves(model, quadrature.angles);
  const airborne = new Airborne(model, quadrature);
  const impact = new Impact(model, quadrature);
  const floating = FloatingLimit.of(model, quadrature);
  const turns = azimuths(model.orthotropic);
  const peaks = frequencyPeaks(model);
  const nodes = new CrowdedNodes();
  const count = bands_Hz.length;
  const through = {
    direct: new Float64Array(count),
    supports: new Float64Array(count),
    leaks: new Float64Array(count),
  };
  const struck = { direct: new Float64Array(count), supports: new Float64Array(count) };
  bands_Hz.forEach((band_Hz, band) => {
    const edges = exactBandOf(band_Hz);
    const logWidth = Math.log(edges.upper_Hz / edges.lower_Hz);
    const { frequencies, peakFrequencies } = quadrature;
    // Of orthotropic leaves waves in some direction always run about as fast as sound.
    const uneven = model.orthotropic || edges.lower_Hz > BEATING * impact.contactResonance_Hz;
    frequencyNodes(nodes, edges, peaks, uneven ? peakFrequencies : frequencies, peakFrequencies);
    for (let j = 0; j < nodes.count; j++) {
      const f_Hz = nodes.x[j]!;
      for (const turn of turns) {
        const weight = nodes.weight[j]! * turn.weight;
        waves.at(f_Hz, turn.cos2);
        const shares = airborne.at(f_Hz, waves);
        through.direct[band]! += weight * (shares.forced + shares.resonant);
        through.supports[band]! += weight * shares.supports;
        const hertz = weight * logWidth * f_Hz;
        const power = impact.at(f_Hz, waves);
        floating?.apply(f_Hz, turn.cos2, power);
        struck.direct[band]! += hertz * power.direct;
        struck.supports[band]! += hertz * power.supports;
      }
      through.leaks[band]! += nodes.weight[j]! * leakShare(model, f_Hz);
    }
  });
  return { airborne: through, impact: struck };
}

function leakShare({ construction, edges, air }: FloorModel, f_Hz: number): number {
  let sum = 0;
  for (const leak of construction.leaks ?? []) {
    const area = leakArea_m2(leak);
    if (area > 0) sum += (leakTransmission(leak, f_Hz, air) * area) / edges.area_m2;
  }
  return sum;
}
