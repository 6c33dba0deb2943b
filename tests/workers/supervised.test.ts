import { afterEach, beforeEach, expect, test } from 'vitest';
import { Supervised, WorkerDeath } from '#workers/supervised.ts';
import { type CountingApi, spawnCounting } from './node-worker.ts';

let started: number;
let worker: Supervised<CountingApi>;

beforeEach(() => {
  started = 0;
  worker = new Supervised<CountingApi>(() => {
    started += 1;
    return spawnCounting();
  });
});
afterEach(() => worker.stop());

test('a call resolves with the result and the worker stays for the next one', async () => {
  expect(await worker.call((r) => r.count())).toBe(1);
  expect(await worker.call((r) => r.count())).toBe(2);
  expect(started).toBe(1);
});

test('an error thrown by the remote function rejects the call and leaves the worker alive', async () => {
  await expect(worker.call((r) => r.refuse())).rejects.toThrow('thickness_m must be > 0, got -1');
  await worker.call((r) => r.count());
  expect(started).toBe(1);
});

test.each(['exit', 'crash'] as const)('a call rejects with WorkerDeath when the worker ends by %s', async (how) => {
  await expect(worker.call((r) => r[how]())).rejects.toBeInstanceOf(WorkerDeath);
  expect(await worker.call((r) => r.count())).toBe(1);
  expect(started).toBe(2);
});

test('an abort ends a busy worker at once, with the reason of the signal', async () => {
  const controller = new AbortController();
  const call = worker.call((r) => r.busy(60_000), controller.signal);
  controller.abort(new Error('no longer wanted'));
  await expect(call).rejects.toThrow('no longer wanted');
  expect(await worker.call((r) => r.count())).toBe(1);
});

test('a signal that is aborted after its call has settled leaves the worker alone', async () => {
  const controller = new AbortController();
  await worker.call((r) => r.count(), controller.signal);
  controller.abort();
  expect(await worker.call((r) => r.count())).toBe(2);
});

test('a call with an aborted signal starts no worker', async () => {
  await expect(worker.call((r) => r.count(), AbortSignal.abort())).rejects.toThrow('aborted');
  expect(started).toBe(0);
});

test('a second call beside a running one is refused', async () => {
  const first = worker.call((r) => r.busy(50));
  await expect(worker.call((r) => r.count())).rejects.toThrow('one call at a time');
  expect(await first).toBe(1);
});

test('a worker that cannot be started is a death, not a hang', async () => {
  const broken = new Supervised<CountingApi>(() => {
    throw new Error('blocked by policy');
  });
  await expect(broken.call((r) => r.count())).rejects.toThrow('the worker did not start: blocked by policy');
  expect(broken.busy).toBe(false);
});
