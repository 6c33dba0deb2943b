import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkConstruction } from '#src/acoustics/check-construction.ts';
import { fieldPaths, fieldSpec, withField } from '#src/notebook/field-path.ts';
import type { FieldSpec } from '#src/notebook/field-specs.ts';
import { record, redo, startHistory, undo } from '#src/notebook/history.ts';
import { notebookProblems, readNotebook, readNotebookValue } from '#src/notebook/read-file.ts';
import { resolveStack, valuesOf } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { writeNotebook } from '#src/notebook/write-file.ts';
import { smallNotebook } from '../notebook/small-notebook.ts';
import { applied, EDITS, editNames, notebooks, picksFrom, seeds } from './notebook-arbitraries.ts';

/** Seeded: a run that fails fails again. */
const SEED = 20261125;
const RUNS = { numRuns: 300, seed: SEED };

/** Any change of what an edit was given ends in an error. */
function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const inner of Object.values(value)) frozen(inner);
  return Object.freeze(value);
}

test('a notebook written to a file and read again is the same', () => {
  fc.assert(
    fc.property(notebooks, (notebook) => {
      expect(readNotebook(writeNotebook(notebook))).toEqual({ ok: true, notebook });
    }),
    RUNS,
  );
});

describe.each(Object.keys(EDITS))('%s', (name) => {
  test('leaves a sound notebook, changes nothing in place, and undo and redo give the identical documents', () => {
    let effects = 0;
    fc.assert(
      fc.property(notebooks, seeds, (before, seed) => {
        const text = JSON.stringify(before);
        const after = applied(frozen(before), name, picksFrom(seed));
        if (JSON.stringify(after) !== text) effects++;
        expect(notebookProblems(after)).toEqual([]);
        const history = record(startHistory(before), after, name);
        expect(undo(history).present).toBe(before);
        expect(JSON.stringify(undo(history).present)).toBe(text);
        expect(redo(undo(history)).present).toBe(after);
      }),
      { numRuns: 200, seed: SEED },
    );
    expect(effects).toBeGreaterThan(0);
  });
});

test('no edit changes the mark of a scenario that stays, and none gives two the same', () => {
  fc.assert(
    fc.property(fc.array(editNames, { maxLength: 40 }), seeds, (names, seed) => {
      const pick = picksFrom(seed);
      let before = smallNotebook();
      for (const name of names) {
        const after = applied(before, name, pick);
        for (const { id, mark } of before.scenarios)
          expect(after.scenarios.find((s) => s.id === id)?.mark ?? mark).toBe(mark);
        expect(new Set(after.scenarios.map((s) => s.mark)).size).toBe(after.scenarios.length);
        before = after;
      }
    }),
    RUNS,
  );
});

test('any row of edits can be undone to the start and redone to the end', () => {
  fc.assert(
    fc.property(fc.array(editNames, { maxLength: 40 }), seeds, (names, seed) => {
      const pick = picksFrom(seed);
      let history = startHistory(smallNotebook());
      for (const name of names) history = record(history, applied(history.present, name, pick), name, name);
      const end = history.present;
      while (history.past.length > 0) history = undo(history);
      expect(history.present).toEqual(smallNotebook());
      while (history.future.length > 0) history = redo(history);
      expect(history.present).toBe(end);
    }),
    RUNS,
  );
});

test('every stack of every scenario resolves to literals', () => {
  fc.assert(
    fc.property(notebooks, (notebook) => {
      for (const { scenario, stack } of pairs(notebook))
        expect(JSON.stringify(resolveStack(notebook, scenario, stack))).not.toMatch(/parameter|null/);
    }),
    RUNS,
  );
});

test('whatever a field accepts, at its limits too, the engine accepts', () => {
  fc.assert(
    fc.property(notebooks, seeds, (notebook, seed) => {
      const pick = picksFrom(seed);
      const [stack] = notebook.stacks;
      const literal = (spec: FieldSpec) =>
        spec.type === 'choice' ? pick.of(spec.choices(notebook)).value : pick.of([spec.min, spec.max, spec.usualMax]);
      const extreme = fieldPaths(stack!).reduce((s, path) => withField(s, path, literal(fieldSpec(s, path))), stack!);
      const edited = { ...notebook, stacks: [extreme, ...notebook.stacks.slice(1)] };
      expect(notebookProblems(edited)).toEqual([]);
      checkConstruction(resolveStack(edited, notebook.active, extreme.id));
    }),
    RUNS,
  );
});

test.each([
  'renameScenario',
  'moveScenario',
  'showScenario',
  'setActive',
  'duplicateScenario',
  'forkScenario',
  'makeParameter',
])('%s changes no value of any scenario that was there', (name) => {
  fc.assert(
    fc.property(notebooks, seeds, (before, seed) => {
      const after = applied(before, name, picksFrom(seed));
      for (const { scenario, stack } of pairs(before))
        expect(resolveStack(after, scenario, stack)).toEqual(resolveStack(before, scenario, stack));
    }),
    { numRuns: 100, seed: SEED },
  );
});

test('removing a scenario changes no value of those that stay', () => {
  fc.assert(
    fc.property(notebooks, seeds, (before, seed) => {
      const after = applied(before, 'removeScenario', picksFrom(seed));
      for (const { id } of after.scenarios) expect(valuesOf(after, id)).toEqual(valuesOf(before, id));
    }),
    RUNS,
  );
});

test('a field set while a fork is active changes only that fork and its own forks', () => {
  fc.assert(
    fc.property(notebooks, seeds, (before, seed) => {
      const after = applied(before, 'setStackField', picksFrom(seed));
      const descends = (id: string | null): boolean =>
        id !== null && (id === before.active || descends(before.scenarios.find((s) => s.id === id)!.parent));
      for (const { scenario, stack } of pairs(before))
        if (!descends(scenario))
          expect(resolveStack(after, scenario, stack)).toEqual(resolveStack(before, scenario, stack));
    }),
    RUNS,
  );
});

test('whatever JSON a file holds, reading answers and never throws', () => {
  fc.assert(
    fc.property(fc.anything({ withNullPrototype: true, withDate: true, withMap: true, withBigInt: true }), (value) => {
      expect(readNotebookValue(value).ok).toBe(false);
    }),
    RUNS,
  );
});

test('whatever stands in place of one part of a notebook, reading answers and never throws', () => {
  fc.assert(
    fc.property(notebooks, seeds, fc.jsonValue(), (notebook, seed, intruder) => {
      const pick = picksFrom(seed);
      const file = JSON.parse(JSON.stringify(notebook));
      let holder = file;
      for (let depth = pick.index(6); depth > 0; depth--) {
        const inner = Object.values(holder).filter(
          (v) => typeof v === 'object' && v !== null && Object.keys(v).length > 0,
        );
        if (inner.length > 0) holder = pick.of(inner);
      }
      holder[pick.of(Object.keys(holder))] = intruder;
      const reading = readNotebookValue(file);
      if (reading.ok) expect(reading.notebook).toEqual(file);
      else expect(reading.problems.length).toBeGreaterThan(0);
    }),
    { numRuns: 1000 },
  );
});

function pairs(notebook: Notebook) {
  return notebook.scenarios.flatMap(({ id }) => notebook.stacks.map((s) => ({ scenario: id, stack: s.id })));
}
