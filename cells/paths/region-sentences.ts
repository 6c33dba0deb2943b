/** One sentence per region, built from the numbers of the prediction and from nothing else. */
import type { SupportKind } from '#src/acoustics/construction.ts';
import type { PathName, Prediction, Sound } from '#src/acoustics/prediction.ts';
import { levelText } from '#src/charts/band-data.ts';
import { type PathShares, shareText } from '#src/charts/share-data.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { mechanismInWords } from './mechanism-words.ts';
import { type Region, ruledBands } from './regions.ts';

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
  const { path } = region;
  if (path !== 'direct') return pathInWords({ ...region, path }, context);
  return `${mechanismInWords(region, context)}${leftOut(region, context)}`;
}

/** Said once, where the floor itself first rules. */
function leftOut({ first }: Region, { prediction, sound, support }: SentenceContext): string {
  const applies = sound === 'impact' && support === 'separate-joists';
  return applies && ruledBands(prediction, sound).findIndex((b) => b.path === 'direct') === first
    ? BEARINGS_ARE_LEFT_OUT
    : '';
}

type Detour = Exclude<PathName, 'direct'>;

const CARRIES: Readonly<Record<Detour, string>> = {
  supports: 'the largest part of the sound goes through what holds the ceiling',
  flanking: 'the largest part of the sound goes around by the walls',
  leaks: 'the largest part of the sound goes through gaps and holes',
};

/** How much takes the path, and what it would bring to close it: 10 lg of what is left. */
function pathInWords({ path, first, last }: Region & { readonly path: Detour }, context: SentenceContext): string {
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

function consequence(path: Detour, { low, bands, context }: Ruled): string {
  return path === 'flanking' && context.flankingIsFixed ? limitInWords(low) : closingInWords(bands);
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
