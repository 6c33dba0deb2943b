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

it('joins two mats around an empty leaf as springs one after the other, each with its loss', () => {
  const soft = { ...mat('soft', 0.02, 1e7), lossFactor: 0.2 };
  const stiff = { ...mat('stiff', 0.01, 4e7), lossFactor: 0.1 };
  const { interlayers } = normaliseConstruction(floor(leaf([deck]), soft, leaf([]), stiff, leaf([board])));
  const [joint] = interlayers;
  if (joint?.kind !== 'mat') throw new Error('a mat was expected');
  expect(joint).toMatchObject({ name: 'soft + stiff', thickness_m: 0.03 });
  // 1/s = 1/(10(1+0.2j)) + 1/(40(1+0.1j)) = 0.120906 − 0.021706j m³/MN by hand, s = 8.0126 (1 + 0.17953j) MN/m³
  expect(joint.dynamicStiffness_N_m3 / 1e6).toBeCloseTo(8.0126, 3);
  expect(joint.lossFactor).toBeCloseTo(0.17953, 4);
});

it('leaves the other mat or cavity alone where one beside an empty leaf has no height', () => {
  const m = mat('mat', 0.01, 1e7);
  const gap = cavity();
  for (const [upper, lower, kept] of [
    [m, mat('none', 0, 1e6), m],
    [mat('none', 0, 1e6), m, m],
    [mat('none', 0, 1e6), gap, gap],
    [gap, mat('none', 0, 1e6), gap],
  ] as const) {
    const { interlayers } = normaliseConstruction(floor(leaf([deck]), upper, leaf([]), lower, leaf([board])));
    expect(interlayers).toEqual([kept]);
  }
});
