import type { Spawned } from './supervised.ts';

/** Starts one prediction worker in the browser. */
export function spawnPredictWorker(): Spawned {
  const worker = new Worker(new URL('./predict.worker.ts', import.meta.url), { type: 'module' });
  return {
    endpoint: worker,
    terminate: () => worker.terminate(),
    onDeath(report) {
      worker.addEventListener('error', (event) => report(new Error(event.message || 'the worker did not start')));
      worker.addEventListener('messageerror', () => report(new Error('the worker sent what cannot be read')));
    },
  };
}
