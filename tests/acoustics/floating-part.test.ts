import { expect, test } from 'vitest';
import { belowFloatingPart } from '#src/acoustics/floating-part.ts';
import { partOfFloor } from '#src/acoustics/floor-part.ts';
import { cavity, covering, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const screed = leaf([sheet('cement-screed', 0.05)]);
const slab = leaf([sheet('concrete', 0.15)]);
const ceiling = leaf([sheet('gypsum-board', 0.0127)]);
const soft = mat('mat', 0.02, 1e7);

test('a screed on a mat is taken away with its mat and what covers it; the rest stays', () => {
  const floor = { ...isolated(screed, soft, slab, cavity(), ceiling), covering: covering('carpet') };
  expect(belowFloatingPart(floor)).toEqual(isolated(slab, cavity(), ceiling));
  expect(partOfFloor(floor, 'whole')).toBe(floor);
});

test('a screed of thickness 0 does not float, nor does a leaf above a cavity or a leaf alone', () => {
  expect(belowFloatingPart(isolated(leaf([sheet('cement-screed', 0)]), soft, slab))).toBeUndefined();
  expect(belowFloatingPart(isolated(slab, cavity(), ceiling))).toBeUndefined();
  expect(() => partOfFloor(isolated(slab), 'below-floating')).toThrow('must lie on a mat');
});
