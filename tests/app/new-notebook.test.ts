import { expect, test } from 'vitest';
import { emptyNotebook, inUnits } from '#src/app/new-notebook.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import type { QuantityParameter } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

const random = () => 0.5;

/** 254 to the inch: what is round in inches is a whole number of tenths of a millimetre times as many sixteenths. */
const sixteenths = (length_m: number) => (length_m / 0.0254) * 16;

test.each(['SI', 'inch-pound'] as const)('a new notebook in %s is sound and begins with round values', (units) => {
  const notebook = emptyNotebook(random, units);
  expect(notebookProblems(notebook)).toEqual([]);
  const [slab] = notebook.parameters as readonly QuantityParameter[];
  const [floor] = notebook.stacks;
  const lengths = [slab!.value, slab!.min, slab!.max, slab!.step, floor!.length_m, floor!.width_m].map(Number);
  for (const length_m of lengths) {
    const inRound = units === 'SI' ? length_m * 1000 : sixteenths(length_m);
    expect(inRound).toBeCloseTo(Math.round(inRound), 9);
  }
  const shown = [formatQuantity(slab!.value, 'length', units), formatQuantity(Number(floor!.length_m), 'span', units)];
  expect(shown).toEqual(units === 'SI' ? ['120 mm', '4 m'] : ['5 in', '13 ft']);
});

test('a new notebook shows its ratings and the paths of the sound from the start', () => {
  const kinds = emptyNotebook(random).cells.map((cell) => cell.kind);
  expect(kinds).toEqual(['parameters', 'stack', 'curves', 'ratings', 'paths']);
});

test('a new notebook that nobody touched begins anew in the units that are chosen, and back', () => {
  const fresh = emptyNotebook(random);
  const inches = inUnits(fresh, 'inch-pound');
  expect(inches).toEqual({ ...emptyNotebook(random, 'inch-pound'), id: fresh.id });
  expect(inUnits(inches, 'SI')).toEqual(fresh);
});

test('so does one with a number in its title, and keeps that', () => {
  const second = { ...emptyNotebook(random), title: 'New notebook 2' };
  expect(inUnits(second, 'inch-pound')).toEqual({
    ...emptyNotebook(random, 'inch-pound'),
    id: second.id,
    title: second.title,
  });
});

test('one that was touched keeps every value', () => {
  for (const touched of [
    setTitle(emptyNotebook(random), 'Club room'),
    setParameter(emptyNotebook(random), 'slab', 0.15),
  ])
    expect(inUnits(touched, 'inch-pound')).toEqual({ ...touched, units: 'inch-pound' });
});
