import { describe, expect, test } from 'vitest';
import { scenarioMark } from '#src/charts/scenario-marks.ts';
import { duplicateScenario } from '#src/notebook/edits/duplicate-scenario.ts';
import { forkScenario } from '#src/notebook/edits/fork-scenario.ts';
import { moveScenario } from '#src/notebook/edits/move-scenario.ts';
import { removeScenario } from '#src/notebook/edits/remove-scenario.ts';
import { record, redo, startHistory, undo } from '#src/notebook/history.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { readNotebook, readNotebookValue } from '#src/notebook/read-file.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { writeNotebook } from '#src/notebook/write-file.ts';
import { smallNotebook } from './small-notebook.ts';

const marks = ({ scenarios }: Notebook) => Object.fromEntries(scenarios.map(({ id, mark }) => [id, mark]));
const before = smallNotebook();
const forked = forkScenario(before, 'existing', { id: 'fork', name: 'Fork' });

/** As version 1 wrote it: nobody knew marks. */
function versionOne(): { version: number; scenarios: Record<string, unknown>[] } {
  const { scenarios, ...rest } = smallNotebook();
  return { ...rest, version: 1, scenarios: scenarios.map(({ mark: _mark, ...scenario }) => scenario) };
}

function problemsOf(value: unknown): readonly string[] {
  const reading = readNotebookValue(value);
  return reading.ok ? [] : reading.problems.map((p) => p.message);
}

describe('the mark of a scenario', () => {
  test('stays when another one is forked, copied, removed or moved above it', () => {
    expect(forked.scenarios.map((s) => s.id)).toEqual(['existing', 'heavy', 'both', 'fork']);
    expect(marks(forked)).toEqual({ ...marks(before), fork: 3 });
    const copied = duplicateScenario(before, 'heavy', { id: 'copy', name: 'Copy' });
    expect(marks(copied)).toEqual({ ...marks(before), copy: 3 });
    expect(marks(moveScenario(before, 'both', 1))).toEqual(marks(before));
    expect(marks(removeScenario(before, 'heavy'))).toEqual({ existing: 0, both: 2 });
  });

  test('is free again when its scenario is removed, and the next new one takes the lowest', () => {
    const next = forkScenario(removeScenario(forked, 'heavy'), 'both', { id: 'new', name: 'New' });
    expect(marks(next)).toEqual({ existing: 0, fork: 3, both: 2, new: 1 });
  });

  test('comes back with its scenario by undo, and by redo', () => {
    const removed = removeScenario(forked, 'heavy');
    const again = forkScenario(removed, 'existing', { id: 'again', name: 'Again' });
    const history = record(record(startHistory(forked), removed, 'remove'), again, 'fork');
    const back = undo(undo(history));
    expect(marks(back.present)).toEqual(marks(forked));
    expect(marks(redo(redo(back)).present)).toEqual(marks(again));
  });

  test('is in the file', () => {
    const reading = readNotebook(writeNotebook(moveScenario(forked, 'both', 1)));
    expect(reading.ok && marks(reading.notebook)).toEqual(marks(forked));
  });

  test('is unlike every other one as far as the marks go, whatever was removed before', () => {
    let notebook = before;
    for (let i = 0; notebook.scenarios.length < 64; i++) {
      notebook = forkScenario(notebook, 'existing', { id: `f${i}`, name: '' });
      if (i % 3 === 0) notebook = removeScenario(notebook, notebook.scenarios[i % notebook.scenarios.length || 1]!.id);
    }
    const looks = notebook.scenarios.map(({ mark }) => JSON.stringify(scenarioMark(mark)));
    expect(new Set(looks).size).toBe(64);
  });

  test('is there for as many scenarios as a notebook may have', () => {
    let notebook = before;
    for (let i = before.scenarios.length; i < LIMITS.scenarios; i++)
      notebook = forkScenario(notebook, 'existing', { id: `f${i}`, name: '' });
    expect(problemsOf(notebook)).toEqual([]);
  });
});

describe('a file of version 1', () => {
  test('gives every scenario the mark of its place, which it was drawn with, and then keeps it', () => {
    const reading = readNotebookValue(versionOne());
    expect(reading).toEqual({ ok: true, notebook: before });
  });

  test('keeps a mark that somebody wrote into it, if no other scenario has it', () => {
    const old = versionOne();
    old.scenarios[1]!.mark = 5;
    const reading = readNotebookValue(old);
    expect(reading.ok && marks(reading.notebook)).toEqual({ existing: 0, heavy: 5, both: 2 });
    old.scenarios[1]!.mark = 2;
    expect(problemsOf(old)).toEqual(['Scenario “Both”: mark must be unique, got 2 once more (/scenarios/2/mark)']);
  });

  test.each<[string, unknown, string]>([
    ['scenarios that are no list', { 0: {} }, 'scenarios must be a list, got an object (/scenarios)'],
    ['a scenario that is a list', [[]], 'Scenario 1: mark must be present, got nothing (/scenarios/0/mark)'],
    ['a scenario that is nothing', [null], 'scenario 1 must be an object, got null (/scenarios/0)'],
  ])('with %s is refused', (_name, scenarios, message) => {
    expect(problemsOf({ ...versionOne(), scenarios })).toContain(message);
  });
});

describe('a file whose marks are not sound is refused', () => {
  test.each<[unknown, string]>([
    [undefined, 'Scenario “Heavy”: mark must be present, got nothing (/scenarios/1/mark)'],
    [null, 'Scenario “Heavy”: mark must be a number, got null (/scenarios/1/mark)'],
    ['1', 'Scenario “Heavy”: mark must be a number, got "1" (/scenarios/1/mark)'],
    [{ toString: '1' }, 'Scenario “Heavy”: mark must be a number, got an object (/scenarios/1/mark)'],
    [1.5, 'Scenario “Heavy”: mark must be a whole number, got 1.5 (/scenarios/1/mark)'],
    [-1, 'Scenario “Heavy”: mark must be at least 0, got -1 (/scenarios/1/mark)'],
    [
      LIMITS.scenarios,
      `Scenario “Heavy”: mark must be at most ${LIMITS.scenarios - 1}, got ${LIMITS.scenarios} (/scenarios/1/mark)`,
    ],
    [0, 'Scenario “Heavy”: mark must be unique, got 0 once more (/scenarios/1/mark)'],
    [-0, 'Scenario “Heavy”: mark must be unique, got 0 once more (/scenarios/1/mark)'],
  ])('%j', (mark, message) => {
    const [first, second, ...others] = smallNotebook().scenarios;
    const { mark: _mark, ...unmarked } = second!;
    const broken = mark === undefined ? unmarked : { ...unmarked, mark };
    expect(problemsOf({ ...smallNotebook(), scenarios: [first, broken, ...others] })).toContain(message);
  });
});
