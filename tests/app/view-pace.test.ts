import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { viewPace } from '#src/app/view-pace.ts';

let shown: string[];
/** Lets the one who waits for a turn go on. */
let giveTurn: () => void;
let turns: number;
const pace = () =>
  viewPace(() => {
    turns += 1;
    return new Promise((resolve) => {
      giveTurn = resolve;
    });
  }, 50);
const show = (name: string) => () => {
  shown.push(name);
};

beforeEach(() => {
  shown = [];
  turns = 0;
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('what is complete is shown with the next turn', async () => {
  pace().ask(show('a'), true);
  expect(shown).toEqual([]);
  giveTurn();
  await Promise.resolve();
  expect(shown).toEqual(['a']);
});

test('what is incomplete waits for the rest, and then only the whole is shown', async () => {
  const { ask } = pace();
  ask(show('nothing'), false);
  ask(show('half'), false);
  vi.advanceTimersByTime(30);
  ask(show('all'), true);
  giveTurn();
  await vi.advanceTimersByTimeAsync(1000);
  expect(shown).toEqual(['all']);
  expect(turns).toBe(1);
});

test('patience ends, counted from the first request: a long drag shows what there is', async () => {
  const { ask } = pace();
  ask(show('nothing'), false);
  vi.advanceTimersByTime(40);
  ask(show('half'), false);
  vi.advanceTimersByTime(9);
  expect(turns).toBe(0);
  vi.advanceTimersByTime(1);
  giveTurn();
  await Promise.resolve();
  expect(shown).toEqual(['half']);
});

test('what comes while a turn is awaited is shown in its place, and once', async () => {
  const { ask } = pace();
  ask(show('old'), true);
  ask(show('new'), true);
  giveTurn();
  await Promise.resolve();
  expect(shown).toEqual(['new']);
  expect(turns).toBe(1);
});
