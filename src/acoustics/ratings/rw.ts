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
import { type BandTable, bandsOf } from '../standards/table.ts';
import { type ContourFit, fitContour } from './contour-fit.ts';
import { energySum_dB } from './energy.ts';
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
  const spectra = third ? SPECTRA_THIRD : SPECTRA_OCTAVE;
  const adaptation = Object.fromEntries(
    ADAPTATION_TERMS.map((term) => [term, adapt(reduction, spectra[term], fit.at500_dB, step_dB)]),
  ) as Record<AdaptationTerm, Adaptation>;
  return { Rw: fit.at500_dB, fit, adaptation };
}

function adapt(reduction: Spectrum, spectrum: BandTable, rating_dB: number, step_dB: number): Adaptation {
  const bands_Hz = bandsOf(spectrum);
  const values = valuesAt(reduction, bands_Hz);
  const transmitted_dB = spectrum.map(([, level_dB], i) => level_dB - toTenths(values[i]!) / 10);
  const XA_dB = -energySum_dB(transmitted_dB);
  return {
    term_dB: differenceInSteps_dB(XA_dB, rating_dB, step_dB),
    XA_dB,
    bands_Hz,
    transmitted_dB,
    missing_Hz: missingBands(bands_Hz, values),
  };
}

/** The rounded single number less the rating: rounded once, half up, from full precision. */
export function differenceInSteps_dB(unrounded_dB: number, rating_dB: number, step_dB: number): number {
  const perDecibel = Math.round(1 / step_dB);
  return (roundHalfUp(unrounded_dB * perDecibel) - Math.round(rating_dB * perDecibel)) / perDecibel;
}
