/**
 * ISO 12999-1:2020, measurement uncertainties of airborne insulation (table 2) and of single numbers; coverage factors.
 * From memory, unverified.
 */
import { type BandTable, thirdOctaves } from './table.ts';

/**
 * A: another laboratory, another specimen of the same kind (reproducibility); B: another team in the same building; C: the
 * same team and set-up again (repeatability).
 */
export type MeasurementSituation = 'A' | 'B' | 'C';

/** Standard uncertainty of R, R' or D_nT in one-third octaves 50–5000 Hz, dB. */
// biome-ignore format: table
export const AIRBORNE_UNCERTAINTY: Readonly<Record<MeasurementSituation, BandTable>> = {
  A: thirdOctaves(50, [
    6.8, 4.6, 3.8, 3, 2.7, 2.4, 2.1, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.9, 2, 2.4, 2.8,
  ]),
  B: thirdOctaves(50, [
    4, 3.6, 3.2, 2.8, 2.4, 2, 1.8, 1.6, 1.4, 1.2, 1.1, 1, 1, 1, 1, 1, 1, 1.3, 1.6, 1.9, 2.2,
  ]),
  C: thirdOctaves(50, [
    2, 1.8, 1.6, 1.4, 1.2, 1, 0.9, 0.8, 0.7, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6,
  ]),
};

/** Standard uncertainty of the single numbers, dB. */
export const SINGLE_NUMBER_UNCERTAINTY_DB = {
  Rw: { A: 1.2, B: 0.9, C: 0.4 },
  Lnw: { A: 1.5, B: 1, C: 0.5 },
} as const satisfies Record<string, Record<MeasurementSituation, number>>;

/** Coverage factors k of a normal distribution, clause 8: two-sided for "between", one-sided for "at least". */
export const COVERAGE_FACTORS = [
  { factor: 1, twoSided: 0.68, oneSided: 0.84 },
  { factor: 1.28, twoSided: 0.8, oneSided: 0.9 },
  { factor: 1.65, twoSided: 0.9, oneSided: 0.95 },
  { factor: 1.96, twoSided: 0.95, oneSided: 0.975 },
  { factor: 2.58, twoSided: 0.99, oneSided: 0.995 },
  { factor: 3.29, twoSided: 0.999, oneSided: 0.9995 },
] as const;
