import { spawned } from './browser-worker.ts';
import type { Spawned } from './supervised.ts';

/** Starts the worker that studies numbers, in the browser. */
export function spawnStudyWorker(): Spawned {
  return spawned(new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module' }));
}
