/** How the sound of every band splits into paths, from the levels of each path as if it were alone. */
import type { PathLevels, Prediction, Sound } from '#src/acoustics/prediction.ts';
import { PATH_NAMES } from '#src/charts/path-marks.ts';
import type { PathShares } from '#src/charts/share-data.ts';

/** Paths that exist, in a fixed order, each with its share of the energy per band, 0–1; NaN where a path is unknown. */
export function pathShares(prediction: Prediction, sound: Sound): readonly PathShares[] {
  const levels: PathLevels = sound === 'impact' ? prediction.impactPaths_dB : prediction.paths_dB;
  // A transmission loss falls with the energy, a level rises with it.
  const sign = sound === 'impact' ? 1 : -1;
  const present = PATH_NAMES.flatMap((path) => {
    const values_dB = levels[path];
    return values_dB ? [{ path, values_dB }] : [];
  });
  const strongest = prediction.bands_Hz.map((_, i) => Math.max(...present.map((p) => sign * p.values_dB[i]!)));
  const energies = present.map(({ path, values_dB }) => ({
    path,
    // Relative to the strongest path, so that nothing overflows or vanishes.
    energy: values_dB.map((v, i) => 10 ** ((sign * v - strongest[i]!) / 10)),
  }));
  const totals = prediction.bands_Hz.map((_, i) => energies.reduce((sum, { energy }) => sum + energy[i]!, 0));
  return energies.map(({ path, energy }) => ({ path, shares: energy.map((e, i) => e / totals[i]!) }));
}
