/** What a column of a band table may hold. */
export type BandQuantity =
  /** Transmission loss or sound reduction index. */
  | 'R'
  /** Normalised impact sound level. */
  | 'Ln'
  /** Reduction of impact sound level by a covering. */
  | 'improvement'
  /** Sound level in a room. */
  | 'level';

/** Longer names first, so that "Ln" is not read as "L". */
const HEADINGS: readonly (readonly [BandQuantity | 'frequency', RegExp])[] = [
  [
    'frequency',
    /^(f|freq|frequency|frequencies|hz|bands?|(one[- ])?third[- ]octaves?|octaves?|(mid-?band|centre|center) frequency)\b/,
  ],
  ['improvement', /^(δ ?l|d ?l|delta ?-?l|improvement|reduction of impact)\b/],
  ['Ln', /^(l ?n|nispl|(normali[sz]ed )?impact)\b/],
  ['R', /^(r|tl|stl|atl|sri|(sound )?transmission loss|sound reduction)\b/],
  ['level', /^(l|lp|spl|level|noise|sound (pressure )?level)\b/],
];

/** For a message: headings that are understood. */
export const KNOWN_HEADINGS = 'frequency, R or TL, Ln, delta L, level';

/** Words after which a column holds something else than what it begins with: R's uncertainty, a level difference. */
const OTHERWISE =
  /\b(uncertainty|deviation|deficienc(y|ies)|error|difference|noise (reduction|isolation|rating|criteri(on|a)))\b/;

/** Longer ones are no headings; it also bounds the work on a hostile file. */
const LONGEST_HEADING = 200;

/** Reads a heading such as `f_Hz`, `Frequency (Hz)`, `TL [dB]`, `L'n, dB` or `R floor 2`; undefined: not known. */
export function quantityOfHeading(heading: string): BandQuantity | 'frequency' | undefined {
  if (heading.length > LONGEST_HEADING) return undefined;
  const plain = heading
    .toLowerCase()
    .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .replace(/['’′"]/g, '')
    .replace(/[_\s]+/g, ' ')
    .trim();
  // \b knows ASCII letters only: the Greek letter is spelled out first.
  const spelled = plain.replace(/^[δ∆]/, 'delta ');
  if (OTHERWISE.test(spelled)) return undefined;
  return HEADINGS.find(([, pattern]) => pattern.test(spelled))?.[0];
}
