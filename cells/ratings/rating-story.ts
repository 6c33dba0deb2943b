/** How a rating came about, band by band: from the functions that made the number. */
import type { Prediction } from '#src/acoustics/prediction.ts';
import { apparentName } from '#src/acoustics/ratings/apparent-names.ts';
import type { ContourFit } from '#src/acoustics/ratings/contour-fit.ts';
import { iic } from '#src/acoustics/ratings/iic.ts';
import { lnw } from '#src/acoustics/ratings/lnw.ts';
import { oitc } from '#src/acoustics/ratings/oitc.ts';
import { type Rw, rw } from '#src/acoustics/ratings/rw.ts';
import { stc } from '#src/acoustics/ratings/stc.ts';
import { decimal } from '#src/quantities/format-quantity.ts';
import { wholeNumber } from '../shared/number-words.ts';

export interface RatingStory {
  readonly sentences: readonly string[];
  readonly bands_Hz: readonly number[];
  readonly lines: readonly StoryLine[];
}

export interface StoryLine {
  readonly label: string;
  readonly values_dB: readonly number[];
  /** Stands out where it is not zero. */
  readonly stress?: true;
  /** Whole decibels: the rating reads no others. */
  readonly whole?: true;
}

/** Undefined for rows that need no story. With the walls in them, bands and ratings have names of their own. */
export function ratingStory(key: string, prediction: Prediction, withWalls = false): RatingStory | undefined {
  const { bands_Hz } = prediction;
  const name = (rating: string) => (withWalls ? apparentName(rating) : rating);
  const [R, Ln] = withWalls ? ['R′', 'L′n'] : ['R', 'Ln'];
  const reduction = { bands_Hz, values_dB: prediction.R_dB };
  const impact = { bands_Hz, values_dB: prediction.Ln_dB };
  switch (key) {
    case 'stc': {
      const { STC, fit } = stc(reduction);
      return contourStory(
        fit,
        R!,
        { up: true, ...ASTM_E413 },
        `Its value at 500 Hz is the ${name('STC')}: ${wholeNumber(STC)}.`,
      );
    }
    case 'rw': {
      const result = rw(reduction);
      return contourStory(
        result.fit,
        R!,
        { up: true },
        `Its value at 500 Hz is ${name('Rw')}: ${wholeNumber(result.Rw)}. ${termSentence('C', result)} ${termSentence('Ctr', result)}`,
      );
    }
    case 'c50-5000':
      return termStory('C50_5000', rw(reduction));
    case 'ctr50-5000':
      return termStory('Ctr50_5000', rw(reduction));
    case 'oitc': {
      const result = oitc(reduction);
      return {
        sentences: [
          'A loud street stands above; what comes through in each A-weighted band is added as energy.',
          `The difference between both levels is ${dB(result.unrounded_dB)}, rounded ${wholeNumber(result.OITC)}.`,
        ],
        bands_Hz: result.bands_Hz,
        lines: [{ label: 'comes through', values_dB: result.transmitted_dB }],
      };
    }
    case 'iic': {
      const { IIC, fit } = iic(impact);
      const end = `110 less its value at 500 Hz, ${wholeNumber(fit.at500_dB)}, is the ${name('IIC')}: ${wholeNumber(IIC)}.`;
      return contourStory(fit, Ln!, { up: false, ...ASTM_E989 }, end);
    }
    case 'lnw': {
      const { Lnw, fit, CI } = lnw(impact);
      const end = `Its value at 500 Hz is ${name('Ln,w')}: ${wholeNumber(Lnw)}. The bands from 100 Hz to 2500 Hz add up to ${dB(CI.sum_dB)}; less 15 and less ${name('Ln,w')} that is CI: ${wholeNumber(CI.term_dB)}.`;
      return contourStory(fit, Ln!, { up: false }, end);
    }
    case 'ci50-2500': {
      const { Lnw, CI50_2500: term } = lnw(impact);
      return {
        sentences: [
          `The bands from 50 Hz to 2500 Hz add up to ${dB(term.sum_dB)}; less 15 and less ${name('Ln,w')}, ${wholeNumber(Lnw)}, that is ${wholeNumber(term.term_dB)}.`,
        ],
        bands_Hz: term.bands_Hz,
        lines: [{ label: Ln!, values_dB: valuesIn(impact, term.bands_Hz) }],
      };
    }
    default:
      return undefined;
  }
}

interface ContourRule {
  readonly up: boolean;
  readonly single_dB?: number;
  /** Absent: bands are rated to a tenth of a decibel, as they are shown everywhere. */
  readonly wholeBy?: string;
}

const ASTM_E413 = { single_dB: 8, wholeBy: 'ASTM E413' } as const;
const ASTM_E989 = { single_dB: 8, wholeBy: 'ASTM E989' } as const;

function contourStory(fit: ContourFit, symbol: string, rule: ContourRule, end: string): RatingStory {
  const { bands_Hz, values_dB, contour_dB, deficiencies_dB } = fit;
  const whole = rule.wholeBy === undefined ? {} : ({ whole: true } as const);
  const lines: StoryLine[] = [
    { label: rule.wholeBy === undefined ? symbol : `${symbol}, rounded`, values_dB, ...whole },
    { label: 'contour', values_dB: contour_dB, ...whole },
    { label: rule.up ? 'short of it' : 'above it', values_dB: deficiencies_dB, stress: true, ...whole },
  ];
  if (fit.governs === 'none')
    return { sentences: [`No rating: ${fit.missing_Hz.join(', ')} Hz missing.`], bands_Hz, lines };
  const limit = rule.single_dB === undefined ? '' : ` and no band alone over ${rule.single_dB} dB`;
  const largest = Number.isNaN(fit.largestBand_Hz)
    ? 'no band is'
    : `the largest is ${dB(fit.largest_dB)} at ${fit.largestBand_Hz} Hz, all together they are`;
  return {
    sentences: [
      ...(rule.wholeBy === undefined
        ? []
        : [`${rule.wholeBy} was written for whole decibels: ${symbol} of each band is rounded first.`]),
      `A curve of fixed shape, the contour, moves ${rule.up ? 'up' : 'down'} by whole decibels as long as what ${
        rule.up ? 'falls short of it' : 'rises above it'
      } stays within 32 dB in all${limit}.`,
      `Here ${largest} ${dB(fit.sum_dB)}; ${GOVERNS[fit.governs]}.`,
      end,
    ],
    bands_Hz,
    lines,
  };
}

const GOVERNS = {
  sum: 'one step more would break the limit of the sum',
  single: 'one step more would break the limit of a single band',
  both: 'one step more would break both limits',
} as const;

function termStory(term: 'C50_5000' | 'Ctr50_5000', result: Rw): RatingStory {
  const { bands_Hz, transmitted_dB } = result.adaptation[term];
  return {
    sentences: [
      'The source spectrum stands on the other side; what comes through is added as energy.',
      termSentence(term, result),
    ],
    bands_Hz,
    lines: [{ label: 'comes through', values_dB: transmitted_dB }],
  };
}

function termSentence(term: 'C' | 'Ctr' | 'C50_5000' | 'Ctr50_5000', { Rw, adaptation }: Rw): string {
  const { XA_dB, term_dB } = adaptation[term];
  const name = term.replace('_', '–').replace('Ctr5', 'Ctr,5');
  return `With the spectrum of ${name} the sum is ${dB(XA_dB)}: ${name} = ${wholeNumber(XA_dB)} − ${wholeNumber(Rw)} = ${wholeNumber(term_dB)}.`;
}

function valuesIn(
  spectrum: { bands_Hz: readonly number[]; values_dB: readonly number[] },
  bands_Hz: readonly number[],
) {
  return bands_Hz.map((band) => spectrum.values_dB[spectrum.bands_Hz.indexOf(band)] ?? NaN);
}

function dB(value: number): string {
  return `${decimal(value, 4, 1)} dB`;
}
