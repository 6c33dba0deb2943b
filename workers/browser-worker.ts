import type { Spawned } from './supervised.ts';

/** A browser's worker as the pool and its like know one. */
export function spawned(worker: Worker): Spawned {
  return {
    endpoint: worker,
    terminate: () => worker.terminate(),
    onDeath(report) {
      worker.addEventListener('error', (event) => report(new Error(event.message || 'the worker did not start')));
      worker.addEventListener('messageerror', () => report(new Error('the worker sent what cannot be read')));
    },
  };
}
