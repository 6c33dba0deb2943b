import { describe, expect, test } from 'vitest';
import { placeInWords } from '#src/notebook/place-in-words.ts';
import { smallNotebook } from './small-notebook.ts';

const place = (pointer: string, file: unknown = smallNotebook()) => placeInWords(file, pointer);

describe('a place in a file', () => {
  test.each([
    ['/title', '', 'title'],
    ['/stacks/0/length_m', 'stack “Floor”', 'length in m'],
    ['/stacks/0/layers/1/joistSpacing_m', 'stack “Floor”, layer “joists”', 'joist spacing in m'],
    ['/stacks/0/layers/0/sheets/1', 'stack “Floor”, layer “deck”', 'sheet 2 (plywood)'],
    ['/scenarios/1/changes/slab', 'scenario “Heavy”', 'slab thickness in m'],
    ['/materials/0/youngsModulus_Pa', 'material “club board”', "Young's modulus in Pa"],
    ['/parameters/0/max', 'parameter “slab thickness”', '“to” in m'],
    ['/cells/0/text', 'cell 1 (commentary)', 'text'],
    ['/shown/3', '', 'entry 4 of shown'],
  ])('%s is told in the words of the page', (pointer, where, what) => {
    expect(place(pointer)).toEqual({ where, what });
  });

  test('that is not there is told by its number', () => {
    expect(place('/stacks/7/layers/2/depth_m', { stacks: [] })).toEqual({ where: 'stack 8', what: 'depth in m' });
  });

  test('keys that objects have by nature name nothing', () => {
    for (const key of ['__proto__', 'constructor']) expect(place(`/${key}/0/${key}`, { [key]: [1] }).what).toBe(key);
  });

  test('the name of a place is cut where it is a page long', () => {
    const file = { stacks: [{ name: 'x'.repeat(5000) }] };
    expect(place('/stacks/0/name', file).where).toBe(`stack “${'x'.repeat(39)}…”`);
  });
});
