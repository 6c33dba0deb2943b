import { OCTAVES_HZ, THIRD_OCTAVES_HZ } from '../standards/iec-61260.ts';
import {
  CI_CONSTANT_DB,
  CI_RANGE_OCTAVE_HZ,
  CI_RANGE_THIRD_HZ,
  OCTAVE_REDUCTION_DB,
  REFERENCE_OCTAVE,
  REFERENCE_THIRD,
  SUM_MAX_OCTAVE_DB,
  SUM_MAX_THIRD_DB,
} from '../standards/iso-717-2.ts';
import { type ContourFit, fitContour } from './contour-fit.ts';
import { energySum_dB } from './energy.ts';
import { toTenths } from './rounding.ts';
import { differenceInSteps_dB, type IsoOptions } from './rw.ts';
import { bandWidthOf, missingBands, type Spectrum, valuesAt } from './spectrum.ts';

export interface Lnw {
  /** Integer (one decimal with a step of 0.1); NaN where a band is missing. */
  readonly Lnw: number;
  readonly fit: ContourFit;
  readonly CI: ImpactAdaptation;
  readonly CI50_2500: ImpactAdaptation;
}

export interface ImpactAdaptation {
  /** C_I, dB. NaN where a band of its range is missing. */
  readonly term_dB: number;
  /** L_n,sum = 10 lg Σ 10^(L_i/10), unrounded, dB. */
  readonly sum_dB: number;
  readonly bands_Hz: readonly number[];
  readonly missing_Hz: readonly number[];
}

/**
 * Weighted normalised impact sound pressure level with its adaptation terms. The same rating of L'_nT is L'_nT,w.
 *
 * Source: ISO 717-2:2020, clause 4.3 and Annex A. Band values are first rounded half up to 0.1 dB.
 * @param impactLevel One-third octaves from 100–3150 Hz, or octaves from 125–2000 Hz, dB; order free.
 */
export function lnw(impactLevel: Spectrum, options: IsoOptions = {}): Lnw {
  const { bandWidth = bandWidthOf(impactLevel.bands_Hz), step_dB = 1 } = options;
  const third = bandWidth === 'third';
  const fit = fitContour(impactLevel, {
    contour: third ? REFERENCE_THIRD : REFERENCE_OCTAVE,
    kind: 'level',
    sumMax_dB: third ? SUM_MAX_THIRD_DB : SUM_MAX_OCTAVE_DB,
    step_dB,
    toTenths,
  });
  const rating_dB = third ? fit.at500_dB : fit.at500_dB - OCTAVE_REDUCTION_DB;
  const ranges = third ? CI_RANGE_THIRD_HZ : CI_RANGE_OCTAVE_HZ;
  const allBands_Hz = third ? THIRD_OCTAVES_HZ : OCTAVES_HZ;
  const adapt = ([lowest_Hz, highest_Hz]: readonly [number, number]): ImpactAdaptation => {
    const bands_Hz = allBands_Hz.filter((f) => f >= lowest_Hz && f <= highest_Hz);
    const values = valuesAt(impactLevel, bands_Hz);
    const sum_dB = energySum_dB(values.map((v) => toTenths(v) / 10));
    const term_dB = differenceInSteps_dB(sum_dB - CI_CONSTANT_DB, rating_dB, step_dB);
    return { term_dB, sum_dB, bands_Hz, missing_Hz: missingBands(bands_Hz, values) };
  };
  return { Lnw: rating_dB, fit, CI: adapt(ranges.CI), CI50_2500: adapt(ranges.CI50_2500) };
}
