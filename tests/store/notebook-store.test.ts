import { describe, expect, test } from 'vitest';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import { type History, record, startHistory, undo } from '#src/notebook/history.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { type NotebookStore, notebookStore } from '#src/store/notebook-store.ts';
import type { StoreResult } from '#src/store/store-result.ts';
import { smallNotebook } from '../notebook/small-notebook.ts';
import { failingKeyValues, memoryKeyValues } from './memory-key-values.ts';

function value<T>(result: StoreResult<T>): T {
  if (!result.ok) throw new Error(`${result.problem.kind}: ${result.problem.message}`);
  return result.value;
}

const notebook = (id: string, title = id): Notebook => ({ ...smallNotebook(), id, title });
const retitled = (history: History, title: string) => record(history, setTitle(history.present, title), 'title');

function fresh() {
  const entries = new Map<string, unknown>();
  let time_ms = 1000;
  const store = notebookStore(memoryKeyValues(entries), () => time_ms++);
  return { entries, store };
}

const ids = async (store: NotebookStore) => value(await store.list()).map((e) => e.id);

test('an empty store has nothing to list and nothing that was open', async () => {
  const { store } = fresh();
  expect(value(await store.list())).toEqual([]);
  expect(value(await store.lastOpened())).toBeNull();
  expect(await store.load('x')).toMatchObject({ ok: false, problem: { kind: 'missing' } });
});

test('a saved notebook comes back with its steps of undo', async () => {
  const { store } = fresh();
  const history = retitled(startHistory(notebook('a')), 'later');
  const savedAt_ms = value(await store.save(history));
  const stored = value(await store.load('a'));
  expect(stored).toMatchObject({ savedAt_ms, exportedAt_ms: null });
  expect(stored.history.present).toEqual(history.present);
  expect(undo(stored.history).present).toEqual(notebook('a'));
});

test('a notebook stored before scenarios had marks comes back with those it was drawn with', async () => {
  const { entries, store } = fresh();
  value(await store.save(retitled(startHistory(notebook('a')), 'later')));
  const text = JSON.stringify(entries.get('notebook:a'));
  const old = text.replaceAll('"format":"slab-and-spring","version":2', '"format":"slab-and-spring","version":1');
  expect(old).not.toBe(text);
  entries.set('notebook:a', JSON.parse(old.replaceAll(/"mark":\d+,/g, '')));
  const { history } = value(await store.load('a'));
  expect(history.present).toEqual({ ...notebook('a'), title: 'later' });
  expect(undo(history).present).toEqual(notebook('a'));
});

test('only the nearest steps are stored', async () => {
  const { store } = fresh();
  let history = startHistory(notebook('a'));
  for (let i = 0; i < 60; i++) history = retitled(history, `title ${i}`);
  value(await store.save(history));
  expect(value(await store.load('a')).history.past).toHaveLength(20);
});

test('when a notebook came here is kept through every save, export, deletion and a list made anew', async () => {
  const { entries, store } = fresh();
  const addedAt_ms = value(await store.add(notebook('a')));
  const noted = async () => value(await store.list()).map((e) => e.addedAt_ms);
  value(await store.save(retitled(startHistory(notebook('a')), 'later')));
  value(await store.markExported('a'));
  expect(await noted()).toEqual([addedAt_ms]);
  value(await store.remove('a'));
  value(await store.restore('a'));
  expect(await noted()).toEqual([addedAt_ms]);
  entries.set('shelf', 'damaged');
  expect(await noted()).toEqual([addedAt_ms]);
});

test('for a notebook from before that was noted it is the time of its last save then, and stays that', async () => {
  const { entries, store } = fresh();
  const savedAt_ms = value(await store.add(notebook('a')));
  const without = (stored: unknown) =>
    JSON.parse(JSON.stringify(stored), (key, held) => (key === 'addedAt_ms' ? undefined : held)) as unknown;
  for (const key of ['shelf', 'notebook:a']) entries.set(key, without(entries.get(key)));
  const [entry] = value(await store.list());
  expect(entry).toMatchObject({ addedAt_ms: savedAt_ms, savedAt_ms });
  value(await store.save(retitled(startHistory(notebook('a')), 'later')));
  value(await store.save(retitled(startHistory(notebook('a')), 'later still')));
  const [later] = value(await store.list());
  expect(later!.addedAt_ms).toBe(savedAt_ms);
  expect(later!.savedAt_ms).toBeGreaterThan(savedAt_ms);
});

test('the list shows the latest saved first, with its title and when it was saved to a file', async () => {
  const { store } = fresh();
  for (const id of ['a', 'b', 'c']) value(await store.add(notebook(id)));
  value(await store.save(retitled(startHistory(notebook('a')), 'A!')));
  value(await store.markExported('b'));
  expect(value(await store.list())).toMatchObject([
    { id: 'a', title: 'A!', exportedAt_ms: null },
    { id: 'c', exportedAt_ms: null },
    { id: 'b', exportedAt_ms: expect.any(Number) },
  ]);
  value(await store.save(startHistory(notebook('b'))));
  expect(value(await store.load('b')).exportedAt_ms).toEqual(expect.any(Number));
});

test('a notebook that is added never replaces one that is there', async () => {
  const { store } = fresh();
  value(await store.add(notebook('a', 'mine')));
  expect(await store.add(notebook('a', 'a stranger'))).toMatchObject({ ok: false, problem: { kind: 'exists' } });
  expect(value(await store.load('a')).history.present.title).toBe('mine');
});

test('a save that knows nothing of a later one by somebody else is a conflict and overwrites nothing', async () => {
  const { store } = fresh();
  const first_ms = value(await store.add(notebook('a', 'start')));
  const second_ms = value(await store.save(startHistory(notebook('a', 'by the other tab')), first_ms));
  const late = await store.save(startHistory(notebook('a', 'late')), first_ms);
  expect(late).toMatchObject({ ok: false, problem: { kind: 'conflict' } });
  expect(value(await store.load('a')).history.present.title).toBe('by the other tab');
  expect(value(await store.save(startHistory(notebook('a', 'informed')), second_ms))).toBeGreaterThan(second_ms);
});

test('two saves within one tick of the clock still get times of their own', async () => {
  const store = notebookStore(memoryKeyValues(), () => 5);
  const first_ms = value(await store.add(notebook('a')));
  expect(value(await store.save(startHistory(notebook('a'))))).toBeGreaterThan(first_ms);
});

test('twenty notebooks saved at once are all listed', async () => {
  const { store } = fresh();
  const names = Array.from({ length: 20 }, (_, i) => `n${i}`);
  await Promise.all(names.map((id) => store.add(notebook(id))));
  expect((await ids(store)).toSorted()).toEqual(names.toSorted());
});

test('the notebook opened last is remembered until it is removed', async () => {
  const { store } = fresh();
  value(await store.add(notebook('a')));
  value(await store.markOpened('a'));
  expect(value(await store.lastOpened())).toBe('a');
  value(await store.remove('a'));
  expect(value(await store.lastOpened())).toBeNull();
});

describe('the bin', () => {
  test('a removed notebook can be restored as it was, undo included', async () => {
    const { store } = fresh();
    value(await store.save(retitled(startHistory(notebook('a')), 'later')));
    const before = value(await store.load('a'));
    value(await store.remove('a'));
    expect(await ids(store)).toEqual([]);
    expect(value(await store.listRemoved())).toMatchObject([{ id: 'a', title: 'later' }]);
    value(await store.restore('a'));
    expect(value(await store.load('a'))).toEqual(before);
    expect(await ids(store)).toEqual(['a']);
    expect(value(await store.listRemoved())).toEqual([]);
  });

  test('restoring does not replace a notebook of the same id that came since', async () => {
    const { store } = fresh();
    value(await store.add(notebook('a', 'old')));
    value(await store.remove('a'));
    value(await store.add(notebook('a', 'new')));
    expect(await store.restore('a')).toMatchObject({ ok: false, problem: { kind: 'exists' } });
    expect(value(await store.load('a')).history.present.title).toBe('new');
  });

  test('is emptied by age', async () => {
    const { store } = fresh();
    for (const id of ['a', 'b']) value(await store.add(notebook(id)));
    for (const id of ['a', 'b']) value(await store.remove(id));
    const [first, second] = value(await store.listRemoved());
    value(await store.forgetRemovedBefore(Math.max(first!.removedAt_ms, second!.removedAt_ms)));
    expect(value(await store.listRemoved())).toHaveLength(1);
  });

  test('removing or restoring what is not there says so', async () => {
    const { store } = fresh();
    for (const act of [store.remove, store.restore, store.markExported, store.rawText])
      expect(await act('nowhere')).toMatchObject({ ok: false, problem: { kind: 'missing' } });
  });
});

describe('damage', () => {
  test('a damaged record is reported with every reason, kept, and can be rescued as text', async () => {
    const { entries, store } = fresh();
    value(await store.add(notebook('a')));
    const damaged = { ...(entries.get('notebook:a') as object), notebook: { ...notebook('a'), title: 7, units: 'x' } };
    entries.set('notebook:a', damaged);
    const result = await store.load('a');
    expect(result).toMatchObject({
      ok: false,
      problem: { kind: 'damaged', problems: [{ path: '/title' }, { path: '/units' }] },
    });
    expect(entries.get('notebook:a')).toBe(damaged);
    expect(JSON.parse(value(await store.rawText('a')))).toEqual(damaged);
  });

  test.each([[null], ['text'], [{}], [[]], [{ format: 'slab-and-spring-record', version: 2 }]])(
    'a record that is %j is damaged, not a crash',
    async (spoiled) => {
      const { entries, store } = fresh();
      entries.set('notebook:a', spoiled);
      expect(await store.load('a')).toMatchObject({ ok: false, problem: { kind: 'damaged' } });
    },
  );

  test('steps that cannot be read any more are left out, the notebook stays', async () => {
    const { entries, store } = fresh();
    value(await store.save(retitled(startHistory(notebook('a')), 'later')));
    const stored = entries.get('notebook:a') as { past: object[] };
    entries.set('notebook:a', { ...stored, past: [{ label: 'title', notebook: { broken: true } }] });
    const { history } = value(await store.load('a'));
    expect(history.present.title).toBe('later');
    expect(history.past).toEqual([]);
  });

  test.each([[null], ['text'], [{ entries: 3 }], [{ format: 'slab-and-spring-shelf', version: 1, entries: [3] }]])(
    'a list that became %j is made anew from the notebooks',
    async (spoiled) => {
      const { entries, store } = fresh();
      for (const id of ['a', 'b']) value(await store.add(notebook(id)));
      const list = value(await store.list());
      entries.set('shelf', spoiled);
      expect(value(await store.list())).toEqual(list);
      value(await store.add(notebook('c')));
      expect(await ids(store)).toEqual(['c', 'b', 'a']);
    },
  );
});

describe('storage that fails', () => {
  const quota = new DOMException('quota', 'QuotaExceededError');

  test.each([
    [null, 'failed'],
    [undefined, 'failed'],
    ['a text', 'failed'],
    [new Error('broken'), 'failed'],
    [{ name: 'toString' }, 'failed'],
    [quota, 'full'],
    [new DOMException('', 'InvalidStateError'), 'unavailable'],
    [new DOMException('', 'SecurityError'), 'unavailable'],
  ])('with %s is a problem of kind "%s" at every call', async (error, kind) => {
    const store = notebookStore(failingKeyValues(error), () => 0);
    const results = await Promise.all([
      store.list(),
      store.lastOpened(),
      store.load('a'),
      store.add(notebook('a')),
      store.save(startHistory(notebook('a'))),
      store.remove('a'),
      store.restore('a'),
      store.listRemoved(),
      store.forgetRemovedBefore(0),
      store.markOpened('a'),
      store.markExported('a'),
      store.rawText('a'),
    ]);
    for (const result of results) {
      expect(result).toMatchObject({ ok: false, problem: { kind } });
      expect(result.ok ? '' : result.problem.message).toMatch(/Save .* to a file/);
    }
  });

  test('what cannot be cloned is refused before anything is written', async () => {
    const { entries, store } = fresh();
    const history = startHistory({ ...notebook('a'), title: (() => 'a') as unknown as string });
    expect(await store.save(history)).toMatchObject({ ok: false });
    expect([...entries.keys()]).toEqual([]);
  });
});
