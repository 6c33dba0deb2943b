import type { FloorModel } from './floor-model.ts';
import type { BandMechanism, Mechanism, NamedFrequency, PathName } from './prediction.ts';

/** How far from a resonance, in octaves, it still rules a band of the direct path. */
const REACH_OCTAVES = 0.5;

export interface PathEnergy {
  readonly path: PathName;
  readonly tau: number;
}

const MECHANISM_OF: Record<NamedFrequency['kind'], Mechanism> = {
  'mass-spring-mass': 'mass-spring-mass',
  floating: 'mass-spring-mass',
  cavity: 'cavity-mode',
  critical: 'coincidence',
  bay: 'bay-resonance',
};

/** What rules each band of a floor. */
export class Mechanisms {
  /** Those that may rule; a filled cavity has no sharp resonance. */
  readonly #named: readonly NamedFrequency[];
  /** The leaves' first resonance on their springs; Infinity for one leaf. */
  readonly #bounce_Hz: number;
  /** Below it the floor is held by its stiffness. */
  readonly #stiffness_Hz: number;

  constructor(model: FloorModel, named: readonly NamedFrequency[]) {
    this.#named = hasEmptyCavity(model) ? named : named.filter(({ kind }) => kind !== 'cavity');
    this.#bounce_Hz = named
      .filter(({ kind }) => kind === 'mass-spring-mass' || kind === 'floating')
      .reduce((least, { frequency_Hz }) => Math.min(least, frequency_Hz), Infinity);
    this.#stiffness_Hz = Math.min(...model.plates.map((p) => firstMode_Hz(model, p.criticalFrequency_Hz)));
  }

  /** The path with most energy, and within the direct path the nearest resonance. */
  at(band_Hz: number, paths: readonly PathEnergy[]): BandMechanism {
    const total = paths.reduce((sum, p) => sum + p.tau, 0);
    const largest = paths.reduce((a, b) => (b.tau > a.tau ? b : a));
    const share = total > 0 ? largest.tau / total : 1;
    if (largest.path === 'direct') return { path: 'direct', share, ...this.#direct(band_Hz) };
    const mechanism: Mechanism = largest.path === 'leaks' ? 'leak' : largest.path;
    return { path: largest.path, share, mechanism };
  }

  #direct(band_Hz: number): { mechanism: Mechanism; frequency_Hz?: number } {
    let nearest: NamedFrequency | undefined;
    let distance = REACH_OCTAVES;
    for (const candidate of this.#named) {
      const octaves = Math.abs(Math.log2(band_Hz / candidate.frequency_Hz));
      if (octaves >= distance) continue;
      nearest = candidate;
      distance = octaves;
    }
    if (nearest) return { mechanism: MECHANISM_OF[nearest.kind], frequency_Hz: nearest.frequency_Hz };
    if (band_Hz > this.#bounce_Hz) return { mechanism: 'double-leaf', frequency_Hz: this.#bounce_Hz };
    if (band_Hz < this.#stiffness_Hz) return { mechanism: 'stiffness', frequency_Hz: this.#stiffness_Hz };
    return { mechanism: 'mass' };
  }
}

/** f11 = c²/(4fc)·(1/l1² + 1/l2²): below it a simply supported floor is held by its stiffness. */
function firstMode_Hz({ air, edges }: FloorModel, fc_Hz: number): number {
  return (air.soundSpeed_m_s ** 2 / (4 * fc_Hz)) * (edges.length_m ** -2 + edges.width_m ** -2);
}

function hasEmptyCavity({ interlayers }: FloorModel): boolean {
  return interlayers.some((i) => i.kind === 'cavity' && i.fluids.every((f) => f.flowResistivity_Pa_s_m2 === undefined));
}
