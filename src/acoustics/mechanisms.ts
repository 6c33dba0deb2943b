import type { FloorModel } from './floor-model.ts';
import type { BandMechanism, Mechanism, NamedFrequency, PathName } from './prediction.ts';

/** How far from a resonance, in octaves, it still rules a band of the direct path. */
const REACH_OCTAVES = 0.5;

export interface PathEnergy {
  readonly path: PathName;
  readonly tau: number;
}

/** What rules one band: the path with most energy, and within the direct path the nearest resonance. */
export function bandMechanism(
  model: FloorModel,
  named: readonly NamedFrequency[],
  band_Hz: number,
  paths: readonly PathEnergy[],
): BandMechanism {
  const total = paths.reduce((sum, p) => sum + p.tau, 0);
  const largest = paths.reduce((a, b) => (b.tau > a.tau ? b : a));
  const share = total > 0 ? largest.tau / total : 1;
  if (largest.path === 'direct') return { path: 'direct', share, ...directMechanism(model, named, band_Hz) };
  const mechanism: Mechanism = largest.path === 'leaks' ? 'leak' : largest.path;
  return { path: largest.path, share, mechanism };
}

const MECHANISM_OF: Record<NamedFrequency['kind'], Mechanism> = {
  'mass-spring-mass': 'mass-spring-mass',
  floating: 'mass-spring-mass',
  cavity: 'cavity-mode',
  critical: 'coincidence',
  bay: 'bay-resonance',
};

function directMechanism(
  model: FloorModel,
  named: readonly NamedFrequency[],
  band_Hz: number,
): { mechanism: Mechanism; frequency_Hz?: number } {
  let nearest: NamedFrequency | undefined;
  let distance = REACH_OCTAVES;
  for (const candidate of named) {
    if (candidate.kind === 'cavity' && !hasEmptyCavity(model)) continue;
    const octaves = Math.abs(Math.log2(band_Hz / candidate.frequency_Hz));
    if (octaves < distance) {
      nearest = candidate;
      distance = octaves;
    }
  }
  if (nearest) return { mechanism: MECHANISM_OF[nearest.kind], frequency_Hz: nearest.frequency_Hz };
  const bounce = named.filter((n) => n.kind === 'mass-spring-mass' || n.kind === 'floating');
  const lowest = bounce.length > 0 ? Math.min(...bounce.map((n) => n.frequency_Hz)) : Infinity;
  if (band_Hz > lowest) return { mechanism: 'double-leaf', frequency_Hz: lowest };
  const stiffness_Hz = Math.min(...model.plates.map((p) => firstMode_Hz(model, p.criticalFrequency_Hz)));
  return band_Hz < stiffness_Hz ? { mechanism: 'stiffness', frequency_Hz: stiffness_Hz } : { mechanism: 'mass' };
}

/** f11 = c²/(4fc)·(1/l1² + 1/l2²): below it a simply supported floor is held by its stiffness. */
function firstMode_Hz({ air, edges }: FloorModel, fc_Hz: number): number {
  return (air.soundSpeed_m_s ** 2 / (4 * fc_Hz)) * (edges.length_m ** -2 + edges.width_m ** -2);
}

function hasEmptyCavity({ interlayers }: FloorModel): boolean {
  return interlayers.some((i) => i.kind === 'cavity' && i.fluids.every((f) => f.flowResistivity_Pa_s_m2 === undefined));
}
