import { describe, expect, test } from 'vitest';
import type { Cavity } from '#src/acoustics/construction.ts';
import { addFill, moveFill, removeFill } from '#src/notebook/edits/edit-fills.ts';
import { keepOnlyIn, takeOutOf } from '#src/notebook/edits/layer-in-scenario.ts';
import { makeParameter } from '#src/notebook/edits/make-parameter.ts';
import { fillName } from '#src/notebook/field-specs.ts';
import { fillPath, fillsOf } from '#src/notebook/fill-places.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { CavityLayer, Notebook } from '#src/notebook/types.ts';
import { smallNotebook } from './small-notebook.ts';

const GLASS = { fill: 'glass-fibre', fillThickness_m: 0.1 };
const WOOL = { fill: 'mineral-wool', fillThickness_m: 0.05 };
const THIN = { fill: 'glass-fibre', fillThickness_m: 0.02 };

const cavityOf = (notebook: Notebook) => notebook.stacks[0]!.layers[1] as CavityLayer;
const fillsIn = (notebook: Notebook) => fillsOf(cavityOf(notebook));
/** From below, as the engine is given them. */
const thicknesses = (notebook: Notebook, scenario: string) =>
  (resolveStack(notebook, scenario, 'floor').layers[1] as Cavity).fill.map((f) => f.thickness_m);
const move = (notebook: Notebook, from: number, to: number) => moveFill(notebook, 'floor', 'joists', from, to);

const two = addFill(smallNotebook(), 'floor', 'joists', WOOL);
const three = addFill(two, 'floor', 'joists', THIN);

describe('fills of a cavity change places', () => {
  test('from any place to any other, and back to the very notebook', () => {
    expect(fillsIn(three)).toEqual([GLASS, WOOL, THIN]);
    expect(fillsIn(move(three, 0, 1))).toEqual([WOOL, GLASS, THIN]);
    expect(fillsIn(move(three, 1, 2))).toEqual([GLASS, THIN, WOOL]);
    expect(fillsIn(move(three, 0, 2))).toEqual([WOOL, THIN, GLASS]);
    for (const [from, to] of [
      [0, 1],
      [1, 2],
      [0, 2],
    ] as const) {
      expect(notebookProblems(move(three, from, to))).toEqual([]);
      expect(move(move(three, from, to), to, from)).toEqual(three);
    }
    expect(() => move(three, 0, 3)).toThrow(RangeError);
    expect(() => moveFill(three, 'floor', 'deck', 0, 1)).toThrow('layer must be a cavity, got a leaf');
  });

  test('in the floor that is computed too, in every scenario', () => {
    for (const { id } of three.scenarios) {
      expect(thicknesses(three, id)).toEqual([0.1, 0.05, 0.02]);
      expect(thicknesses(move(three, 2, 0), id)).toEqual([0.02, 0.1, 0.05]);
    }
  });

  test('with the parameters that they refer to, and with the scenarios that have one and others that have not', () => {
    const here = keepOnlyIn(two, 'floor', [{ layer: 'joists', fill: 1 }], 'heavy');
    const linked = makeParameter(here, 'floor', fillPath(1, 0, 'fillThickness_m'));
    const moved = move(linked, 1, 0);
    expect(fillsIn(moved)).toEqual(fillsIn(linked).toReversed());
    expect(thicknesses(moved, 'heavy')).toEqual([0.05, 0.1]);
    for (const id of ['existing', 'both']) expect(thicknesses(moved, id)).toEqual(thicknesses(linked, id));
    expect(notebookProblems(moved)).toEqual([]);
  });
});

describe('the first of several fills', () => {
  test('is removed, and what lay on it comes down', () => {
    const removed = removeFill(three, 'floor', 'joists', 0);
    expect(fillsIn(removed)).toEqual([WOOL, THIN]);
    expect(cavityOf(removeFill(two, 'floor', 'joists', 0))).not.toHaveProperty('fillsAbove');
    expect(notebookProblems(removed)).toEqual([]);
  });

  test('is taken out of one scenario, and stays in the others', () => {
    const without = takeOutOf(two, 'floor', [{ layer: 'joists', fill: 0 }], 'heavy');
    expect(thicknesses(without, 'heavy')).toEqual([0.05]);
    for (const id of ['existing', 'both']) expect(thicknesses(without, id)).toEqual([0.1, 0.05]);
  });

  test('is counted from below, like its fields', () => {
    expect([0, 1, 2, 3].map(fillName)).toEqual(['first fill', 'second fill', 'third fill', 'fourth fill']);
    expect(fillPath(1, 0, 'fill')).toEqual(['layers', 1, 'fill']);
    expect(fillPath(1, 2, 'fill')).toEqual(['layers', 1, 'fillsAbove', 1, 'fill']);
  });
});
