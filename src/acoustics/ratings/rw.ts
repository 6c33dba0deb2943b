import {
  ADAPTATION_TERMS,
  type AdaptationTerm,
  REFERENCE_OCTAVE,
  REFERENCE_THIRD,
  SPECTRA_OCTAVE,
  SPECTRA_THIRD,
  SUM_MAX_OCTAVE_DB,
  SUM_MAX_THIRD_DB,
} from '../standards/iso-717-1.ts';
import { type BandTable, bandsOf, valuesOf } from '../standards/table.ts';
import { type ContourFit, fitContour } from './contour-fit.ts';
import { roundHalfUp, toTenths } from './rounding.ts';
import { type BandWidth, bandWidthOf, missingBands, type Spectrum, valuesAt } from './spectrum.ts';

export interface IsoOptions {
  /** Absent: seen from the bands. Octave bands are for field measurements only (ISO 717-1, clause 4.4). */
  readonly bandWidth?: BandWidth;
  /** 0.1 for statements of uncertainty; then the rating and the terms carry one decimal. */
  readonly step_dB?: 1 | 0.1;
}

export interface Rw {
  /** Integer (one decimal with a step of 0.1); NaN where a band is missing. */
  readonly Rw: number;
  readonly fit: ContourFit;
  readonly adaptation: Readonly<Record<AdaptationTerm, Adaptation>>;
}

export interface Adaptation {
  /** C or C_tr, dB. NaN where a band of its range is missing. */
  readonly term_dB: number;
  /** X_A = −10 lg Σ 10^((L_i − X_i)/10), unrounded, dB. */
  readonly XA_dB: number;
  readonly bands_Hz: readonly number[];
  /** L_i − X_i: what comes through in each band when the spectrum stands outside, dB. */
  readonly transmitted_dB: readonly number[];
  readonly missing_Hz: readonly number[];
}

/**
 * Weighted sound reduction index with every spectrum adaptation term that the bands allow. The same rating of D_nT is
 * D_nT,w, of R' is R'_w.
 *
 * Source: ISO 717-1:2020, clauses 4.4 and 4.5, Annex B. Band values are first rounded half up to 0.1 dB.
 * @param reduction One-third octaves from 100–3150 Hz, or octaves from 125–2000 Hz, dB; order free.
 */
export function rw(reduction: Spectrum, options: IsoOptions = {}): Rw {
  const { bandWidth = bandWidthOf(reduction.bands_Hz), step_dB = 1 } = options;
  const third = bandWidth === 'third';
  const fit = fitContour(reduction, {
    contour: third ? REFERENCE_THIRD : REFERENCE_OCTAVE,
    kind: 'insulation',
    sumMax_dB: third ? SUM_MAX_THIRD_DB : SUM_MAX_OCTAVE_DB,
    step_dB,
    toTenths,
  });
  return { Rw: fit.at500_dB, fit, adaptation: adapt(reduction, third ? THIRD : OCTAVE, fit.at500_dB, step_dB) };
}

/** A range of bands and its spectrum, made ready once. */
interface Term {
  readonly term: AdaptationTerm;
  readonly bands_Hz: readonly number[];
  readonly levels_dB: readonly number[];
  /** 10^(L/10) of the levels. */
  readonly weights: readonly number[];
  /** Place of its lowest band among all bands. */
  readonly first: number;
}

interface Terms {
  readonly bands_Hz: readonly number[];
  readonly terms: readonly Term[];
}

function ready(spectra: Readonly<Record<AdaptationTerm, BandTable>>): Terms {
  const all_Hz = bandsOf(spectra.C50_5000);
  const terms = ADAPTATION_TERMS.map((term): Term => {
    const bands_Hz = bandsOf(spectra[term]);
    const levels_dB = valuesOf(spectra[term]);
    const weights = levels_dB.map((level_dB) => 10 ** (level_dB / 10));
    return { term, bands_Hz, levels_dB, weights, first: all_Hz.indexOf(bands_Hz[0]!) };
  });
  return { bands_Hz: all_Hz, terms };
}

const THIRD = ready(SPECTRA_THIRD);
const OCTAVE = ready(SPECTRA_OCTAVE);

function adapt(reduction: Spectrum, { bands_Hz, terms }: Terms, rating_dB: number, step_dB: number): Rw['adaptation'] {
  const rounded_dB = valuesAt(reduction, bands_Hz).map((value) => toTenths(value) / 10);
  const transmissions = rounded_dB.map((value) => 10 ** (-value / 10));
  const adaptations = terms.map((t): [AdaptationTerm, Adaptation] => {
    const values = rounded_dB.slice(t.first, t.first + t.bands_Hz.length);
    const XA_dB = -10 * Math.log10(t.weights.reduce((sum, weight, i) => sum + weight * transmissions[t.first + i]!, 0));
    const adaptation = {
      term_dB: differenceInSteps_dB(XA_dB, rating_dB, step_dB),
      XA_dB,
      bands_Hz: t.bands_Hz,
      transmitted_dB: t.levels_dB.map((level_dB, i) => level_dB - values[i]!),
      missing_Hz: missingBands(t.bands_Hz, values),
    };
    return [t.term, adaptation];
  });
  return Object.fromEntries(adaptations) as Record<AdaptationTerm, Adaptation>;
}

/** The rounded single number less the rating: rounded once, half up, from full precision. */
export function differenceInSteps_dB(unrounded_dB: number, rating_dB: number, step_dB: number): number {
  const perDecibel = Math.round(1 / step_dB);
  return (roundHalfUp(unrounded_dB * perDecibel) - Math.round(rating_dB * perDecibel)) / perDecibel;
}
