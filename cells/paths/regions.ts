/** Consecutive bands that one thing rules. */
import type {
  BandMechanism,
  Mechanism,
  NamedFrequency,
  PathName,
  Prediction,
  Sound,
} from '#src/acoustics/prediction.ts';

export interface Region {
  /** Indices of the bands, both inclusive. */
  readonly first: number;
  readonly last: number;
  readonly path: PathName;
  readonly mechanism: Mechanism;
  /** The frequency behind the mechanism, where there is one. */
  readonly frequency_Hz?: number;
}

/** What rules each band, of one sound. */
export function ruledBands({ mechanisms, impactMechanisms }: Prediction, sound: Sound): readonly BandMechanism[] {
  return sound === 'impact' ? impactMechanisms : mechanisms;
}

export function regionsOf(prediction: Prediction, sound: Sound): readonly Region[] {
  const regions: Region[] = [];
  ruledBands(prediction, sound).forEach(({ path, mechanism, frequency_Hz }, i) => {
    const rule = { path, mechanism, ...(frequency_Hz !== undefined && { frequency_Hz }) };
    const open = regions.at(-1);
    if (open && sameRule(open, rule)) regions[regions.length - 1] = { ...open, last: i };
    else regions.push({ first: i, last: i, ...rule });
  });
  return regions;
}

type Rule = Omit<Region, 'first' | 'last'>;

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
  const kinds = KINDS_OF[mechanism];
  return near.find(({ kind }) => kinds?.includes(kind)) ?? near[0];
}
