import { expect, test } from 'vitest';
import { orAborted } from '#workers/or-aborted.ts';

const never = new Promise<string>(() => {});

test('what the promise gives is given, and what it rejects with', async () => {
  const { signal } = new AbortController();
  expect(await orAborted(Promise.resolve('done'), signal)).toBe('done');
  await expect(orAborted(Promise.reject(new Error('broken')), signal)).rejects.toThrow('broken');
});

test('an abort ends the waiting with its reason, also one that came before', async () => {
  const leaving = new AbortController();
  const waiting = orAborted(never, leaving.signal);
  leaving.abort(new Error('gone'));
  await expect(waiting).rejects.toThrow('gone');
  await expect(orAborted(never, leaving.signal)).rejects.toThrow('gone');
});

test('an abort afterwards changes nothing', async () => {
  const leaving = new AbortController();
  const settled = orAborted(Promise.resolve('done'), leaving.signal);
  await settled;
  leaving.abort();
  expect(await settled).toBe('done');
});
