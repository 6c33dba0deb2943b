import { MODEL_RESIDUAL_RMS } from './model-residuals.ts';
import { airborneUncertainty_dB, combinedUncertainty_dB, coverageFactor } from './ratings/uncertainty.ts';
import { exactBandOf, thirdsOf } from './standards/iec-61260.ts';

export interface BandUncertainty {
  /** One standard deviation, dB, per band. */
  readonly standard_dB: readonly number[];
  /** Half width of the range that holds the chosen share of results, dB, per band. */
  readonly expanded_dB: readonly number[];
  readonly coverageFactor: number;
}

export interface Coverage {
  /** Share of results that the range holds: 0.68, 0.8, 0.9, 0.95, 0.99 or 0.999 two-sided. Absent: 0.95. */
  readonly confidence?: number;
  readonly sides?: 'twoSided' | 'oneSided';
}

/**
 * How far a laboratory's transmission loss may lie from the prediction, band by band: the reproducibility of measurements
 * (ISO 12999-1, situation A) and the model's own residuals together, as independent. The residuals hold the scatter
 * of the laboratories behind them too, so this errs on the wide side.
 *
 * @param bands_Hz Nominal one-third octaves; NaN outside 50–5000 Hz, where ISO 12999-1 ends.
 * @throws RangeError for a confidence that ISO 12999-1 does not reach.
 */
export function predictionUncertainty(bands_Hz: readonly number[], coverage: Coverage = {}): BandUncertainty {
  const factor = coverageFactor(coverage.confidence ?? 0.95, coverage.sides ?? 'twoSided');
  const measured_dB = airborneUncertainty_dB(bands_Hz, 'A');
  const standard_dB = bands_Hz.map((band_Hz, i) => combinedUncertainty_dB(measured_dB[i]!, modelResidual_dB(band_Hz)));
  return { standard_dB, expanded_dB: standard_dB.map((u) => factor * u), coverageFactor: factor };
}

/** The lowest band that a measured row reaches, Hz: below it the model's error is borrowed, and nothing says how large it is. */
export const LOWEST_MEASURED_BAND_HZ = thirdsOf(Math.min(...MODEL_RESIDUAL_RMS.map(([octave_Hz]) => octave_Hz)))[0];

/** Rms error of the model in the octave that holds the band; beyond the measured octaves that of the nearest one. */
export function modelResidual_dB(band_Hz: number): number {
  const { middle_Hz } = exactBandOf(band_Hz);
  const distance = (octave_Hz: number) => Math.abs(Math.log2(exactBandOf(octave_Hz, 'octave').middle_Hz / middle_Hz));
  return MODEL_RESIDUAL_RMS.reduce((best, row) => (distance(row[0]) < distance(best[0]) ? row : best))[1];
}
