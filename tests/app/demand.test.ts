import { expect, test } from 'vitest';
import { wantedPredictions } from '#src/app/demand.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const pairs = (notebook: Notebook) => wantedPredictions(notebook).map(({ scenario, stack }) => `${scenario}/${stack}`);
const text = (words: string): Notebook['cells'] => [{ kind: 'commentary', id: 'a', folded: false, text: words }];

test('the active scenario comes first, then the shown ones, then the reference, each once', () => {
  expect(pairs(practiceRoom({ shown: ['hung', 'both'], active: 'both', reference: 'base' }))).toEqual([
    'both/floor',
    'hung/floor',
    'base/floor',
  ]);
});

test('a scenario that is not shown is computed where a text names it', () => {
  const notebook = practiceRoom({ shown: ['slab'], reference: 'slab', cells: text('[50](value:both/floor/stc)') });
  expect(pairs(notebook)).toEqual(['both/floor']);
});

test('a live value without a scenario means the active one', () => {
  expect(pairs(practiceRoom({ cells: text('[50](value:floor/stc)') }))).toContain('slab/floor');
});

test('a gain in the text wants the reference scenario of the same stack too', () => {
  const room = practiceRoom();
  const stacks = [...room.stacks, { ...room.stacks[0]!, id: 'attic' }];
  const cells = text('[+9](value:both/attic/stc-gain)');
  expect(pairs({ ...room, stacks, cells })).toEqual(['both/attic', 'base/attic']);
});

test('names that the notebook does not have are left out', () => {
  expect(pairs(practiceRoom({ cells: text('[1](value:attic/stc) [2](value:nobody/floor/stc)') }))).toEqual([]);
});

test('a notebook without cells asks for nothing', () => {
  expect(pairs(practiceRoom({ cells: [] }))).toEqual([]);
});
