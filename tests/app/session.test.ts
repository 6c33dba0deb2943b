import { beforeEach, expect, test, vi } from 'vitest';
import { Session, type SessionState, type SessionTrouble } from '#src/app/session.ts';
import { applyEdit } from '#src/notebook/apply-edit.ts';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import type { ClaimState, NotebookClaim } from '#src/store/notebook-claim.ts';
import { type NotebookStore, notebookStore } from '#src/store/notebook-store.ts';
import type { ShelfEntry } from '#src/store/shelf.ts';
import type { StoreNotice } from '#src/store/store-notices.ts';
import { refused } from '#src/store/store-result.ts';
import { practiceRoom } from '../browser/practice-room.ts';
import { memoryKeyValues } from '../store/memory-key-values.ts';

/** The lock manager and the channel of one browser: tabs that hear and lock each other. */
class Browser {
  readonly values = memoryKeyValues();
  readonly #holders = new Map<string, { tell(state: ClaimState): void }>();
  readonly #ears: { tab: object; hear(notice: StoreNotice): void }[] = [];
  time_ms = 1000;

  store(): NotebookStore {
    return notebookStore(this.values, () => this.time_ms++);
  }

  async claim(id: string, onChange: (state: ClaimState) => void): Promise<NotebookClaim> {
    const holders = this.#holders;
    const self = {
      state: holders.has(id) ? ('waiting' as ClaimState) : ('held' as ClaimState),
      tell(state: ClaimState) {
        self.state = state;
        onChange(state);
      },
      takeOver() {
        holders.get(id)?.tell('lost');
        holders.set(id, self);
        self.tell('held');
      },
      async release() {
        if (holders.get(id) === self) holders.delete(id);
      },
    };
    if (self.state === 'held') holders.set(id, self);
    return self;
  }

  notices(hear: (notice: StoreNotice) => void) {
    const tab = {};
    this.#ears.push({ tab, hear });
    return {
      tell: (notice: StoreNotice) => {
        for (const ear of this.#ears) if (ear.tab !== tab) ear.hear(notice);
      },
      close: () => {},
    };
  }
}

interface Tab {
  readonly session: Session;
  readonly store: NotebookStore;
  readonly troubles: SessionTrouble[];
  readonly shelf: () => readonly ShelfEntry[];
  readonly state: () => SessionState;
  readonly title: () => string;
}

function tabOf(browser: Browser, store = browser.store()): Tab {
  const troubles: SessionTrouble[] = [];
  let shelf: readonly ShelfEntry[] = [];
  const session = new Session({
    store,
    claim: (id, onChange) => browser.claim(id, onChange),
    notices: (hear) => browser.notices(hear),
    now_ms: () => browser.time_ms,
    random: Math.random,
    onChange: () => {},
    onShelf: (entries) => {
      shelf = entries;
    },
    applyEdit,
    isExample: async ({ title }) => title === EXAMPLE,
    onTrouble: (trouble) => troubles.push(trouble),
  });
  return {
    session,
    store,
    troubles,
    shelf: () => shelf,
    state: () => session.state!,
    title: () => session.state!.history.present.title,
  };
}

const EXAMPLE = 'An example';

const rename = (tab: Tab, title: string) => tab.session.edit((n) => setTitle(n, title), 'title');

let browser: Browser;
let tab: Tab;

beforeEach(() => {
  browser = new Browser();
  tab = tabOf(browser);
});

test('what was edited is there after a reload, undo included', async () => {
  await tab.session.openNew(practiceRoom());
  rename(tab, 'Second title');
  await tab.session.close();
  const next = tabOf(browser);
  expect(await next.session.openLast()).toBe(true);
  expect(next.title()).toBe('Second title');
  next.session.undo();
  expect(next.title()).toBe('Percussion above the reading room');
  next.session.redo();
  expect(next.title()).toBe('Second title');
});

test('a tab opens its own notebook again, not the one that another tab opened last', async () => {
  await tab.session.openNew(practiceRoom({ id: 'mine', title: 'Mine' }));
  await tabOf(browser).session.openNew(practiceRoom({ id: 'theirs', title: 'Theirs' }));
  const again = tabOf(browser);
  await again.session.openLast('gone');
  expect(again.title()).toBe('Theirs');
  await again.session.openLast('mine');
  expect(again.title()).toBe('Mine');
});

test('what was taken in just now is at hand and not read back', async () => {
  const store = browser.store();
  const load = vi.fn(store.load);
  const session = tabOf(browser, { ...store, load });
  await session.session.openNew(practiceRoom());
  expect(session.title()).toBe('Percussion above the reading room');
  expect(session.state().access).toBe('writing');
  expect(load).not.toHaveBeenCalled();
});

test('a tab that was quicker to open what was taken in goes on with it, and this one reads along', async () => {
  const quick = tabOf(browser);
  const store = browser.store();
  const add: typeof store.add = async (notebook) => {
    const added = await store.add(notebook);
    await quick.session.open(notebook.id);
    rename(quick, 'Theirs');
    await quick.session.flush();
    return added;
  };
  const slow = tabOf(browser, { ...store, add });
  await slow.session.openNew(practiceRoom());
  expect(slow.state().access).toBe('reading');
  expect(slow.title()).toBe('Theirs');
});

test('edits are saved by themselves a little later', async () => {
  vi.useFakeTimers();
  await tab.session.openNew(practiceRoom());
  rename(tab, 'Second title');
  await vi.advanceTimersByTimeAsync(500);
  vi.useRealTimers();
  const stored = await tab.store.load('practice-room');
  expect(stored.ok && stored.value.history.present.title).toBe('Second title');
});

test('without anything stored there is nothing to open last', async () => {
  expect(await tab.session.openLast()).toBe(false);
  expect(tab.troubles).toEqual([]);
});

test('a file of a notebook that is here with other content opens beside it', async () => {
  await tab.session.openNew(practiceRoom());
  rename(tab, 'Mine');
  await tab.session.openNew(practiceRoom({ title: 'From a file' }));
  expect(tab.title()).toBe('From a file');
  expect(tab.state().history.present.id).not.toBe('practice-room');
  expect(tab.troubles).toEqual([{ kind: 'opened-as-copy', title: 'From a file' }]);
  const mine = await tab.store.load('practice-room');
  expect(mine.ok && mine.value.history.present.title).toBe('Mine');
});

test('a file made from an example that nobody edited here takes its place, and undo brings it back', async () => {
  await tab.session.openNew(practiceRoom({ title: EXAMPLE }));
  await tab.session.openNew(practiceRoom({ title: 'From a file' }));
  expect(tab.title()).toBe('From a file');
  expect(tab.state().history.present.id).toBe('practice-room');
  expect(tab.troubles).toEqual([]);
  await tab.session.refreshShelf();
  expect(tab.shelf()).toHaveLength(1);
  tab.session.undo();
  expect(tab.title()).toBe(EXAMPLE);
});

test('an example that was edited here, or that another tab writes, stays, and the file opens beside it', async () => {
  await tab.session.openNew(practiceRoom({ title: EXAMPLE }));
  const other = tabOf(browser);
  await other.session.openNew(practiceRoom({ title: 'From a file' }));
  expect(other.troubles).toEqual([{ kind: 'opened-as-copy', title: 'From a file' }]);
  rename(tab, 'Mine');
  rename(tab, EXAMPLE);
  await tab.session.openNew(practiceRoom({ title: 'From another file' }));
  expect(tab.troubles).toEqual([{ kind: 'opened-as-copy', title: 'From another file' }]);
  const mine = await tab.store.load('practice-room');
  expect(mine.ok && mine.value.history.present.title).toBe(EXAMPLE);
});

test('a file with the same content as what is here opens what is here, with its undo', async () => {
  await tab.session.openNew(practiceRoom({ title: 'First' }));
  rename(tab, 'Percussion above the reading room');
  await tab.session.openNew(practiceRoom());
  expect(tab.state().history.present.id).toBe('practice-room');
  expect(tab.state().history.past).toHaveLength(1);
  expect(tab.troubles).toEqual([]);
});

test('a second tab reads, follows what is saved, and its edits change nothing', async () => {
  await tab.session.openNew(practiceRoom());
  const other = tabOf(browser);
  await other.session.open('practice-room');
  expect(other.state().access).toBe('reading');
  rename(other, 'Not allowed');
  expect(other.title()).toBe('Percussion above the reading room');
  rename(tab, 'Second title');
  await tab.session.flush();
  await vi.waitFor(() => expect(other.title()).toBe('Second title'));
});

test('taking over turns the tabs around and keeps the last edits of both', async () => {
  await tab.session.openNew(practiceRoom());
  const other = tabOf(browser);
  await other.session.open('practice-room');
  rename(tab, 'Last words of the first tab');
  await tab.session.flush();
  other.session.takeOver();
  await vi.waitFor(() => expect(other.state().access).toBe('writing'));
  await vi.waitFor(() => expect(tab.state().access).toBe('reading'));
  rename(other, 'Second tab');
  await other.session.flush();
  expect(other.troubles).toEqual([]);
  await vi.waitFor(() => expect(tab.title()).toBe('Second tab'));
});

test('a copy for the reading tab is a notebook of its own', async () => {
  await tab.session.openNew(practiceRoom());
  const other = tabOf(browser);
  await other.session.open('practice-room');
  await other.session.workOnCopy();
  expect(other.state().access).toBe('writing');
  expect(other.title()).toBe('Percussion above the reading room, copy');
  expect(tab.title()).toBe('Percussion above the reading room');
});

test('a save by somebody else in between is a conflict; nothing is overwritten and a copy keeps both', async () => {
  await tab.session.openNew(practiceRoom());
  const stored = await tab.store.load('practice-room');
  if (!stored.ok) throw new Error('not stored');
  const theirs = { ...stored.value.history, present: practiceRoom({ title: 'Theirs' }) };
  await browser.store().save(theirs);
  rename(tab, 'Mine');
  await tab.session.flush();
  expect(tab.troubles.map((t) => t.kind)).toEqual(['conflict']);
  await tab.session.workOnCopy();
  expect(tab.title()).toBe('Mine, copy');
  const kept = await tab.store.load('practice-room');
  expect(kept.ok && kept.value.history.present.title).toBe('Theirs');
});

test('deleting what is open opens another one, and undo brings it back to the shelf', async () => {
  await tab.session.openNew(practiceRoom({ id: 'first', title: 'First' }));
  await tab.session.openNew(practiceRoom({ id: 'second', title: 'Second' }));
  await tab.session.remove('second');
  expect(tab.title()).toBe('First');
  expect(tab.shelf().map((e) => e.title)).toEqual(['First']);
  await tab.session.restore('second');
  expect(
    tab
      .shelf()
      .map((e) => e.title)
      .toSorted(),
  ).toEqual(['First', 'Second']);
});

test('deleting the last one leaves a new, empty notebook', async () => {
  await tab.session.openNew(practiceRoom());
  await tab.session.remove('practice-room');
  expect(tab.title()).toBe('New notebook');
});

test('a new notebook goes on in the units of the one that is open', async () => {
  await tab.session.openNew(practiceRoom({ units: 'inch-pound' }));
  await tab.session.create();
  expect(tab.title()).toBe('New notebook');
  expect(tab.state().history.present.units).toBe('inch-pound');
});

test('no two notebooks that the page makes have one title in the list', async () => {
  await tab.session.openNew(practiceRoom());
  tab.session.edit((n) => ({ ...n, units: 'inch-pound' }), 'units');
  // The same example once more, now that the one here was edited.
  await tab.session.openFile(practiceRoom());
  expect(tab.title()).toBe('Percussion above the reading room 2');
  expect(tab.troubles).toEqual([{ kind: 'opened-as-copy', title: 'Percussion above the reading room 2' }]);
  // It counts as being in the file all the same.
  expect(tab.state().exportedAt_ms).not.toBeNull();
  await tab.session.create();
  await tab.session.create();
  expect(tab.title()).toBe('New notebook 2');
  for (const copy of ['copy', 'copy 2']) {
    await tab.session.duplicate('practice-room');
    expect(tab.title()).toBe(`Percussion above the reading room, ${copy}`);
  }
  await tab.session.refreshShelf();
  const titles = tab.shelf().map((entry) => entry.title);
  expect(new Set(titles).size).toBe(titles.length);
});

test('a duplicate has the content and a title that says so', async () => {
  await tab.session.openNew(practiceRoom());
  await tab.session.duplicate('practice-room');
  expect(tab.title()).toBe('Percussion above the reading room, copy');
  expect(tab.state().history.present.cells).toEqual(practiceRoom().cells);
});

test('where the browser stores nothing the notebook opens all the same and the trouble is told', async () => {
  const broken = {
    ...browser.store(),
    add: async () => refused('unavailable', 'The browser gives this page no storage.'),
  };
  const alone = tabOf(browser, broken);
  await alone.session.openNew(practiceRoom());
  expect(alone.state().access).toBe('memory');
  expect(alone.troubles.map((t) => t.kind)).toEqual(['store']);
  rename(alone, 'Still editable');
  expect(alone.title()).toBe('Still editable');
});

test('a damaged record is told with its reasons, and what was open stays open', async () => {
  await tab.session.openNew(practiceRoom());
  await browser.values.update(['notebook:bad'], () => [{ format: 'slab-and-spring-record', version: 1, notebook: {} }]);
  expect(await tab.session.open('bad')).toBe(false);
  expect(tab.troubles[0]).toMatchObject({ kind: 'damaged', id: 'bad' });
  expect(tab.title()).toBe('Percussion above the reading room');
});

test('a save that failed is tried again with the next edit and nothing is lost', async () => {
  let full = false;
  const store = browser.store();
  const moody: NotebookStore = {
    ...store,
    save: (history, basedOn_ms) =>
      full ? Promise.resolve(refused('full', 'No room left.')) : store.save(history, basedOn_ms),
  };
  const one = tabOf(browser, moody);
  await one.session.openNew(practiceRoom());
  full = true;
  rename(one, 'Not stored at first');
  await one.session.flush();
  expect(one.troubles.map((t) => t.kind)).toEqual(['store']);
  full = false;
  await one.session.flush();
  const stored = await store.load('practice-room');
  expect(stored.ok && stored.value.history.present.title).toBe('Not stored at first');
});

test('saving a file is remembered', async () => {
  await tab.session.openNew(practiceRoom());
  expect(tab.state().exportedAt_ms).toBeNull();
  await tab.session.exported();
  await tab.session.refreshShelf();
  expect(tab.state().exportedAt_ms).not.toBeNull();
  expect(tab.shelf()[0]!.exportedAt_ms).not.toBeNull();
});

test('what came from a file is in a file, as a copy too, until it is changed', async () => {
  await tab.session.openFile(practiceRoom());
  expect(tab.state().exportedAt_ms).not.toBeNull();
  // The same notebook with other content is opened as a copy beside it.
  await tab.session.openFile(setTitle(practiceRoom(), 'Changed elsewhere'));
  expect(tab.troubles).toEqual([{ kind: 'opened-as-copy', title: 'Changed elsewhere' }]);
  expect(tab.state().exportedAt_ms).not.toBeNull();
  await tab.session.refreshShelf();
  expect(tab.shelf().map(({ exportedAt_ms }) => typeof exportedAt_ms)).toEqual(['number', 'number']);
});

test('an edit that a file could not hold, or that does not apply, is refused in words and changes nothing', async () => {
  const tab = tabOf(new Browser());
  await tab.session.openNew(practiceRoom());
  const before = tab.state().history.present;
  tab.session.edit((n) => ({ ...n, title: 'x'.repeat(1e6) }), 'a title without end');
  tab.session.edit(() => {
    throw new RangeError('id must name a cell, got "gone"');
  }, 'fold');
  expect(tab.state().history.present).toBe(before);
  expect(tab.troubles).toMatchObject([
    { kind: 'refused-edit', label: 'a title without end', message: expect.stringContaining('title') },
    { kind: 'refused-edit', label: 'fold', message: 'id must name a cell, got "gone"' },
  ]);
});
