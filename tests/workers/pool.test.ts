import { afterEach, expect, test } from 'vitest';
import { Pool, poolSize, Superseded } from '#workers/pool.ts';
import { WorkerDeath } from '#workers/supervised.ts';
import { type CountingApi, spawnCounting } from './node-worker.ts';

let pool: Pool<CountingApi> | undefined;
afterEach(() => pool?.stop());

function poolOf(size: number, limit_ms = 20_000) {
  const deaths: string[] = [];
  let started = 0;
  pool = new Pool<CountingApi>({
    size,
    limit_ms,
    onDeath: (why) => deaths.push(why.message),
    spawn: () => {
      started += 1;
      return spawnCounting();
    },
  });
  return { pool, deaths, started: () => started };
}

test('the pool has two workers at least, leaves one core of many to the page and never grows beyond four', () => {
  expect([1, 2, 3, 5, 64].map(poolSize)).toEqual([2, 2, 2, 4, 4]);
});

test('workers start when they are needed, not before', async () => {
  const { pool, started } = poolOf(3);
  expect(started()).toBe(0);
  await pool.submit('a', (r) => r.count());
  expect(started()).toBe(1);
});

test('of many requests in one slot only the first and the last are sent, and the last one wins', async () => {
  const { pool } = poolOf(2);
  let sent = 0;
  const requests = Array.from({ length: 50 }, (_, i) =>
    pool
      .submit('slab', async (r) => {
        sent += 1;
        await r.busy(5);
        return i;
      })
      .catch((why: unknown) => why),
  );
  const outcomes = await Promise.all(requests);
  expect(sent).toBe(2);
  expect(outcomes[0]).toBe(0);
  expect(outcomes.at(-1)).toBe(49);
  expect(outcomes.slice(1, -1).every((o) => o instanceof Superseded)).toBe(true);
});

test('one slot never has two calls in flight, however many workers are idle', async () => {
  const { pool, started } = poolOf(4);
  await Promise.all([pool.submit('slab', (r) => r.busy(20)), pool.submit('slab', (r) => r.busy(1))]);
  expect(started()).toBe(1);
});

test('slots take turns: a slot that asks again and again does not starve the others', async () => {
  const { pool } = poolOf(1);
  const order: string[] = [];
  const ask = (slot: string) =>
    pool
      .submit(slot, (r) => r.busy(5))
      .then(
        () => order.push(slot),
        () => {},
      );
  const all = [ask('a'), ask('b'), ask('c'), ask('a'), ask('a')];
  await Promise.all(all);
  expect(order).toEqual(['a', 'b', 'c', 'a']);
});

test('a request that was taken back before it was sent rejects and computes nothing', async () => {
  const { pool } = poolOf(1);
  const running = pool.submit('a', (r) => r.busy(20));
  const waiting = pool.submit('b', (r) => r.count());
  pool.drop('b');
  await expect(waiting).rejects.toBeInstanceOf(Superseded);
  expect(await running).toBe(1);
});

test('a job whose worker dies is sent once more to a fresh worker, and the death is reported', async () => {
  const { pool, deaths, started } = poolOf(1);
  let tries = 0;
  const value = await pool.submit('a', (r) => {
    tries += 1;
    return tries === 1 ? (r.exit() as unknown as Promise<number>) : r.count();
  });
  expect(value).toBe(1);
  expect(started()).toBe(2);
  expect(deaths).toEqual(['worker exited with code 3']);
});

test('a job that brings down two workers is given up, and the queue goes on', async () => {
  const { pool, deaths } = poolOf(1);
  const bad = pool.submit('bad', (r) => r.exit()).catch((why: unknown) => why);
  const good = pool.submit('good', (r) => r.count());
  expect(await good).toBe(1);
  expect(await bad).toBeInstanceOf(WorkerDeath);
  expect(deaths).toHaveLength(2);
});

test('a call that does not come back within the limit ends its worker and is reported', async () => {
  const { pool, deaths } = poolOf(1, 1000);
  let tries = 0;
  const value = await pool.submit('a', (r) => {
    tries += 1;
    return tries === 1 ? r.busy(60_000) : r.count();
  });
  expect(value).toBe(1);
  expect(deaths).toEqual(['no answer within 1 s']);
});

test('a refusal by the kernel is no death', async () => {
  const { pool, deaths } = poolOf(1);
  await expect(pool.submit('a', (r) => r.refuse())).rejects.toThrow('thickness_m');
  expect(deaths).toEqual([]);
});

test('stopping settles every request, sent or waiting', async () => {
  const { pool } = poolOf(1);
  const all = ['a', 'b', 'c'].map((slot) => pool.submit(slot, (r) => r.busy(60_000)));
  const settled = Promise.allSettled(all);
  pool.stop();
  expect((await settled).map((s) => s.status)).toEqual(['rejected', 'rejected', 'rejected']);
});
