import { expect, test } from 'vitest';
import { FileDesk } from '#src/app/file-desk.ts';
import type { Notice } from '#src/app/page-notices.ts';
import type { Session } from '#src/app/session.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { writeNotebook } from '#src/notebook/write-file.ts';
import type { NotebookStore } from '#src/store/notebook-store.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const COPY: Notice = { id: 'file', tone: 'info', text: 'opened beside it, as a copy' };

/** A desk and the notices that stand on its page; opening `asCopy` tells that it is a copy. */
function deskWithNotices(asCopy = false) {
  let notices: readonly Notice[] = [];
  const opened: string[] = [];
  const dismiss = (id: string) => {
    notices = notices.filter((n) => n.id !== id);
  };
  const notify = (notice: Notice) => {
    dismiss(notice.id);
    notices = [...notices, notice];
  };
  const session = {
    openFile: async ({ title }: Notebook) => {
      opened.push(title);
      if (asCopy) notify(COPY);
    },
  } as Session;
  const desk = new FileDesk(session, {} as NotebookStore, notify, dismiss);
  return { desk, opened, notify, texts: () => notices.map((n) => n.text) };
}

const bad = new File(['{"format":"slab-and-spring","version":1}'], 'bad.slabspring.json');
const good = new File([writeNotebook(practiceRoom())], 'good.slabspring.json');

test('that a file was not opened is said until another one is opened', async () => {
  const { desk, opened, notify, texts } = deskWithNotices();
  notify({ id: 'worker', tone: 'problem', text: 'A calculation stopped.' });
  await desk.open(bad);
  expect(texts()).toEqual(['A calculation stopped.', expect.stringContaining('“bad.slabspring.json” was not opened')]);
  await desk.open(good);
  expect(opened).toEqual([practiceRoom().title]);
  expect(texts()).toEqual(['A calculation stopped.']);
});

test('what opening a file brings up itself stays', async () => {
  const { desk, texts } = deskWithNotices(true);
  await desk.open(bad);
  await desk.open(good);
  expect(texts()).toEqual([COPY.text]);
});
