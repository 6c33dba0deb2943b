import { expect, test } from 'vitest';
import { answeringStack } from '#cells/parameters/answering-stack.ts';
import type { Notebook, Stack } from '#src/notebook/types.ts';
import { practiceRoom } from '../../browser/practice-room.ts';

/** A second floor that the slab's density alone reaches. */
function twoFloors(cells: Notebook['cells'] = []): Notebook {
  const room = practiceRoom();
  const [floor] = room.stacks as [Stack];
  const annex: Stack = {
    ...floor,
    id: 'annex',
    layers: [
      {
        kind: 'leaf',
        id: 'slab',
        name: 'slab',
        contact: 'loose',
        sheets: [{ material: 'concrete', thickness_m: 0.12, density_kg_m3: { parameter: 'density' } }],
      },
    ],
  };
  return { ...room, stacks: [annex, floor], cells: [...room.cells, ...cells] };
}

test('the floor that uses a parameter answers it', () => {
  expect(answeringStack(practiceRoom(), ['slab', 'density'])?.id).toBe('floor');
});

test('a floor that no cell shows is not predicted, and does not answer', () => {
  expect(answeringStack(twoFloors(), ['density'])?.id).toBe('floor');
});

test('the parameter that is asked about first decides between floors', () => {
  const notebook = twoFloors([{ kind: 'ratings', id: 'more', folded: false, title: 'More', stack: 'annex' }]);
  expect(answeringStack(notebook, ['density', 'slab'])?.id).toBe('annex');
  expect(answeringStack(notebook, ['slab', 'density'])?.id).toBe('floor');
});

test('nothing answers to a parameter that no floor uses', () => {
  expect(answeringStack(practiceRoom({ stacks: [] }), ['slab'])).toBeUndefined();
});
