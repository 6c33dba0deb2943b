import { expect, test } from 'vitest';
import { changesOptionalFields } from '#src/notebook/changes-optional-fields.ts';
import { describeChanges } from '#src/notebook/describe-changes.ts';
import { madeParameter } from '#src/notebook/edits/make-parameter.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setUnits } from '#src/notebook/edits/set-units.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { isUsualValue } from '#src/notebook/usual-value.ts';
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

test('where only the kind of support was changed, what is usual for it is not told beside it', () => {
  const point = ['layers', 1, 'supportPointSpacing_m'] as const;
  const { notebook, key } = madeParameter(smallNotebook(), 'floor', point);
  const told = (n: Notebook) => describeChanges(n, 'both', isUsualValue).map((c) => c.text);
  // Screws every 406 mm, clips every 1.22 m along a furring channel: common practice, no source.
  expect(texts(notebook, 'both')).toHaveLength(2);
  expect(told(notebook)).toEqual(['ceiling support screwed direct → isolation clips']);
  expect(told(setParameter(notebook, key, 0.9, 'both'))).toEqual([
    'ceiling support screwed direct → isolation clips',
    'joists spacing along a line 406 → 900 mm',
  ]);
  expect(told(setParameter(notebook, key, 0.3, 'heavy'))).toEqual([
    'ceiling support screwed direct → isolation clips',
    'joists spacing along a line 300 → 1220 mm',
  ]);
});

test('what is usual is asked for only where a scenario changes a field that may be absent', () => {
  const point = ['layers', 1, 'supportPointSpacing_m'] as const;
  expect(changesOptionalFields(smallNotebook())).toBe(false);
  expect(changesOptionalFields(madeParameter(smallNotebook(), 'floor', point).notebook)).toBe(true);
});
