import { expect, test } from 'vitest';
import { numbersOfSameTitles } from '#src/app/same-titles.ts';
import type { ShelfEntry } from '#src/store/shelf.ts';

const entry = (id: string, title: string, addedAt_ms: number): ShelfEntry => ({
  id,
  title,
  addedAt_ms,
  savedAt_ms: 10_000 - addedAt_ms,
  exportedAt_ms: null,
});

test('titles that are there once have no number', () => {
  expect(numbersOfSameTitles([]).size).toBe(0);
  expect(numbersOfSameTitles([entry('a', 'Floor', 1), entry('b', 'Floor 2', 2)]).size).toBe(0);
});

test('those of one title are counted as they came, whatever order the list has, and a later one changes no number', () => {
  const three = [entry('c', 'Floor', 3), entry('x', 'Other', 2), entry('a', 'Floor', 1)];
  expect([...numbersOfSameTitles(three)]).toEqual([
    ['a', 1],
    ['c', 2],
  ]);
  const more = numbersOfSameTitles([...three, entry('d', 'Floor', 4), entry('e', '', 5), entry('f', '', 6)]);
  expect(Object.fromEntries(more)).toEqual({ a: 1, c: 2, d: 3, e: 1, f: 2 });
});
