import { describe, expect, test } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { changedKeys, resolveStack, valuesOf } from '#src/notebook/resolve.ts';
import type { Flanking, Notebook } from '#src/notebook/types.ts';
import { smallNotebook } from './small-notebook.ts';

const notebook = smallNotebook();

test('values walk the chain of parents: base, then the fork, then its fork', () => {
  expect(valuesOf(notebook, 'existing')).toEqual({ slab: 0.038, density: 1760, support: 'direct', spare: 0.5 });
  expect(valuesOf(notebook, 'heavy')).toEqual({ slab: 0.076, density: 1760, support: 'direct', spare: 0.5 });
  expect(valuesOf(notebook, 'both')).toEqual({ slab: 0.076, density: 1760, support: 'clips', spare: 0.5 });
});

test('changed keys are those that differ from the parent, not from the base', () => {
  expect(changedKeys(notebook, 'existing')).toEqual([]);
  expect(changedKeys(notebook, 'both')).toEqual(['support']);
});

test('a change that happens to equal the parent value is not marked as changed', () => {
  const scenarios = notebook.scenarios.map((s) => (s.id === 'both' ? { ...s, changes: { slab: 0.076 } } : s));
  expect(changedKeys({ ...notebook, scenarios }, 'both')).toEqual([]);
});

test('a resolved stack holds literals only, with materials looked up and overrides applied', () => {
  const floor = resolveStack(notebook, 'both', 'floor');
  expect(JSON.stringify(floor)).not.toContain('parameter');
  expect(floor.layers[0]).toMatchObject({
    kind: 'leaf',
    sheets: [
      { name: 'cellular concrete topping', thickness_m: 0.076, density_kg_m3: 1760, form: 'slab' },
      { name: 'plywood', thickness_m: 0.019, density_kg_m3: 600, form: 'board' },
    ],
  });
  expect(floor.layers[1]).toMatchObject({ kind: 'cavity', support: 'clips', fill: [{ name: 'glass fibre batt' }] });
  expect(floor).not.toHaveProperty('covering');
});

test('an own board is found by key and is as soft under a hammer as timber unless it says otherwise', () => {
  const own = withCeiling('own-board');
  expect(resolveStack(own, 'existing', 'floor').layers[2]).toMatchObject({
    sheets: [{ name: 'club board', density_kg_m3: 900, contactStiffness_N_m: 2e7 }],
  });
});

describe('flanking', () => {
  test.each([
    ['well isolated', 68],
    ['ordinary', 58],
    ['weak', 50],
  ] as const)('the assumed limit "%s" is %d dB at 500 Hz and rises 3 dB per octave', (kind, R500_dB) => {
    expect(resolvedFlanking({ kind, R500_dB: 1, slope_dB_per_octave: 1 })).toEqual({ R500_dB, slope_dB_per_octave: 3 });
  });

  test('an own limit passes its numbers on; none passes nothing', () => {
    expect(resolvedFlanking({ kind: 'own', R500_dB: 61, slope_dB_per_octave: 2 })).toEqual({
      R500_dB: 61,
      slope_dB_per_octave: 2,
    });
    expect(resolvedFlanking({ kind: 'none', R500_dB: 61, slope_dB_per_octave: 2 })).toBeUndefined();
  });
});

test('a batt thicker than the cavity fills it, the height of the support included; thickness 0 leaves it empty', () => {
  expect(resolvedFill(0.5)).toMatchObject([{ thickness_m: 0.235 }]);
  expect(resolvedFill(0.5, { support: 'clips', supportHeight_m: 0.015 })).toMatchObject([{ thickness_m: 0.25 }]);
  expect(resolvedFill(0)).toEqual([]);
});

describe('fills that lie on the first', () => {
  const above = (...thicknesses: readonly number[]) => ({
    fillsAbove: thicknesses.map((fillThickness_m) => ({ fill: 'mineral-wool', fillThickness_m })),
  });

  test('follow it from the lower leaf up, as the engine takes them', () => {
    expect(resolvedFill(0.1, above(0.05, 0.02))).toMatchObject([
      { name: 'glass fibre batt', thickness_m: 0.1 },
      { name: 'mineral wool batt', thickness_m: 0.05 },
      { name: 'mineral wool batt', thickness_m: 0.02 },
    ]);
  });

  test('are cut off at the leaf above, and there is none where nothing is left', () => {
    // 235 mm deep.
    expect(resolvedFill(0.2, above(0.05, 0.02))?.map((f) => f.thickness_m)).toEqual([0.2, expect.closeTo(0.035, 12)]);
    expect(resolvedFill(0.3, above(0.05))).toMatchObject([{ thickness_m: 0.235 }]);
  });

  test('lie on the lower leaf where the first is none or of thickness 0', () => {
    for (const none of [resolvedFill(0, above(0, 0.05)), resolvedFill(0.1, { fill: 'none', ...above(0.05) })])
      expect(none).toMatchObject([{ name: 'mineral wool batt', thickness_m: 0.05 }]);
  });

  test('of the same fibre are one fill as thick as both', () => {
    const floor = (patch: object) => resolveStack(withLayer(1, patch), 'both', 'floor');
    const one = predict(floor({ fill: 'mineral-wool', fillThickness_m: 0.12 }));
    const two = predict(floor({ fill: 'mineral-wool', fillThickness_m: 0.07, ...above(0.05) }));
    expect(two.surfaceMass_kg_m2).toBeCloseTo(one.surfaceMass_kg_m2, 9);
    one.R_dB.forEach((R, i) => {
      expect(two.R_dB[i]).toBeCloseTo(R, 3);
    });
    const other = predict(floor({ fill: 'glass-fibre', fillThickness_m: 0.07, ...above(0.05) }));
    expect(other.surfaceMass_kg_m2).toBeCloseTo(one.surfaceMass_kg_m2 - 0.07 * (40 - 14), 9);
  });
});

test.each([
  ['scenario', () => resolveStack(notebook, 'nowhere', 'floor')],
  ['stack', () => resolveStack(notebook, 'both', 'nowhere')],
  ['sheet material', () => resolveStack(withCeiling('nowhere'), 'both', 'floor')],
])('an unknown %s is named', (what, resolve) => {
  expect(resolve).toThrow(new RegExp(`${what} must be .*got "nowhere"`));
});

test('a circle of parents ends in an error, not in a loop', () => {
  const scenarios = notebook.scenarios.map((s) => (s.id === 'heavy' ? { ...s, parent: 'both' } : s));
  expect(() => valuesOf({ ...notebook, scenarios }, 'both')).toThrow(/circle/);
});

function withCeiling(material: string): Notebook {
  return withLayer(2, { sheets: [{ material, thickness_m: 0.0159 }] });
}

function withLayer(index: number, patch: object): Notebook {
  const stacks = notebook.stacks.map((stack) => ({
    ...stack,
    layers: stack.layers.map((layer, i) => (i === index ? { ...layer, ...patch } : layer)),
  }));
  return { ...notebook, stacks } as Notebook;
}

function resolvedFlanking(flanking: Flanking) {
  return resolveStack({ ...notebook, flanking }, 'existing', 'floor').flanking;
}

function resolvedFill(fillThickness_m: number, patch: object = {}) {
  const cavity = resolveStack(withLayer(1, { fillThickness_m, ...patch }), 'existing', 'floor').layers[1];
  return cavity?.kind === 'cavity' ? cavity.fill : undefined;
}
