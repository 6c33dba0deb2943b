import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Autosave } from '#src/app/autosave.ts';
import { type History, startHistory } from '#src/notebook/history.ts';
import { refused, type StoreResult, succeeded } from '#src/store/store-result.ts';
import { practiceRoom } from '../browser/practice-room.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const titled = (title: string): History => startHistory(practiceRoom({ title }));

function autosaveWith(save: (history: History, basedOn_ms?: number) => Promise<StoreResult<number>>) {
  const saved: string[] = [];
  const basedOn: (number | undefined)[] = [];
  const problems: string[] = [];
  const autosave = new Autosave(
    {
      pause_ms: 400,
      longest_ms: 3000,
      onSaved: () => {},
      onProblem: (problem) => problems.push(problem.kind),
      save: (history, basedOn_ms) => {
        saved.push(history.present.title);
        basedOn.push(basedOn_ms);
        return save(history, basedOn_ms);
      },
    },
    1,
  );
  return { autosave, saved, basedOn, problems };
}

test('many edits in a row are one save, of the last of them', async () => {
  const { autosave, saved } = autosaveWith(async () => succeeded(2));
  for (let i = 0; i < 10; i++) {
    autosave.changed(titled(`edit ${i}`), Date.now());
    await vi.advanceTimersByTimeAsync(100);
  }
  await vi.advanceTimersByTimeAsync(400);
  expect(saved).toEqual(['edit 9']);
});

test('edits that never pause are saved all the same, after the longest wait', async () => {
  const { autosave, saved } = autosaveWith(async () => succeeded(2));
  for (let i = 0; i < 35; i++) {
    autosave.changed(titled(`edit ${i}`), Date.now());
    await vi.advanceTimersByTimeAsync(100);
  }
  expect(saved).toEqual(['edit 29']);
});

test('saves do not overlap, and each builds on the one before', async () => {
  let time = 10;
  const { autosave, saved, basedOn } = autosaveWith(async () => {
    await new Promise((done) => setTimeout(done, 1000));
    return succeeded(time++);
  });
  autosave.changed(titled('first'), Date.now());
  const first = autosave.flush();
  await vi.advanceTimersByTimeAsync(1);
  autosave.changed(titled('second'), Date.now());
  const second = autosave.flush();
  await vi.advanceTimersByTimeAsync(500);
  expect(saved).toEqual(['first']);
  await vi.advanceTimersByTimeAsync(2000);
  await Promise.all([first, second]);
  expect(saved).toEqual(['first', 'second']);
  expect(basedOn).toEqual([1, 10]);
});

test('what could not be saved stays unsaved and is tried again', async () => {
  let full = true;
  const { autosave, saved, problems } = autosaveWith(async () => (full ? refused('full', 'No room.') : succeeded(2)));
  autosave.changed(titled('kept'), Date.now());
  await autosave.flush();
  expect([problems, autosave.unsaved]).toEqual([['full'], true]);
  full = false;
  await autosave.flush();
  expect([saved, autosave.unsaved]).toEqual([['kept', 'kept'], false]);
});

test('after stopping nothing is saved any more', async () => {
  const { autosave, saved } = autosaveWith(async () => succeeded(2));
  autosave.changed(titled('late'), Date.now());
  autosave.stop();
  await vi.advanceTimersByTimeAsync(5000);
  expect(saved).toEqual([]);
});
