import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { addFill, removeFill } from '#src/notebook/edits/edit-fills.ts';
import { addSheet } from '#src/notebook/edits/edit-sheets.ts';
import { forkScenario } from '#src/notebook/edits/fork-scenario.ts';
import { insertLeaf } from '#src/notebook/edits/insert-leaf.ts';
import { keepOnlyIn, putInto, takeOutOf, withoutLeftovers } from '#src/notebook/edits/layer-in-scenario.ts';
import { makeParameter } from '#src/notebook/edits/make-parameter.ts';
import { goesWith, removeLayer } from '#src/notebook/edits/remove-layer.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { updateParameter } from '#src/notebook/edits/update-parameter.ts';
import { presenceByScenario, presentLayers } from '#src/notebook/layer-presence.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack, valuesOf } from '#src/notebook/resolve.ts';
import type { CavityLayer, Interlayer, LeafLayer, Notebook } from '#src/notebook/types.ts';
import { notebooks } from '../property/notebook-arbitraries.ts';
import { MAT, SLAB } from './floating-layers.ts';
import { smallNotebook } from './small-notebook.ts';

const CAVITY: CavityLayer = {
  kind: 'cavity',
  id: 'gap',
  name: 'gap',
  joists: 'none',
  depth_m: 0.1,
  joistWidth_m: 0.038,
  joistSpacing_m: 0.406,
  support: 'hangers',
  fill: 'glass-fibre',
  fillThickness_m: 0.05,
};
const WOOL = { fill: 'mineral-wool', fillThickness_m: 0.05 };
const PARTS = [{ layer: 'floating' }, { layer: 'mat' }];

/** What the engine makes of every scenario but one; absent floors are a word. */
function floors(notebook: Notebook, stackId: string, without: string): unknown {
  return notebook.scenarios.filter(({ id }) => id !== without).map(({ id }) => floorOf(notebook, stackId, id));
}

function floorOf(notebook: Notebook, stackId: string, scenarioId: string): unknown {
  try {
    return normaliseConstruction(resolveStack(notebook, scenarioId, stackId));
  } catch {
    return 'nothing left';
  }
}

function mass(notebook: Notebook, scenarioId: string): number {
  return predict(resolveStack(notebook, scenarioId, 'floor')).surfaceMass_kg_m2;
}

describe('a second fill in one scenario only', () => {
  const before = smallNotebook();
  const parts = [{ layer: 'joists', fill: 1 }];
  const added = addFill(before, 'floor', 'joists', WOOL);
  const after = keepOnlyIn(added, 'floor', parts, 'heavy');

  test('is the weight of its 50 mm of 40 kg/m³ there, and leaves every other scenario the floor it was', () => {
    expect(mass(after, 'heavy') - mass(before, 'heavy')).toBeCloseTo(0.05 * 40, 9);
    expect(floors(after, 'floor', 'heavy')).toEqual(floors(before, 'floor', 'heavy'));
    expect(notebookProblems(after)).toEqual([]);
  });

  test('taken out of every scenario leaves the very floor of before, and no parameter behind', () => {
    const removed = withoutLeftovers(after, removeFill(after, 'floor', 'joists', 1), 'floor', parts);
    expect({ ...removed, scenarios: before.scenarios }).toEqual(before);
    expect(removed.scenarios).toEqual(before.scenarios);
  });

  test('a cavity takes three fills on its first, and no more', () => {
    const full = [0, 1].reduce((n) => addFill(n, 'floor', 'joists', WOOL), added);
    expect(notebookProblems(full)).toEqual([]);
    expect(() => addFill(full, 'floor', 'joists', WOOL)).toThrow('fillsAbove must be at most 3 long, got 4');
    expect(() => addFill(before, 'floor', 'deck', WOOL)).toThrow('layer must be a cavity, got a leaf');
    expect(() => removeFill(before, 'floor', 'joists', 0)).toThrow('cavity "joists" must keep a fill');
    expect(() => removeFill(after, 'floor', 'joists', 2)).toThrow(RangeError);
  });
});

describe('a floating slab in one scenario only', () => {
  const before = smallNotebook();
  const added = insertLeaf(before, 'floor', 0, SLAB, MAT);
  const after = keepOnlyIn(added, 'floor', PARTS, 'heavy');

  test('is added load against the reference: its 38 mm of 1760 kg/m³, and no other scenario weighs a gram more', () => {
    expect(mass(after, 'heavy') - mass(before, 'heavy')).toBeCloseTo(0.038 * 1760, 6);
    for (const id of ['existing', 'both']) expect(mass(after, id)).toBe(mass(before, id));
  });

  test('leaves every other scenario the very floor it was, its own forks too', () => {
    expect(floors(after, 'floor', 'heavy')).toEqual(floors(before, 'floor', 'heavy'));
    expect(floorOf(after, 'floor', 'heavy')).toEqual(floorOf(added, 'floor', 'heavy'));
    expect([...presenceByScenario(after, 'floor').values()].map((p) => p.slice(0, 2))).toEqual([
      [false, false],
      [true, true],
      [false, false],
    ]);
  });

  test('is in every fork that is made from it later, and in none made from elsewhere', () => {
    const later = forkScenario(after, 'heavy', { id: 'later', name: 'Later' });
    const further = forkScenario(later, 'later', { id: 'further', name: 'Further' });
    const elsewhere = forkScenario(further, 'both', { id: 'elsewhere', name: 'Elsewhere' });
    for (const id of ['later', 'further'])
      expect(floorOf(elsewhere, 'floor', id)).toEqual(floorOf(after, 'floor', 'heavy'));
    expect(floorOf(elsewhere, 'floor', 'elsewhere')).toEqual(floorOf(before, 'floor', 'both'));
  });

  test('is written by parameters and sparse changes, and reads back', () => {
    expect(notebookProblems(after)).toEqual([]);
    expect(after.parameters.slice(before.parameters.length).map(({ label, value }) => [label, value])).toEqual([
      ['floating slab thickness', 0],
      ['mat thickness', 0],
    ]);
    expect(after.scenarios.map(({ changes }) => changes)).toEqual([
      {},
      { slab: 0.076, 'floating-slab-thickness': 0.038, 'mat-thickness': 0.01 },
      { support: 'clips', 'floating-slab-thickness': 0, 'mat-thickness': 0 },
    ]);
  });

  test('in the base leaves its forks without it', () => {
    const inBase = keepOnlyIn(added, 'floor', PARTS, 'existing');
    expect(floors(inBase, 'floor', 'existing')).toEqual(floors(before, 'floor', 'existing'));
    expect(floorOf(inBase, 'floor', 'existing')).toEqual(floorOf(added, 'floor', 'existing'));
  });

  test('is put into another one as it is, and a slab that is there then is the same', () => {
    const both = putInto(after, 'floor', PARTS, 'both', 'heavy');
    expect(floorOf(both, 'floor', 'both')).toEqual(floorOf(added, 'floor', 'both'));
    expect(floors(both, 'floor', 'both')).toEqual(floors(after, 'floor', 'both'));
  });

  test('taken out again everywhere leaves no parameter behind that told only where it was', () => {
    const gone = withoutLeftovers(after, removeLayer(after, 'floor', 'floating'), 'floor', PARTS);
    expect(gone).toEqual(before);
    const inTwo = putInto(after, 'floor', PARTS, 'both', 'heavy');
    const kept = withoutLeftovers(inTwo, removeLayer(inTwo, 'floor', 'floating'), 'floor', PARTS);
    expect(kept.parameters).toHaveLength(before.parameters.length + 2);
  });

  const keysWithoutSlab = (notebook: Notebook) =>
    withoutLeftovers(notebook, removeLayer(notebook, 'floor', 'floating'), 'floor', PARTS).parameters.map((p) => p.key);
  const KEY = 'floating-slab-thickness';

  test('with a label, a range or a slider of the reader’s own keeps that parameter when it is taken out everywhere', () => {
    expect(keysWithoutSlab(after)).not.toContain(KEY);
    expect(keysWithoutSlab(updateParameter(after, KEY, { label: 'my own topping' }))).toContain(KEY);
    expect(keysWithoutSlab(updateParameter(after, KEY, { max: 0.2 }))).toContain(KEY);
    expect(keysWithoutSlab(updateCell(after, 'knobs', 'parameters', { parameters: [KEY] }))).toContain(KEY);
  });

  test('that is the only one leaves every parameter behind: it told no scenario from another', () => {
    const one = { ...added, scenarios: added.scenarios.slice(0, 1), shown: [], active: 'existing' };
    const linked = makeParameter(one, 'floor', ['layers', 0, 'sheets', 0, 'thickness_m']);
    expect(keysWithoutSlab(linked)).toContain(KEY);
    const own = updateParameter(linked, KEY, { label: 'my own topping', min: 0.02, max: 0.2 });
    expect(keysWithoutSlab(own)).toContain(KEY);
  });

  test('does not lie under a second slab that another scenario gets on top', () => {
    const second = insertLeaf(after, 'floor', 0, { ...SLAB, id: 'second' }, { ...MAT, id: 'second-mat' });
    const mats = normaliseConstruction(resolveStack(second, 'both', 'floor')).interlayers.filter(
      (l) => l.kind === 'mat',
    );
    expect(mats).toMatchObject([{ thickness_m: 0.01, dynamicStiffness_N_m3: 2e7 }]);
  });
});

test('a sheet is added to one scenario, and one is taken out of one', () => {
  const before = smallNotebook();
  const added = addSheet(before, 'floor', 'ceiling', 1, { material: 'gypsum-board', thickness_m: 0.0127 });
  const after = keepOnlyIn(added, 'floor', [{ layer: 'ceiling', sheet: 1 }], 'heavy');
  expect(floors(after, 'floor', 'heavy')).toEqual(floors(before, 'floor', 'heavy'));
  expect(floorOf(after, 'floor', 'heavy')).toEqual(floorOf(added, 'floor', 'heavy'));
  const out = takeOutOf(before, 'floor', [{ layer: 'deck', sheet: 1 }], 'heavy');
  expect(floors(out, 'floor', 'heavy')).toEqual(floors(before, 'floor', 'heavy'));
  expect(normaliseConstruction(resolveStack(out, 'heavy', 'floor')).leaves[0]!.sheets).toHaveLength(1);
});

test('a parameter that other fields read too keeps its value: the layer gets one of its own', () => {
  const base = smallNotebook();
  const [deck, cavity, ceiling] = base.stacks[0]!.layers as [LeafLayer, CavityLayer, LeafLayer];
  const shared = { ...ceiling, sheets: [{ ...ceiling.sheets[0]!, thickness_m: { parameter: 'slab' } }] };
  const before = { ...base, stacks: [{ ...base.stacks[0]!, layers: [deck, cavity, shared] }] };
  const after = takeOutOf(before, 'floor', [{ layer: 'ceiling' }], 'heavy');
  expect(valuesOf(after, 'heavy').slab).toBe(0.076);
  expect(floors(after, 'floor', 'heavy')).toEqual(floors(before, 'floor', 'heavy'));
  expect(presentLayers(resolveStack(after, 'heavy', 'floor'))).toEqual([true, false, false]);
});

test('a slider that did not reach down to nothing does so once its layer is taken out', () => {
  const base = smallNotebook();
  const parameters = base.parameters.map((p) => (p.key === 'slab' ? { ...p, min: 0.03 } : p));
  const after = takeOutOf({ ...base, parameters } as Notebook, 'floor', [{ layer: 'deck', sheet: 0 }], 'heavy');
  expect(after.parameters[0]).toMatchObject({ key: 'slab', min: 0, value: 0.038 });
  expect(notebookProblems(after)).toEqual([]);
});

test('wherever a layer is put into or taken out of one scenario, all others keep the floor they had', () => {
  const anywhere = fc.record({
    notebook: notebooks,
    place: fc.nat(100),
    who: fc.nat(100),
    interlayer: fc.constantFrom<Interlayer>(MAT, CAVITY, { ...CAVITY, joists: 'solid-timber', support: 'clips' }),
  });
  fc.assert(
    fc.property(anywhere, ({ notebook, place, who, interlayer }) => {
      const stack = notebook.stacks[0]!;
      const scenario = notebook.scenarios[who % notebook.scenarios.length]!.id;
      const others = floors(notebook, stack.id, scenario);

      const leaves = (stack.layers.length + 1) / 2;
      const added = insertLeaf(notebook, stack.id, place % (leaves + 1), SLAB, interlayer);
      const parts = [{ layer: SLAB.id }, { layer: interlayer.id }];
      const kept = keepOnlyIn(added, stack.id, parts, scenario);
      expect(notebookProblems(kept)).toEqual([]);
      expect(floors(kept, stack.id, scenario)).toEqual(others);
      expect(floorOf(kept, stack.id, scenario)).toEqual(floorOf(added, stack.id, scenario));

      const index = place % stack.layers.length;
      const layer = stack.layers[index]!;
      const companion = goesWith(stack.layers, index);
      const out = takeOutOf(
        notebook,
        stack.id,
        [layer, ...(companion ? [companion] : [])].map(({ id }) => ({ layer: id })),
        scenario,
      );
      expect(notebookProblems(out)).toEqual([]);
      expect(floors(out, stack.id, scenario)).toEqual(others);
      if (layer.kind === 'leaf' && stack.layers.length > 1)
        expect(floorOf(out, stack.id, scenario)).toEqual(
          floorOf(removeLayer(notebook, stack.id, layer.id), stack.id, scenario),
        );
    }),
    { numRuns: 300, seed: 20261128 },
  );
});
