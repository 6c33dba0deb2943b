import { expect, it } from 'vitest';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { cavity, fibre, floor, leaf, mat, sheet } from '../published/reference-constructions.ts';

const slab = sheet('concrete', 0.1);
const board = sheet('gypsum-board', 0.0127);
const deck = sheet('plywood', 0.016);
const none = sheet('concrete', 0);

it('drops a sheet of thickness 0 and keeps the rest of its leaf', () => {
  const { leaves } = normaliseConstruction(floor(leaf([none, deck])));
  expect(leaves).toEqual([leaf([deck])]);
});

it('drops an empty uppermost or lowest leaf with the interlayer next to it', () => {
  const m = mat('mat', 0.01, 1e7);
  expect(normaliseConstruction(floor(leaf([none]), m, leaf([deck])))).toEqual({
    leaves: [leaf([deck])],
    interlayers: [],
  });
  expect(normaliseConstruction(floor(leaf([deck]), cavity(), leaf([])))).toEqual({
    leaves: [leaf([deck])],
    interlayers: [],
  });
});

it('joins the cavities around an empty middle leaf: upper joists, lower support, both depths and fills', () => {
  const upper = cavity({ fill: [fibre('glass-fibre', 0.1)] });
  const lower = cavity({ joists: 'none', depth_m: 0.05, support: 'clips', fill: [fibre('mineral-wool', 0.05)] });
  const { leaves, interlayers } = normaliseConstruction(floor(leaf([deck]), upper, leaf([]), lower, leaf([board])));
  expect(leaves).toHaveLength(2);
  expect(interlayers).toEqual([
    { ...upper, support: 'clips', depth_m: upper.depth_m + 0.05, fill: [...lower.fill, ...upper.fill] },
  ]);
});

it('lets leaves touch where a mat or cavity has no height', () => {
  const flat = cavity({ depth_m: 0 });
  for (const between of [mat('mat', 0, 1e7), flat]) {
    expect(normaliseConstruction(floor(leaf([slab]), between, leaf([deck])))).toEqual({
      leaves: [leaf([slab, deck])],
      interlayers: [],
    });
  }
});
