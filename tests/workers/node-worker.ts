/** The fixture worker on a Node thread, and the calls it takes. */
import { Worker } from 'node:worker_threads';
import nodeEndpoint from 'comlink/dist/esm/node-adapter.mjs';
import type { Spawned } from '#workers/supervised.ts';

export interface CountingApi {
  count(): number;
  busy(ms: number): number;
  refuse(): void;
  exit(): void;
  crash(): void;
}

export function spawnCounting(): Spawned {
  const worker = new Worker(new URL('./counting.fixture-worker.mjs', import.meta.url));
  return {
    endpoint: nodeEndpoint(worker),
    terminate: () => void worker.terminate(),
    onDeath(report) {
      worker.on('error', report);
      worker.on('exit', (code) => report(new Error(`worker exited with code ${code}`)));
    },
  };
}
