import { describe, expect, test } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { addCell } from '#src/notebook/edits/add-cell.ts';
import { clearStackField } from '#src/notebook/edits/clear-stack-field.ts';
import { duplicateCell } from '#src/notebook/edits/duplicate-cell.ts';
import { duplicateScenario } from '#src/notebook/edits/duplicate-scenario.ts';
import { addOwnMaterial, removeOwnMaterial, updateOwnMaterial } from '#src/notebook/edits/edit-materials.ts';
import { addSheet, moveSheet, removeSheet } from '#src/notebook/edits/edit-sheets.ts';
import { addStack, removeStack } from '#src/notebook/edits/edit-stacks.ts';
import { fixField } from '#src/notebook/edits/fix-field.ts';
import { foldCell } from '#src/notebook/edits/fold-cell.ts';
import { forkScenario } from '#src/notebook/edits/fork-scenario.ts';
import { insertLeaf } from '#src/notebook/edits/insert-leaf.ts';
import { linkField } from '#src/notebook/edits/link-field.ts';
import { makeLiteral } from '#src/notebook/edits/make-literal.ts';
import { makeParameter } from '#src/notebook/edits/make-parameter.ts';
import { mergeAllChanges, mergeChange } from '#src/notebook/edits/merge-change.ts';
import { moveCell } from '#src/notebook/edits/move-cell.ts';
import { moveLayer } from '#src/notebook/edits/move-layer.ts';
import { moveScenario } from '#src/notebook/edits/move-scenario.ts';
import { removeCell } from '#src/notebook/edits/remove-cell.ts';
import { removeLayer } from '#src/notebook/edits/remove-layer.ts';
import { removeParameter } from '#src/notebook/edits/remove-parameter.ts';
import { removeScenario } from '#src/notebook/edits/remove-scenario.ts';
import { replaceLayer } from '#src/notebook/edits/replace-layer.ts';
import { resetParameter } from '#src/notebook/edits/reset-parameter.ts';
import { setActive } from '#src/notebook/edits/set-active.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setReference } from '#src/notebook/edits/set-reference.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { showScenario } from '#src/notebook/edits/show-scenario.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { updateParameter } from '#src/notebook/edits/update-parameter.ts';
import { SUPPORT_LABELS } from '#src/notebook/field-specs.ts';
import { findCell, findParameter, findScenario } from '#src/notebook/find.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack, valuesOf } from '#src/notebook/resolve.ts';
import type { LeafLayer, MatLayer, Notebook, Parameter } from '#src/notebook/types.ts';
import { smallNotebook } from './small-notebook.ts';

const notebook = smallNotebook();
const changes = (n: Notebook, id: string) => findScenario(n, id).changes;
const kinds = (n: Notebook) => n.stacks[0]!.layers.map((l) => l.id);
const inBase = setActive(notebook, 'existing');

const MAT: MatLayer = {
  kind: 'mat',
  id: 'mat',
  name: 'mat',
  thickness_m: 0.01,
  dynamicStiffness_N_m3: 1e7,
  lossFactor: 0.1,
};
const SUPPORTS = Object.entries(SUPPORT_LABELS).map(([value, label]) => ({ value, label }));

const SLAB: LeafLayer = {
  kind: 'leaf',
  id: 'slab',
  name: 'slab',
  contact: 'loose',
  sheets: [{ material: 'concrete', thickness_m: 0.05 }],
};

describe('setting a parameter', () => {
  test('writes a change of the active fork and leaves the base alone', () => {
    const next = setParameter(notebook, 'slab', 0.05);
    expect(changes(next, 'heavy')).toEqual({ slab: 0.05 });
    expect(findParameter(next, 'slab').value).toBe(0.038);
  });

  test('writes the base value while the base is active; a fork keeps its own', () => {
    const next = setParameter(inBase, 'slab', 0.05);
    expect(findParameter(next, 'slab').value).toBe(0.05);
    expect(valuesOf(next, 'heavy').slab).toBe(0.076);
  });

  test('takes a change out when it equals the inherited value', () => {
    expect(changes(setParameter(notebook, 'slab', 0.038), 'heavy')).toEqual({});
  });

  test('dragging the base past the value of a fork does not bind the fork to it', () => {
    const passed = [0.07, 0.076, 0.08].reduce((n, v) => setParameter(n, 'slab', v), inBase);
    expect(valuesOf(passed, 'heavy').slab).toBe(0.076);
  });

  test.each([
    ['slab', 0.2, RangeError],
    ['slab', Number.NaN, RangeError],
    ['slab', 'thick', TypeError],
    ['support', 'glue', RangeError],
    ['support', 3, TypeError],
    ['nowhere', 3, RangeError],
  ] as const)('refuses %s = %s', (key, value, error) => {
    expect(() => setParameter(notebook, key, value)).toThrow(error);
  });

  test('reset shows the parent value again', () => {
    expect(valuesOf(resetParameter(notebook, 'slab'), 'heavy').slab).toBe(0.038);
  });
});

describe('scenarios', () => {
  test('a fork starts equal to its parent, stands after its other forks, is shown and active', () => {
    const next = forkScenario(notebook, 'heavy', { id: 'f', name: 'Forked' });
    expect(next.scenarios.map((s) => s.id)).toEqual(['existing', 'heavy', 'both', 'f']);
    expect(next.shown).toEqual(['existing', 'heavy', 'both', 'f']);
    expect(next.active).toBe('f');
    expect(valuesOf(next, 'f')).toEqual(valuesOf(notebook, 'heavy'));
    expect(changes(next, 'f')).toEqual({});
  });

  test('a newer fork stands below the older ones of its parent, and below the forks of these', () => {
    const fork = (from: Notebook, parent: string, id: string) => forkScenario(from, parent, { id, name: id });
    const next = fork(fork(fork(notebook, 'heavy', 'f'), 'heavy', 'g'), 'both', 'h');
    expect(next.scenarios.map((s) => s.id)).toEqual(['existing', 'heavy', 'both', 'h', 'f', 'g']);
    expect(fork(next, 'existing', 'i').scenarios.at(-1)!.id).toBe('i');
    const moved = moveScenario(next, 'g', 1);
    expect(
      fork(moved, 'g', 'j')
        .scenarios.map((s) => s.id)
        .slice(0, 4),
    ).toEqual(['existing', 'g', 'j', 'heavy']);
  });

  test('removing a scenario keeps the values of its forks and repairs active and reference', () => {
    const next = removeScenario(setReference(notebook, 'heavy'), 'heavy');
    expect(valuesOf(next, 'both')).toEqual(valuesOf(notebook, 'both'));
    expect(findScenario(next, 'both')).toMatchObject({
      parent: 'existing',
      changes: { slab: 0.076, support: 'clips' },
    });
    expect(next).toMatchObject({ active: 'existing', reference: 'existing', shown: ['existing', 'both'] });
  });

  test('the base cannot be removed or moved from the first place', () => {
    expect(() => removeScenario(notebook, 'existing')).toThrow(/base/);
    expect(() => moveScenario(notebook, 'heavy', 0)).toThrow(/first/);
    expect(() => moveScenario(notebook, 'existing', 1)).toThrow(/first/);
  });

  test('reordering carries the shown ones along', () => {
    const next = moveScenario(notebook, 'both', 1);
    expect(next.scenarios.map((s) => s.id)).toEqual(['existing', 'both', 'heavy']);
    expect(next.shown).toEqual(['existing', 'both', 'heavy']);
  });

  test('hiding the active scenario makes another one active; the last one stays', () => {
    const one = showScenario(showScenario(notebook, 'heavy', false), 'both', false);
    expect(one).toMatchObject({ shown: ['existing'], active: 'existing' });
    expect(showScenario(one, 'existing', false)).toBe(one);
    expect(showScenario(one, 'both', true).shown).toEqual(['existing', 'both']);
    expect(setActive(one, 'heavy')).toMatchObject({ active: 'heavy', shown: ['existing', 'heavy'] });
  });

  test('a merged change holds for the parent and no longer stands in the fork', () => {
    const next = mergeChange(notebook, 'heavy', 'slab');
    expect(findParameter(next, 'slab').value).toBe(0.076);
    expect(changes(next, 'heavy')).toEqual({});
    const both = mergeAllChanges(notebook, 'both');
    expect(changes(both, 'heavy')).toEqual({ slab: 0.076, support: 'clips' });
    expect(() => mergeChange(notebook, 'existing', 'slab')).toThrow(/base/);
    expect(() => mergeChange(notebook, 'heavy', 'density')).toThrow(/density/);
  });

  test('an independent copy hangs on the base with every difference from it', () => {
    const next = duplicateScenario(notebook, 'both', { id: 'copy', name: 'Copy' });
    expect(findScenario(next, 'copy')).toMatchObject({
      parent: 'existing',
      changes: { slab: 0.076, support: 'clips' },
    });
    const later = setParameter(next, 'slab', 0.09, 'heavy');
    expect(valuesOf(later, 'both').slab).toBe(0.09);
    expect(valuesOf(later, 'copy').slab).toBe(0.076);
  });
});

describe('cells', () => {
  const ids = (n: Notebook) => n.cells.map((c) => c.id);

  test('are added, moved, duplicated, folded and removed', () => {
    expect(ids(addCell(notebook, { kind: 'stack', id: 'new', folded: false, stack: 'floor' }, 1))[1]).toBe('new');
    expect(ids(moveCell(notebook, 'ratings', 0)).slice(0, 2)).toEqual(['ratings', 'intro']);
    expect(ids(moveCell(notebook, 'intro', 5)).at(-1)).toBe('intro');
    expect(ids(duplicateCell(notebook, 'intro', 'intro-2')).slice(0, 2)).toEqual(['intro', 'intro-2']);
    expect(findCell(foldCell(notebook, 'intro', true), 'intro').folded).toBe(true);
    expect(ids(removeCell(notebook, 'intro'))).not.toContain('intro');
    expect(() => moveCell(notebook, 'intro', 6)).toThrow(RangeError);
  });

  test('an update replaces parts and refuses another kind', () => {
    expect(findCell(updateCell(notebook, 'intro', 'commentary', { text: 'x' }), 'intro')).toMatchObject({ text: 'x' });
    expect(() => updateCell(notebook, 'intro', 'ratings', { title: 'x' })).toThrow(/commentary/);
  });
});

describe('setting a field of a stack', () => {
  const PLYWOOD = ['layers', 0, 'sheets', 1, 'thickness_m'] as const;
  const CEILING_DENSITY = ['layers', 2, 'sheets', 0, 'density_kg_m3'] as const;

  test('a linked field writes its parameter in the active scenario', () => {
    const next = setStackField(notebook, 'floor', ['layers', 1, 'support'], 'clips');
    expect(next.stacks).toBe(notebook.stacks);
    expect(changes(next, 'heavy')).toEqual({ slab: 0.076, support: 'clips' });
  });

  test('a literal changes in place while the base is active', () => {
    const next = setStackField(inBase, 'floor', PLYWOOD, 0.025);
    expect(next.parameters).toBe(inBase.parameters);
    expect(resolveStack(next, 'both', 'floor').layers[0]).toMatchObject({ sheets: [{}, { thickness_m: 0.025 }] });
  });

  test('a literal becomes a parameter while a fork is active, so that only the fork changes', () => {
    const next = setStackField(notebook, 'floor', PLYWOOD, 0.18);
    expect(resolveStack(next, 'existing', 'floor')).toEqual(resolveStack(notebook, 'existing', 'floor'));
    expect(resolveStack(next, 'heavy', 'floor').layers[0]).toMatchObject({ sheets: [{}, { thickness_m: 0.18 }] });
    expect(next.parameters.at(-1)).toMatchObject({
      key: 'deck-sheet-2-thickness',
      label: 'deck sheet 2 thickness',
      quantity: 'length',
      value: 0.019,
      max: 0.18,
    });
  });

  test('an absent density becomes a parameter that starts at the density of the material', () => {
    const next = setStackField(notebook, 'floor', CEILING_DENSITY, 900);
    expect(next.parameters.at(-1)).toMatchObject({ value: 700 });
    expect(resolveStack(next, 'existing', 'floor').layers[2]).toMatchObject({ sheets: [{ density_kg_m3: 700 }] });
    expect(resolveStack(next, 'both', 'floor').layers[2]).toMatchObject({ sheets: [{ density_kg_m3: 900 }] });
  });

  describe('a field that is absent, set in a fork', () => {
    const { stacks, scenarios } = smallNotebook();
    const supports = { ...findParameter(notebook, 'support'), choices: SUPPORTS } as Parameter;
    const varied: Notebook = {
      ...notebook,
      parameters: notebook.parameters.map((p) => (p.key === 'support' ? supports : p)),
      scenarios: [
        ...scenarios,
        { id: 'soft', name: '', mark: 3, parent: 'existing', changes: { support: 'resilient-channel' } },
        { id: 'hung', name: '', mark: 4, parent: 'soft', changes: { support: 'hangers' } },
        { id: 'apart', name: '', mark: 5, parent: 'soft', changes: { support: 'separate-joists' } },
      ],
      stacks,
    };

    test.each([
      ['supportStiffness_N_m', 3e5],
      ['supportHeight_m', 0.05],
      ['supportPointSpacing_m', 0.8],
      ['supportLineSpacing_m', 0.5],
      ['hangerFrequency_Hz', 5],
    ])('%s keeps what is usual for its kind of support in every other scenario', (name, value) => {
      const next = setStackField(varied, 'floor', ['layers', 1, name], value);
      expect(notebookProblems(next)).toEqual([]);
      for (const { id } of varied.scenarios) {
        const before = predict(resolveStack(varied, id, 'floor'));
        const after = predict(resolveStack(next, id, 'floor'));
        if (id === 'heavy') expect(resolveStack(next, id, 'floor').layers[1]).toMatchObject({ [name]: value });
        else expect(largestDifference(after.R_dB, before.R_dB)).toBeLessThan(1e-6);
      }
    });

    test('is told as a change of that fork alone where the base does not read it', () => {
      const soft = { ...varied, active: 'soft' };
      const next = setStackField(soft, 'floor', ['layers', 1, 'supportStiffness_N_m'], 3e5);
      const { key, value } = next.parameters.at(-1)!;
      expect(value).not.toBe(3e5);
      expect(next.scenarios.filter(({ changes }) => key in changes).map(({ id }) => id)).toContain('soft');
      for (const { id, changes } of next.scenarios) {
        if (id !== 'soft' && changes[key] !== undefined) expect(changes[key]).not.toBe(3e5);
      }
    });

    test('a density keeps that of the material where the material varies', () => {
      const mixed = makeParameter(varied, 'floor', ['layers', 2, 'sheets', 0, 'material']);
      const osb = setParameter(mixed, 'ceiling-material', 'osb', 'soft');
      const next = setStackField(osb, 'floor', CEILING_DENSITY, 900);
      const density = (id: string) => resolveStack(next, id, 'floor').layers[2];
      expect(density('existing')).toMatchObject({ sheets: [{ density_kg_m3: 700 }] });
      expect(density('soft')).toMatchObject({ sheets: [{ density_kg_m3: 600 }] });
      expect(density('heavy')).toMatchObject({ sheets: [{ density_kg_m3: 900 }] });
    });
  });

  test('the same literal changes nothing, and an optional one can be taken out', () => {
    expect(setStackField(notebook, 'floor', PLYWOOD, 0.019)).toBe(notebook);
    const set = setStackField(inBase, 'floor', CEILING_DENSITY, 900);
    expect(clearStackField(set, 'floor', CEILING_DENSITY).stacks).toEqual(notebook.stacks);
    expect(() => clearStackField(set, 'floor', PLYWOOD)).toThrow(RangeError);
  });

  test.each([
    [PLYWOOD, -1],
    [PLYWOOD, Number.NaN],
    [PLYWOOD, 'thick'],
    [['layers', 1, 'joists'], 'beams'],
    [['layers', 1, 'fill'], 'feathers'],
    [['layers', 7, 'depth_m'], 1],
    [['layers', 0, 'depth_m'], 1],
    [['name'], 'x'],
    [['__proto__'], 'x'],
    [[], 'x'],
  ] as const)('refuses %s = %s', (path, value) => {
    expect(() => setStackField(inBase, 'floor', path, value)).toThrow(RangeError);
  });

  test('a literal becomes a parameter and back without changing what is computed', () => {
    const linked = makeParameter(notebook, 'floor', PLYWOOD, { label: 'Deck' });
    expect(resolveStack(linked, 'both', 'floor')).toEqual(resolveStack(notebook, 'both', 'floor'));
    expect(linked.parameters.at(-1)).toMatchObject({ key: 'deck', label: 'Deck' });
    expect(makeLiteral(linked, 'floor', PLYWOOD).stacks).toEqual(notebook.stacks);
    expect(() => makeParameter(linked, 'floor', PLYWOOD)).toThrow(/literal/);
    expect(() => makeLiteral(notebook, 'floor', PLYWOOD)).toThrow(/linked/);
  });

  test('unlinking keeps the value of the active scenario', () => {
    const next = makeLiteral(notebook, 'floor', ['layers', 0, 'sheets', 0, 'thickness_m']);
    expect(resolveStack(next, 'existing', 'floor').layers[0]).toMatchObject({ sheets: [{ thickness_m: 0.076 }, {}] });
  });

  test('fixing the last field of a parameter takes the parameter out, in every scenario and cell', () => {
    const thickness = ['layers', 0, 'sheets', 0, 'thickness_m'];
    const fixed = fixField(notebook, 'floor', thickness);
    expect(fixed.parameters.map((p) => p.key)).not.toContain('slab');
    expect(fixed.scenarios.some(({ changes }) => 'slab' in changes)).toBe(false);
    expect(notebookProblems(fixed)).toEqual([]);
    expect(resolveStack(fixed, 'existing', 'floor')).toEqual(
      resolveStack(makeLiteral(notebook, 'floor', thickness), 'existing', 'floor'),
    );
    const twice = linkField(notebook, 'floor', PLYWOOD, 'slab');
    expect(fixField(twice, 'floor', thickness).parameters).toEqual(twice.parameters);
  });

  test('a field links only to a parameter that fits', () => {
    const linked = linkField(notebook, 'floor', PLYWOOD, 'slab');
    expect(resolveStack(linked, 'heavy', 'floor').layers[0]).toMatchObject({ sheets: [{}, { thickness_m: 0.076 }] });
    expect(() => linkField(notebook, 'floor', PLYWOOD, 'density')).toThrow(/length/);
    expect(() => linkField(notebook, 'floor', PLYWOOD, 'support')).toThrow(/length/);
    expect(() => linkField(notebook, 'floor', ['layers', 1, 'joists'], 'support')).toThrow(/choices/);
  });
});

describe('layers and sheets', () => {
  test('a leaf comes with an interlayer, on top, between and below', () => {
    const at = (n: number) => kinds(insertLeaf(notebook, 'floor', n, SLAB, MAT));
    expect(at(0)).toEqual(['slab', 'mat', 'deck', 'joists', 'ceiling']);
    expect(at(1)).toEqual(['deck', 'mat', 'slab', 'joists', 'ceiling']);
    expect(at(2)).toEqual(['deck', 'joists', 'ceiling', 'mat', 'slab']);
    expect(() => at(3)).toThrow(RangeError);
  });

  test('a leaf goes with one interlayer, a mat rather than a cavity', () => {
    const three = insertLeaf(notebook, 'floor', 0, SLAB, MAT);
    const without = (id: string) => kinds(removeLayer(three, 'floor', id));
    expect(without('slab')).toEqual(['deck', 'joists', 'ceiling']);
    expect(without('deck')).toEqual(['slab', 'joists', 'ceiling']);
    expect(without('ceiling')).toEqual(['slab', 'mat', 'deck']);
  });

  test('without their interlayer two leaves lie on each other', () => {
    const next = removeLayer(notebook, 'floor', 'joists');
    expect(next.stacks[0]!.layers).toMatchObject([{ id: 'deck', sheets: [{}, {}, { material: 'gypsum-board' }] }]);
    expect(() => removeLayer(next, 'floor', 'deck')).toThrow(/keep a leaf/);
  });

  test('leaves change places with leaves, interlayers with interlayers', () => {
    const three = insertLeaf(notebook, 'floor', 0, SLAB, MAT);
    expect(kinds(moveLayer(three, 'floor', 'slab', 1))).toEqual(['deck', 'mat', 'slab', 'joists', 'ceiling']);
    expect(kinds(moveLayer(three, 'floor', 'joists', -1))).toEqual(['slab', 'joists', 'deck', 'mat', 'ceiling']);
    expect(moveLayer(three, 'floor', 'slab', -1)).toBe(three);
  });

  test('a cavity may become a mat, never a leaf', () => {
    expect(kinds(replaceLayer(notebook, 'floor', 'joists', MAT))).toEqual(['deck', 'mat', 'ceiling']);
    expect(() => replaceLayer(notebook, 'floor', 'joists', SLAB)).toThrow(/mat or a cavity/);
  });

  test('sheets are added, moved and removed; a leaf keeps one', () => {
    const sheet = { material: 'osb', thickness_m: 0.018 };
    const materials = (n: Notebook) =>
      (n.stacks[0]!.layers[0] as LeafLayer).sheets.map((s) => (typeof s.material === 'string' ? s.material : ''));
    const added = addSheet(notebook, 'floor', 'deck', 2, sheet);
    expect(materials(added)).toEqual(['cellular-concrete', 'plywood', 'osb']);
    expect(materials(moveSheet(added, 'floor', 'deck', 2, 0))).toEqual(['osb', 'cellular-concrete', 'plywood']);
    expect(removeSheet(added, 'floor', 'deck', 2)).toEqual(notebook);
    expect(() => removeSheet(notebook, 'floor', 'ceiling', 0)).toThrow(/keep a sheet/);
    expect(() => addSheet(notebook, 'floor', 'joists', 0, sheet)).toThrow(/leaf/);
  });

  test('a stack goes with the cells that show it; the last one stays', () => {
    const two = addStack(notebook, { ...notebook.stacks[0]!, id: 'second' });
    expect(removeStack(two, 'floor').cells.map((c) => c.id)).toEqual(['intro', 'knobs']);
    expect(() => removeStack(notebook, 'floor')).toThrow(/keep a stack/);
    expect(() => addStack(notebook, notebook.stacks[0]!)).toThrow(/new/);
  });
});

describe('parameters and materials', () => {
  test('only an unused parameter can be removed; it leaves cells and changes as well', () => {
    const set = setParameter(notebook, 'spare', 0.2);
    const next = removeParameter(set, 'spare');
    expect(changes(next, 'heavy')).toEqual({ slab: 0.076 });
    expect(findCell(next, 'knobs')).toMatchObject({ parameters: ['slab'] });
    expect(() => removeParameter(notebook, 'slab')).toThrow(/deck sheet 1 thickness/);
  });

  test('a range must hold the values of every scenario and stay within what the fields accept', () => {
    expect(findParameter(updateParameter(notebook, 'slab', { max: 0.3, label: 'slab' }), 'slab')).toMatchObject({
      max: 0.3,
      label: 'slab',
    });
    expect(() => updateParameter(notebook, 'slab', { max: 0.05 })).toThrow(/slab thickness must be/);
    expect(() => updateParameter(notebook, 'slab', { max: 5 })).toThrow(/within/);
    expect(() => updateParameter(notebook, 'slab', { min: 1 })).toThrow(/“to” must be at least “from”/);
    expect(() => updateParameter(notebook, 'slab', { step: 0 })).toThrow(/step/);
  });

  test('own materials have keys of their own and stay while something names them', () => {
    const [own] = notebook.materials;
    const used = setStackField(inBase, 'floor', ['layers', 2, 'sheets', 0, 'material'], 'own-board');
    expect(() => addOwnMaterial(notebook, own!)).toThrow(/new/);
    expect(() => addOwnMaterial(notebook, { ...own!, key: 'plywood' })).toThrow(/new/);
    expect(addOwnMaterial(notebook, { ...own!, key: 'other' }).materials).toHaveLength(2);
    expect(updateOwnMaterial(notebook, { ...own!, name: 'renamed' }).materials[0]!.name).toBe('renamed');
    expect(removeOwnMaterial(notebook, 'sheet', 'own-board').materials).toEqual([]);
    expect(() => removeOwnMaterial(used, 'sheet', 'own-board')).toThrow(/Floor/);
  });

  test('own coverings too, and a sheet of the same key is another material', () => {
    const numbers = { surfaceMass_kg_m2: 7, thickness_m: 0.005, contactStiffness_N_m: 1e6 };
    const rubber = { kind: 'covering', key: 'own-board', name: 'rubber', source: 'invented', ...numbers } as const;
    const added = addOwnMaterial(inBase, rubber);
    expect(() => addOwnMaterial(added, rubber)).toThrow(/new/);
    expect(() => addOwnMaterial(inBase, { ...rubber, key: 'carpet' })).toThrow(/new/);
    const used = setStackField(added, 'floor', ['covering'], 'own-board');
    expect(() => removeOwnMaterial(used, 'covering', 'own-board')).toThrow(/Floor.*covering/);
    expect(removeOwnMaterial(used, 'sheet', 'own-board').materials).toEqual([rubber]);
    expect(() => setStackField(inBase, 'floor', ['covering'], 'own-board')).toThrow(/covering must be one of/);
  });
});

function largestDifference(a: readonly number[], b: readonly number[]): number {
  return Math.max(...a.map((value, i) => Math.abs(value - b[i]!)));
}
