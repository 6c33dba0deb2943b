import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { whatGoes } from '#cells/stack/what-goes.ts';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { insertLeaf } from '#src/notebook/edits/insert-leaf.ts';
import { keepOnlyIn, takeOutOf } from '#src/notebook/edits/layer-in-scenario.ts';
import { goesWith } from '#src/notebook/edits/remove-layer.ts';
import { findStack } from '#src/notebook/find.ts';
import { presentLayers } from '#src/notebook/layer-presence.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { practiceRoom } from '../../browser/practice-room.ts';
import { MAT, SLAB } from '../../notebook/floating-layers.ts';
import { notebooks } from '../../property/notebook-arbitraries.ts';

const JOISTS_GO =
  '“joists” goes with it: the joists, the fill between them and the support of the ceiling. Joists are reckoned only between two leaves, so that the floor is computed without any.';

const said = (notebook: Notebook, layer: string, reach: 'this' | 'every' = 'this') =>
  whatGoes(notebook, findStack(notebook, 'floor'), { layer }, reach);

describe('with a floating slab in “Ceiling on channel” only', () => {
  const both = insertLeaf(practiceRoom(), 'floor', 0, SLAB, MAT);
  const only = keepOnlyIn(both, 'floor', [{ layer: 'floating' }, { layer: 'mat' }], 'hung');
  const slab: Notebook = { ...only, active: 'slab' };
  const hung: Notebook = { ...only, active: 'hung' };

  test('the deck of another scenario takes the joists, and no mat that is not there', () => {
    expect(said(slab, 'deck')).toEqual([JOISTS_GO]);
    const without = takeOutOf(slab, 'floor', [{ layer: 'deck' }, { layer: 'mat' }], 'slab');
    expect(normaliseConstruction(resolveStack(without, 'slab', 'floor')).interlayers).toEqual([]);
  });

  test('its own deck takes the mat, and the joists stay', () => {
    expect(said(hung, 'deck')).toEqual(['“mat” goes with it.']);
  });

  test('a deck that goes from every scenario takes from each what it has', () => {
    expect(said(slab, 'deck', 'every')).toEqual([JOISTS_GO, 'In “Ceiling on channel”: “mat” goes with it.']);
    expect(said(hung, 'deck', 'every')).toEqual([
      '“mat” goes with it.',
      `In “As built”, “Slab on top” and “Both”: ${JOISTS_GO}`,
    ]);
  });

  test('joists that two scenarios lose with different things beside them are explained once', () => {
    const deckless = takeOutOf(slab, 'floor', [{ layer: 'deck' }], 'hung');
    const lost = 'the joists, the fill between them and the support of the ceiling.';
    expect(said(deckless, 'ceiling', 'every')).toEqual([
      `“joists” goes with it: ${lost}`,
      `In “Ceiling on channel”: “mat” and “joists” go with it: ${lost}`,
      'Joists are reckoned only between two leaves: a floor that keeps one leaf is computed without any.',
    ]);
    expect(said(deckless, 'ceiling')).toEqual([JOISTS_GO]);
  });

  test('a layer that this scenario has not takes nothing from it', () => {
    expect(said(slab, 'floating', 'every')).toEqual(['In “Ceiling on channel”: “mat” goes with it.']);
    expect(said(slab, 'mat', 'every')).toEqual([
      'In “Ceiling on channel”: “floating slab” and “deck” then lie on each other.',
    ]);
  });
});

test('what lies on each other without a cavity is the next leaf that is there, not one that is absent', () => {
  const three = insertLeaf(practiceRoom({ active: 'base' }), 'floor', 1, { ...SLAB, name: 'deck below' }, MAT);
  const without = takeOutOf(three, 'floor', [{ layer: 'floating' }, { layer: 'mat' }], 'base');
  expect(said(without, 'joists')).toEqual(['“deck” and “ceiling” then lie on each other, and the joists are gone.']);
});

test('the last sheet of a leaf takes the leaf, and the joists over it', () => {
  const notebook = practiceRoom({ active: 'base' });
  const stack = findStack(notebook, 'floor');
  // The slab is absent in the base, and a sheet only in the others.
  expect(whatGoes(notebook, stack, { layer: 'deck', sheet: 1 }, 'this')[0]).toContain(
    '“deck” and “joists” go with it:',
  );
  expect(whatGoes(notebook, stack, { layer: 'deck', sheet: 0 }, 'this')).toEqual([]);
  expect(whatGoes({ ...notebook, active: 'slab' }, stack, { layer: 'deck', sheet: 1 }, 'this')).toEqual([]);
});

test('whatever leaf is removed: the layers that are named are those that the active scenario then lacks', () => {
  fc.assert(
    fc.property(notebooks, fc.nat(100), (notebook, at) => {
      const stack = notebook.stacks[0]!;
      const index = 2 * (at % ((stack.layers.length + 1) / 2));
      const layer = stack.layers[index]!;
      const parts = [layer, ...[goesWith(stack.layers, index) ?? []].flat()].map(({ id }) => ({ layer: id }));
      const isThere = (n: Notebook) => presentLayers(resolveStack(n, n.active, stack.id));
      const after = isThere(takeOutOf(notebook, stack.id, parts, notebook.active));
      const lost = stack.layers.filter((_, i) => i !== index && isThere(notebook)[i] && !after[i]);
      const [sentence = ''] = whatGoes(notebook, stack, { layer: layer.id }, 'this');
      const named = sentence.replace(/ goe?s? with it.*/, '');
      expect(named.split(/, | and (?=“)/).filter(Boolean)).toEqual(lost.map(({ name }) => `“${name}”`));
    }),
    { numRuns: 200, seed: 20261128 },
  );
});
