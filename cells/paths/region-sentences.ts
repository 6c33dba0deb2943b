/** One sentence per region, built from the numbers of the prediction and from nothing else. */
import type { SupportKind } from '#src/acoustics/construction.ts';
import type { Mechanism, NamedFrequency, PathName, Prediction } from '#src/acoustics/prediction.ts';
import { levelText } from '#src/charts/band-data.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import { type PathShares, shareText } from '#src/charts/share-data.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import type { Sound } from './path-shares.ts';
import { namedFrequency, type Region } from './regions.ts';

export interface SentenceContext {
  readonly prediction: Prediction;
  readonly shares: readonly PathShares[];
  readonly sound: Sound;
  readonly units: UnitSystem;
  /** What goes around is a limit, which stays as it is whatever is done to the floor. */
  readonly flankingIsFixed: boolean;
  /** How the ceiling is held, if every cavity says the same. */
  readonly support?: SupportKind | undefined;
}

export function regionSentence(region: Region, context: SentenceContext): string {
  const where = bandsInWords(region, context.prediction.bands_Hz);
  return `${where} ${ruleInWords(region, context)}.`;
}

/** "Up to 80 Hz", "From 100 to 250 Hz", "At 160 Hz", "From 2500 Hz up", "In all bands". */
export function bandsInWords({ first, last }: Pick<Region, 'first' | 'last'>, bands_Hz: readonly number[]): string {
  const end = bands_Hz.length - 1;
  if (first === 0 && last === end) return 'In all bands';
  if (first === last) return `At ${bands_Hz[first]} Hz`;
  if (first === 0) return `Up to ${bands_Hz[last]} Hz`;
  if (last === end) return `From ${bands_Hz[first]} Hz up`;
  return `From ${bands_Hz[first]} to ${bands_Hz[last]} Hz`;
}

function ruleInWords(region: Region, context: SentenceContext): string {
  const { mechanism } = region;
  return mechanism === undefined || region.path !== 'direct'
    ? pathInWords(region, context)
    : mechanismInWords(mechanism, region, context);
}

function mechanismInWords(mechanism: Mechanism, region: Region, context: SentenceContext): string {
  const { prediction, units } = context;
  const named = namedFrequency(prediction, region);
  const at = region.frequency_Hz === undefined ? undefined : hertzText(region.frequency_Hz);
  const slope = slopeInWords(region, prediction);
  switch (mechanism) {
    case 'mass-spring-mass':
      return `${named?.name ?? 'the leaves bounce on the spring between them'}${given(': f0 = ', at)}${dip(region, context)}`;
    case 'mass':
      return `the floor moves as one, and its mass holds the sound back: ${formatQuantity(prediction.surfaceMass_kg_m2, 'surface-mass', units)}${slope}${towards(region, prediction)}`;
    case 'double-leaf':
      return `${eachOnItsOwn(region, prediction)}${slope}`;
    case 'stiffness':
      return `the floor is held by its stiffness${given(', below its first mode at ', at)}`;
    case 'cavity-mode':
      return `the air in ${severalCavities(prediction) ? 'a' : 'the'} cavity resonates: ${named?.name ?? 'half a wavelength fits across its depth'}${given(' at ', at)}`;
    case 'coincidence':
      return `bending waves in ${leafOf(named)} run as fast as sound${given(': fc = ', at)}${dip(region, context)}`;
    case 'bay-resonance':
      return `${named?.name ?? 'a board swings between its fastenings'}${given(': resonance at ', at)}`;
    case 'supports':
    case 'flanking':
    case 'leak':
      return pathInWords(region, context);
  }
}

function severalCavities({ resonances_Hz }: Prediction): boolean {
  return resonances_Hz.filter(({ kind }) => kind === 'cavity').length > 1;
}

/** Leaves on several springs come apart one after the other: above the last f0 alone does each move on its own. */
function eachOnItsOwn({ first, last }: Region, { bands_Hz, resonances_Hz }: Prediction): string {
  const bounces_Hz = resonances_Hz
    .filter(({ kind }) => kind === 'mass-spring-mass' || kind === 'floating')
    .map((r) => r.frequency_Hz);
  const below = bounces_Hz.filter((f) => f < bands_Hz[first]!);
  const above = bounces_Hz.filter((f) => f > bands_Hz[last]!);
  const [lowest, highest] = [Math.min(...below), Math.max(...below)];
  if (below.length > 0 && above.length > 0)
    return `some leaves move on their own, others still together: between f0 = ${hertzText(highest)} and f0 = ${hertzText(Math.min(...above))}`;
  const of =
    below.length > 1 ? `every f0 (${hertzText(lowest)} to ${hertzText(highest)})` : `f0 = ${hertzText(lowest)}`;
  return `the leaves move each on its own${below.length === 0 ? '' : `, above ${of}`}`;
}

/** "the upper leaf: bending waves as fast as sound" is about the upper leaf. */
function leafOf(named: NamedFrequency | undefined): string {
  return named?.name.includes(': ') ? named.name.slice(0, named.name.indexOf(': ')) : 'a leaf';
}

function given(words: string, value: string | undefined): string {
  return value === undefined ? '' : words + value;
}

const CARRIES: Readonly<Record<PathName, string>> = {
  direct: 'the largest part of the sound goes straight through leaves and cavities',
  supports: 'the largest part of the sound goes through what holds the ceiling',
  flanking: 'the largest part of the sound goes around by the walls',
  leaks: 'the largest part of the sound goes through gaps and holes',
};

/** How much takes the path, and what it would bring to close it: 10 lg of what is left. */
function pathInWords({ path, first, last }: Region, context: SentenceContext): string {
  const { shares, prediction, support } = context;
  const bearings = path === 'supports' && support === 'separate-joists';
  const carries = bearings ? COMMON_BEARINGS : CARRIES[path];
  const bands = prediction.bands_Hz
    .map((band_Hz, i) => ({ band_Hz, share: shares.find((s) => s.path === path)?.shares[i] ?? NaN }))
    .slice(first, last + 1)
    .filter(({ share }) => Number.isFinite(share));
  if (bands.length === 0) return carries;
  const values = bands.map(({ share }) => share);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const share = shareText(low) === shareText(high) ? shareText(high) : `${shareText(low)} to ${shareText(high)}`;
  const rest = bearings ? BEARINGS_ARE_ASSUMED : consequence(path, { low, bands, context });
  return `${carries}: ${share}${rest}`;
}

interface Ruled {
  /** The least share of the path in the bands. */
  readonly low: number;
  readonly bands: readonly { readonly band_Hz: number; readonly share: number }[];
  readonly context: SentenceContext;
}

function consequence(path: PathName, { low, bands, context: { sound, support, flankingIsFixed } }: Ruled): string {
  if (path === 'direct') return sound === 'impact' && support === 'separate-joists' ? BEARINGS_ARE_LEFT_OUT : '';
  return path === 'flanking' && flankingIsFixed ? limitInWords(low) : closingInWords(bands);
}

/** As the key of the picture calls it. */
const COMMON_BEARINGS =
  'the largest part of the sound goes through common bearings, the walls in which both floor and ceiling rest';

const BEARINGS_ARE_ASSUMED =
  '; how much crosses there is assumed, a share of the edges, and a ceiling on joists of its own cannot do better than that';

/** The engine lets no blow cross there (METHOD.md): a share of 100 % must not read as if that were known. */
const BEARINGS_ARE_LEFT_OUT = '; what impact sound crosses in common bearings is not counted';

function limitInWords(share: number): string {
  return `; nothing done to the floor alone gains more than ${levelText(-10 * Math.log10(share))} dB here`;
}

/** More than this nobody builds or measures, for sound finds another way: common practice, no source. */
const BUILT_AT_MOST_dB = 15;

/** Nothing where the rest is too little to be told from none: then there is no number to give. */
function closingInWords(bands: Ruled['bands']): string {
  const gains = bands.map(({ band_Hz, share }) => ({ band_Hz, gain_dB: Math.round(-10 * Math.log10(1 - share)) }));
  const most = gains.reduce((a, b) => (b.gain_dB > a.gain_dB ? b : a));
  const least_dB = Math.min(...gains.map(({ gain_dB }) => gain_dB));
  if (!Number.isFinite(most.gain_dB)) return '';
  const gain =
    least_dB === most.gain_dB ? `${least_dB} dB` : `${least_dB} to ${most.gain_dB} dB, most at ${most.band_Hz} Hz`;
  const beyond =
    most.gain_dB > BUILT_AT_MOST_dB
      ? `; more than about ${BUILT_AT_MOST_dB} dB can hardly be built or measured, because sound then finds another way`
      : '';
  return `; closing this path gains ${gain}${beyond}`;
}

/** How fast R rises through the region, from a straight line through its bands; undefined with too few bands. */
function slope_dB_per_octave({ first, last }: Region, { R_dB }: Prediction): number | undefined {
  const values = R_dB.slice(first, last + 1);
  if (values.length < 3 || !values.every(Number.isFinite)) return undefined;
  const middle = (values.length - 1) / 2;
  let product = 0;
  let square = 0;
  values.forEach((v, i) => {
    product += (i - middle) * v;
    square += (i - middle) ** 2;
  });
  return Math.round((3 * product) / square);
}

function slopeInWords(region: Region, prediction: Prediction): string {
  const slope = slope_dB_per_octave(region, prediction);
  if (slope === undefined) return '';
  if (slope === 0) return '; R stays level';
  return `; R ${slope > 0 ? 'rises' : 'falls'} by ${Math.abs(slope)} dB per octave`;
}

/** Mass alone would give 6 dB per octave: where there is hardly half of that, the resonance above takes the rest. */
function towards(region: Region, prediction: Prediction): string {
  const slope = slope_dB_per_octave(region, prediction);
  if (slope === undefined || slope > 3) return '';
  const top_Hz = prediction.bands_Hz[region.last]!;
  const next_Hz = Math.min(...prediction.resonances_Hz.map((r) => r.frequency_Hz).filter((f) => f > top_Hz));
  return Number.isFinite(next_Hz) ? ` instead of rising by 6, so near to the resonance at ${hertzText(next_Hz)}` : '';
}

/** The weakest band of a dip. */
function dip({ first, last }: Region, { prediction: { R_dB, bands_Hz } }: SentenceContext): string {
  if (first === last) return '';
  const values = R_dB.slice(first, last + 1);
  if (!values.every(Number.isFinite)) return '';
  const lowest = Math.min(...values);
  return `; R is lowest at ${bands_Hz[first + values.indexOf(lowest)]} Hz with ${levelText(lowest)} dB`;
}
