import type { PathLevels, Prediction } from './prediction.ts';

/**
 * The same prediction without the bands below `lowest_Hz`; the very object where it has none. No band depends on another,
 * and no rating reads a band below 50 Hz, so that what is left is what a prediction from there on gives.
 */
export function predictionFrom(prediction: Prediction, lowest_Hz: number): Prediction {
  const skipped = prediction.bands_Hz.findIndex((band) => band >= lowest_Hz);
  if (skipped <= 0) return prediction;
  const paths = (levels: PathLevels): PathLevels =>
    Object.fromEntries(Object.entries(levels).map(([path, values]) => [path, values.slice(skipped)]));
  return {
    ...prediction,
    bands_Hz: prediction.bands_Hz.slice(skipped),
    R_dB: prediction.R_dB.slice(skipped),
    paths_dB: paths(prediction.paths_dB),
    Ln_dB: prediction.Ln_dB.slice(skipped),
    impactPaths_dB: paths(prediction.impactPaths_dB),
    mechanisms: prediction.mechanisms.slice(skipped),
    impactMechanisms: prediction.impactMechanisms.slice(skipped),
  };
}
