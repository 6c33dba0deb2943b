import { expect, test } from 'vitest';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import {
  type History,
  MOST_STEPS,
  nearestSteps,
  record,
  redo,
  redoLabel,
  sealed,
  startHistory,
  undo,
  undoLabel,
} from '#src/notebook/history.ts';
import { smallNotebook } from './small-notebook.ts';

const drag = (history: History, slab: number) =>
  record(history, setParameter(history.present, 'slab', slab), 'slab thickness', 'slab');
const title = (history: History, text: string) => record(history, setTitle(history.present, text), 'title');

test('undo gives the very notebook back, redo the later one', () => {
  const start = startHistory(smallNotebook());
  const edited = title(start, 'Above the library');
  expect(undo(edited).present).toBe(start.present);
  expect(redo(undo(edited)).present).toBe(edited.present);
  expect(undoLabel(edited)).toBe('title');
  expect(redoLabel(undo(edited))).toBe('title');
});

test('edits with the same merge key in a row are one step; anything between them starts another', () => {
  const start = startHistory(smallNotebook());
  const dragged = [0.04, 0.05, 0.06].reduce(drag, start);
  expect(dragged.past).toHaveLength(1);
  expect(undo(dragged).present).toBe(start.present);
  expect(drag(title(dragged, 'x'), 0.07).past).toHaveLength(3);
  expect(drag(sealed(dragged), 0.07).past).toHaveLength(2);
  expect(drag(redo(undo(dragged)), 0.07).past).toHaveLength(2);
});

test('an edit after undo ends the way forward', () => {
  const edited = title(title(startHistory(smallNotebook()), 'a'), 'b');
  expect(redoLabel(title(undo(edited), 'c'))).toBeUndefined();
});

test('an edit that returns the same notebook is no step, and keeps what can be redone', () => {
  const undone = undo(title(startHistory(smallNotebook()), 'a'));
  expect(record(undone, undone.present, 'nothing')).toBe(undone);
});

test('undo and redo at the ends change nothing', () => {
  const start = startHistory(smallNotebook());
  expect(undo(start)).toBe(start);
  expect(redo(start)).toBe(start);
});

test('the oldest steps fall away', () => {
  let history = startHistory(smallNotebook());
  for (let i = 0; i < MOST_STEPS + 20; i++) history = title(history, `title ${i}`);
  expect(history.past).toHaveLength(MOST_STEPS);
  for (let i = 0; i < 2 * MOST_STEPS; i++) history = undo(history);
  expect(history.present.title).toBe('title 19');
});

test('a history survives being written as text and read again', () => {
  const history = undo(title(title(startHistory(smallNotebook()), 'a'), 'b'));
  const again = JSON.parse(JSON.stringify(history)) as History;
  expect(redo(again).present.title).toBe('b');
  expect(undo(again).present).toEqual(smallNotebook());
});

test('the nearest steps on both sides are kept', () => {
  let history = startHistory(smallNotebook());
  for (const t of ['a', 'b', 'c', 'd', 'e']) history = title(history, t);
  history = nearestSteps(undo(undo(history)), 1);
  expect([undo(history).present.title, history.present.title, redo(history).present.title]).toEqual(['b', 'c', 'd']);
  expect([history.past.length, history.future.length]).toEqual([1, 1]);
});
