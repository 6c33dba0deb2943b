/** Consecutive bands that one thing rules. */
import type { Mechanism, NamedFrequency, PathName, Prediction } from '#src/acoustics/prediction.ts';
import type { PathShares } from '#src/charts/share-data.ts';
import { largestPath, type Sound } from './path-shares.ts';

export interface Region {
  /** Indices of the bands, both inclusive. */
  readonly first: number;
  readonly last: number;
  readonly path: PathName;
  /** Under impact only the path is known. */
  readonly mechanism?: Mechanism;
  /** The frequency behind the mechanism, where there is one. */
  readonly frequency_Hz?: number;
}

export function regionsOf(prediction: Prediction, shares: readonly PathShares[], sound: Sound): readonly Region[] {
  const ruled = prediction.bands_Hz.map((_, i) =>
    sound === 'impact' ? byPath(shares, i) : byMechanism(prediction, i),
  );
  const regions: Region[] = [];
  ruled.forEach((rule, i) => {
    const open = regions.at(-1);
    if (rule && open && open.last === i - 1 && sameRule(open, rule)) regions[regions.length - 1] = { ...open, last: i };
    else if (rule) regions.push({ first: i, last: i, ...rule });
  });
  return regions;
}

type Rule = Omit<Region, 'first' | 'last'>;

function byPath(shares: readonly PathShares[], index: number): Rule | undefined {
  const largest = largestPath(shares, index);
  return largest && { path: largest.path };
}

function byMechanism({ mechanisms }: Prediction, index: number): Rule | undefined {
  const band = mechanisms[index];
  if (!band) return undefined;
  const { path, mechanism, frequency_Hz } = band;
  return { path, mechanism, ...(frequency_Hz !== undefined && { frequency_Hz }) };
}

/** A critical frequency per band would make a region per band: near equal ones count as one. */
function sameRule(a: Rule, b: Rule): boolean {
  return a.path === b.path && a.mechanism === b.mechanism && sameFrequency(a.frequency_Hz, b.frequency_Hz);
}

function sameFrequency(a: number | undefined, b: number | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return Math.abs(Math.log2(a / b)) < 0.01;
}

const KINDS_OF: Partial<Record<Mechanism, readonly NamedFrequency['kind'][]>> = {
  'mass-spring-mass': ['mass-spring-mass', 'floating'],
  'double-leaf': ['mass-spring-mass', 'floating'],
  'cavity-mode': ['cavity'],
  coincidence: ['critical'],
  'bay-resonance': ['bay'],
};

/**
 * The named frequency behind a region. A bounce and a leaf swinging between its fastenings may lie so close that they read
 * alike, so the kind that belongs to the mechanism comes first, and of several the nearest.
 */
export function namedFrequency(
  { resonances_Hz, criticalFrequencies_Hz }: Prediction,
  { mechanism, frequency_Hz }: Pick<Region, 'mechanism' | 'frequency_Hz'>,
): NamedFrequency | undefined {
  if (frequency_Hz === undefined) return undefined;
  const near = [...resonances_Hz, ...criticalFrequencies_Hz]
    .filter((n) => sameFrequency(n.frequency_Hz, frequency_Hz))
    .sort((a, b) => Math.abs(a.frequency_Hz - frequency_Hz) - Math.abs(b.frequency_Hz - frequency_Hz));
  const kinds = mechanism && KINDS_OF[mechanism];
  return near.find(({ kind }) => kinds?.includes(kind)) ?? near[0];
}
