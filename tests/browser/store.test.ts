import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import { record, startHistory, undo } from '#src/notebook/history.ts';
import { browserKeyValues } from '#src/store/key-values.ts';
import { type ClaimState, claimNotebook } from '#src/store/notebook-claim.ts';
import { openNotebookStore } from '#src/store/open-store.ts';
import { type StoreNotice, storeNotices } from '#src/store/store-notices.ts';
import type { StoreResult } from '#src/store/store-result.ts';
import { smallNotebook } from '../notebook/small-notebook.ts';

let number = 0;
let database: string;
beforeEach(() => {
  database = `store-test-${Date.now()}-${number++}`;
});
afterEach(() => {
  indexedDB.deleteDatabase(database);
});

function value<T>(result: StoreResult<T>): T {
  if (!result.ok) throw new Error(`${result.problem.kind}: ${result.problem.message}`);
  return result.value;
}

const named = (id: string, title = id) => ({ ...smallNotebook(), id, title });

test('what one page stored, another opening of the same storage finds, undo included', async () => {
  const start = startHistory(named('a', 'before'));
  value(await openNotebookStore({ database }).save(record(start, setTitle(start.present, 'after'), 'title')));
  const { history } = value(await openNotebookStore({ database }).load('a'));
  expect(history.present).toEqual(named('a', 'after'));
  expect(undo(history).present).toEqual(named('a', 'before'));
});

test('two tabs that save different notebooks at the same time lose neither', async () => {
  const [one, two] = [openNotebookStore({ database }), openNotebookStore({ database })];
  const ids = Array.from({ length: 10 }, (_, i) => [`one${i}`, `two${i}`] as const);
  await Promise.all(ids.flatMap(([a, b]) => [one.add(named(a)), two.add(named(b))]));
  const listed = value(await one.list()).map((e) => e.id);
  expect(listed.toSorted()).toEqual(ids.flat().toSorted());
});

test('two tabs that save the same notebook: the second learns of the conflict', async () => {
  const [one, two] = [openNotebookStore({ database }), openNotebookStore({ database })];
  const loaded_ms = value(await one.add(named('a', 'start')));
  const [first, second] = await Promise.all([
    one.save(startHistory(named('a', 'from one')), loaded_ms),
    two.save(startHistory(named('a', 'from two')), loaded_ms),
  ]);
  expect([first.ok, second.ok].toSorted()).toEqual([false, true]);
  const kept = first.ok ? 'from one' : 'from two';
  expect(value(await one.load('a')).history.present.title).toBe(kept);
});

describe('keys and values', () => {
  test('an update in which one value cannot be stored leaves every other as it was', async () => {
    const values = browserKeyValues(database);
    await values.update(['a', 'b'], () => [1, 2]);
    await expect(values.update(['a', 'b'], () => [3, () => 'not storable'])).rejects.toThrow();
    expect(await values.read(['a', 'b'])).toEqual([1, 2]);
  });

  test('an update that throws changes nothing', async () => {
    const values = browserKeyValues(database);
    await values.update(['a'], () => [1]);
    const refuse = () => {
      throw new Error('refused');
    };
    await expect(values.update(['a'], refuse)).rejects.toThrow('refused');
    expect(await values.read(['a'])).toEqual([1]);
  });

  test('twenty increments at once make twenty', async () => {
    const values = browserKeyValues(database);
    const increment = () => values.update(['n'], ([n]) => [((n as number | undefined) ?? 0) + 1]);
    await Promise.all(Array.from({ length: 20 }, increment));
    expect(await values.read(['n'])).toEqual([20]);
  });

  test('undefined takes a key out', async () => {
    const values = browserKeyValues(database);
    await values.update(['a', 'b'], () => [1, 2]);
    await values.update(['a'], () => [undefined]);
    expect(await values.keys()).toEqual(['b']);
  });

  test('a connection that the browser closed is opened once more', async () => {
    const values = browserKeyValues(database);
    await values.update(['a'], () => [1]);
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
    transaction.mockImplementationOnce(() => {
      throw new DOMException('The database connection is closing.', 'InvalidStateError');
    });
    expect(await values.read(['a'])).toEqual([1]);
  });
});

test('a browser without storage is a problem, not a crash', async () => {
  vi.spyOn(indexedDB, 'open').mockImplementation(() => {
    throw new DOMException('denied', 'SecurityError');
  });
  expect(await openNotebookStore({ database }).list()).toMatchObject({ ok: false, problem: { kind: 'unavailable' } });
});

describe('one tab writes', () => {
  const silent = () => {};

  test('the first claim holds, the second waits and gets its turn when the first lets go', async () => {
    const heard: ClaimState[] = [];
    const first = await claimNotebook(database, silent);
    const second = await claimNotebook(database, (state) => heard.push(state));
    expect([first.state, second.state]).toEqual(['held', 'waiting']);
    await first.release();
    await vi.waitFor(() => expect(heard).toEqual(['held']));
    expect(first.state).toBe('lost');
    await second.release();
  });

  test('taking over tells the first that it lost its claim', async () => {
    const heard: string[] = [];
    const first = await claimNotebook(database, (state) => heard.push(`first ${state}`));
    const second = await claimNotebook(database, (state) => heard.push(`second ${state}`));
    second.takeOver();
    await vi.waitFor(() => expect(heard.toSorted()).toEqual(['first lost', 'second held']));
    first.takeOver();
    await vi.waitFor(() => expect([first.state, second.state]).toEqual(['held', 'lost']));
    await first.release();
  });

  test('different notebooks do not wait for each other', async () => {
    const claims = [await claimNotebook(`${database}-a`, silent), await claimNotebook(`${database}-b`, silent)];
    expect(claims.map((c) => c.state)).toEqual(['held', 'held']);
    await Promise.all(claims.map((claim) => claim.release()));
  });

  test('one that gave up waiting never gets the notebook', async () => {
    const heard: ClaimState[] = [];
    const first = await claimNotebook(database, silent);
    const second = await claimNotebook(database, (state) => heard.push(state));
    await second.release();
    await first.release();
    const third = await claimNotebook(database, silent);
    expect(third.state).toBe('held');
    expect(heard).toEqual([]);
    await third.release();
  });

  test('without a lock manager every tab holds its claim', async () => {
    const claim = await claimNotebook(database, silent, null);
    expect(claim.state).toBe('held');
    claim.takeOver();
    await claim.release();
  });

  test('a browser that refuses locks as it refuses storage leaves every tab its claim', async () => {
    const heard: ClaimState[] = [];
    const refusing = { request: () => Promise.reject(new DOMException('denied', 'SecurityError')) };
    const claim = await claimNotebook(database, (state) => heard.push(state), refusing);
    expect(claim.state).toBe('held');
    claim.takeOver();
    await claim.release();
    expect(heard).toEqual([]);
  });
});

test('tabs hear of each other, not of themselves, and not of what they do not understand', async () => {
  const heard: [string, StoreNotice][] = [];
  const one = storeNotices((notice) => heard.push(['one', notice]), database);
  const two = storeNotices((notice) => heard.push(['two', notice]), database);
  const stranger = new BroadcastChannel(database);
  stranger.postMessage({ kind: 'dance', id: 'a' });
  stranger.postMessage(null);
  one.tell({ kind: 'saved', id: 'a', savedAt_ms: 3 });
  await vi.waitFor(() => expect(heard).toEqual([['two', { kind: 'saved', id: 'a', savedAt_ms: 3 }]]));
  for (const channel of [one, two, stranger]) channel.close();
});
