/** Predictions without what goes around by the walls: what a laboratory would find. */
import type { PathLevels, Prediction } from '#src/acoustics/prediction.ts';
import { energySum_dB } from '#src/acoustics/ratings/energy.ts';
import { rateBands } from '#src/acoustics/ratings/rate-bands.ts';
import type { Result } from '../contract.ts';

/** Many numbers of a page ask for the same one, and again with every frame of a drag. */
const known = new WeakMap<Prediction, Prediction>();

/** The floor with its gaps but without its walls, rated anew; the very prediction where the walls carry nothing. */
export function floorAlone(prediction: Prediction): Prediction {
  const alone = known.get(prediction) ?? computedAlone(prediction);
  known.set(prediction, alone);
  return alone;
}

function computedAlone(prediction: Prediction): Prediction {
  const { bands_Hz } = prediction;
  const [airborne, R_dB] = withoutWalls(prediction.paths_dB, prediction.R_dB, -1);
  const [impact, Ln_dB] = withoutWalls(prediction.impactPaths_dB, prediction.Ln_dB, 1);
  if (R_dB === prediction.R_dB && Ln_dB === prediction.Ln_dB) return prediction;
  return {
    ...prediction,
    R_dB,
    paths_dB: airborne,
    Ln_dB,
    impactPaths_dB: impact,
    ratings: rateBands({ bands_Hz, R_dB, Ln_dB }),
  };
}

export function ofFloorAlone(result: Result): Result {
  return result.prediction ? { ...result, prediction: floorAlone(result.prediction) } : result;
}

/** @param sign 1 for levels, −1 for losses: energies add up, and more of them is a lower loss. */
function withoutWalls(
  { flanking, ...others }: PathLevels,
  all_dB: readonly number[],
  sign: 1 | -1,
): [PathLevels, readonly number[]] {
  if (!flanking) return [others, all_dB];
  const ways = Object.values(others);
  const sum = (band: number) => sign * energySum_dB(ways.map((way) => sign * way[band]!));
  // A transmission loss is never below 0 dB, whatever the paths add up to.
  return [others, all_dB.map((_, band) => (sign < 0 ? Math.max(0, sum(band)) : sum(band)))];
}
