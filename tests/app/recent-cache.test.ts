import { expect, test } from 'vitest';
import { RecentCache } from '#src/app/recent-cache.ts';

test('the entry that was not used for longest makes room', () => {
  const cache = new RecentCache<number>(2);
  cache.set('a', 1);
  cache.set('b', 2);
  cache.get('a');
  cache.set('c', 3);
  expect([cache.get('a'), cache.get('b'), cache.get('c')]).toEqual([1, undefined, 3]);
});

test('writing a key again does not make room for more than the limit', () => {
  const cache = new RecentCache<number>(2);
  for (let i = 0; i < 10; i++) cache.set('a', i);
  cache.set('b', 1);
  expect([cache.get('a'), cache.get('b')]).toEqual([9, 1]);
});
