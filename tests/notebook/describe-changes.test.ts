import { expect, test } from 'vitest';
import { describeChanges } from '#src/notebook/describe-changes.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setUnits } from '#src/notebook/edits/set-units.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { smallNotebook } from './small-notebook.ts';

const texts = (notebook: Notebook, id: string) => describeChanges(notebook, id).map((c) => c.text);

test('a change of a quantity names both values and the unit once', () => {
  expect(texts(smallNotebook(), 'heavy')).toEqual(['slab thickness 38 → 76 mm']);
});

test('a change of a choice uses the words of its choices', () => {
  expect(texts(smallNotebook(), 'both')).toEqual(['ceiling support screwed direct → isolation clips']);
});

test('the words follow the units of the notebook', () => {
  expect(texts(setUnits(setParameter(smallNotebook(), 'slab', 0.0762), 'inch-pound'), 'heavy')).toEqual([
    'slab thickness 1 1/2 → 3 in',
  ]);
});

test('the base has nothing to tell', () => {
  expect(texts(smallNotebook(), 'existing')).toEqual([]);
});
