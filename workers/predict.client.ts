import { spawned } from './browser-worker.ts';
import type { Spawned } from './supervised.ts';

/** Starts one prediction worker in the browser. */
export function spawnPredictWorker(): Spawned {
  return spawned(new Worker(new URL('./predict.worker.ts', import.meta.url), { type: 'module' }));
}
