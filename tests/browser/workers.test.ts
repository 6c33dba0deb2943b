import { afterEach, expect, test } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { Pool } from '#workers/pool.ts';
import type { PredictApi, PredictOutcome } from '#workers/predict.api.ts';
import { spawnPredictWorker } from '#workers/predict.client.ts';
import { WorkerDeath } from '#workers/supervised.ts';
import { practiceRoom } from './practice-room.ts';

const construction = resolveStack(practiceRoom(), 'both', 'floor');

let pool: Pool<PredictApi>;
afterEach(() => pool.stop());

test('the worker gives what the engine gives, number by number', async () => {
  pool = new Pool<PredictApi>({ spawn: spawnPredictWorker, size: 1 });
  const outcome = await pool.submit<PredictOutcome>('a', (r) => r.predict(construction, {}));
  expect(outcome).toEqual({ ok: true, prediction: predict(construction) });
});

test('a construction that the engine refuses comes back as data with the reason', async () => {
  pool = new Pool<PredictApi>({ spawn: spawnPredictWorker, size: 1 });
  const outcome = await pool.submit<PredictOutcome>('a', (r) => r.predict({ ...construction, length_m: -1 }, {}));
  expect(outcome).toEqual({ ok: false, message: expect.stringContaining('length_m') });
});

test('a worker whose file cannot be loaded is a death that settles the call', async () => {
  const deaths: Error[] = [];
  pool = new Pool<PredictApi>({
    size: 1,
    onDeath: (why) => deaths.push(why),
    spawn: () => {
      const worker = new Worker('/no-such-worker.js', { type: 'module' });
      return {
        endpoint: worker,
        terminate: () => worker.terminate(),
        onDeath: (report) => worker.addEventListener('error', () => report(new Error('did not start'))),
      };
    },
  });
  await expect(pool.submit<PredictOutcome>('a', (r) => r.predict(construction, {}))).rejects.toBeInstanceOf(
    WorkerDeath,
  );
  expect(deaths).toHaveLength(2);
});
