import { Pool, poolSize, Superseded } from '#workers/pool.ts';
import type { PredictApi, PredictOutcome } from '#workers/predict.api.ts';
import { spawnPredictWorker } from '#workers/predict.client.ts';
import type { PredictionSender } from './results.ts';

/** The results service's way to the workers. @param onDeath A worker died; the pool replaces it. */
export function predictionSender(onDeath: (why: Error) => void): PredictionSender {
  const pool = new Pool<PredictApi>({
    spawn: spawnPredictWorker,
    size: poolSize(navigator.hardwareConcurrency || 2),
    onDeath,
  });
  return {
    send: (slot, construction, lowestBand_Hz) =>
      pool.submit<PredictOutcome>(slot, (remote) => remote.predict(construction, { lowestBand_Hz })),
    drop: (slot) => pool.drop(slot),
    isSuperseded: (why) => why instanceof Superseded,
  };
}
