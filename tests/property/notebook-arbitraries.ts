/** Sound notebooks and edits of every kind, for property tests. */
import fc from 'fast-check';
import { addCell } from '#src/notebook/edits/add-cell.ts';
import { addParameter } from '#src/notebook/edits/add-parameter.ts';
import { clearStackField } from '#src/notebook/edits/clear-stack-field.ts';
import { duplicateCell } from '#src/notebook/edits/duplicate-cell.ts';
import { duplicateScenario } from '#src/notebook/edits/duplicate-scenario.ts';
import { addFill, removeFill } from '#src/notebook/edits/edit-fills.ts';
import { addLeak, removeLeak, renameLeak } from '#src/notebook/edits/edit-leaks.ts';
import { addOwnMaterial, removeOwnMaterial, updateOwnMaterial } from '#src/notebook/edits/edit-materials.ts';
import { addSheet, moveSheet, removeSheet } from '#src/notebook/edits/edit-sheets.ts';
import { addStack, removeStack, renameStack } from '#src/notebook/edits/edit-stacks.ts';
import { addWall, removeWall, updateWall } from '#src/notebook/edits/edit-walls.ts';
import { fixField } from '#src/notebook/edits/fix-field.ts';
import { foldCell } from '#src/notebook/edits/fold-cell.ts';
import { forkScenario } from '#src/notebook/edits/fork-scenario.ts';
import { insertLeaf } from '#src/notebook/edits/insert-leaf.ts';
import { keepOnlyIn, putInto, takeOutOf } from '#src/notebook/edits/layer-in-scenario.ts';
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
import { renameLayer } from '#src/notebook/edits/rename-layer.ts';
import { renameScenario } from '#src/notebook/edits/rename-scenario.ts';
import { replaceLayer } from '#src/notebook/edits/replace-layer.ts';
import { resetParameter } from '#src/notebook/edits/reset-parameter.ts';
import { setActive } from '#src/notebook/edits/set-active.ts';
import { setFlanking } from '#src/notebook/edits/set-flanking.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setReference } from '#src/notebook/edits/set-reference.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import { setUnits } from '#src/notebook/edits/set-units.ts';
import { showScenario } from '#src/notebook/edits/show-scenario.ts';
import { updateCell } from '#src/notebook/edits/update-cell.ts';
import { updateParameter } from '#src/notebook/edits/update-parameter.ts';
import { useOwnMaterial } from '#src/notebook/edits/use-own-material.ts';
import { fieldPaths, fieldSpec, getField } from '#src/notebook/field-path.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import type { FlankingWall, Notebook, Parameter, ParameterValue, Stack, StackLeak } from '#src/notebook/types.ts';
import { isReference } from '#src/notebook/values.ts';
import { smallNotebook } from '../notebook/small-notebook.ts';

/** Picks from what a notebook has; every call takes the next of a row of numbers in [0, 1). */
export interface Picks {
  readonly number: () => number;
  readonly of: <T>(list: readonly T[]) => T;
  readonly index: (length: number) => number;
  readonly id: (notebook: Notebook) => string;
}

export type PickedEdit = (notebook: Notebook, pick: Picks) => Notebook;

export function picksFrom(seed: number): Picks {
  let state = seed >>> 0;
  // A linear congruential generator (constants of Numerical Recipes) is random enough to pick from lists.
  const number = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const index = (length: number) => Math.floor(number() * length);
  return { number, index, of: (list) => list[index(list.length)]!, id: () => freshId(number) };
}

function acceptedValue(parameter: Parameter, pick: Picks): ParameterValue {
  if ('choices' in parameter) return pick.of(parameter.choices).value;
  return parameter.min + pick.number() * (parameter.max - parameter.min);
}

function withFieldOf(
  kind: 'linked' | 'literal' | 'any',
  edit: (n: Notebook, s: Stack, p: readonly (string | number)[], pick: Picks) => Notebook,
): PickedEdit {
  return (notebook, pick) => {
    const stack = pick.of(notebook.stacks);
    const paths = fieldPaths(stack).filter((path) => {
      const field = getField(stack, path);
      const linked = field !== undefined && isReference(field);
      return kind === 'any' || linked === (kind === 'linked');
    });
    return paths.length === 0 ? notebook : edit(notebook, stack, pick.of(paths), pick);
  };
}

function acceptedLiteral(
  notebook: Notebook,
  stack: Stack,
  path: readonly (string | number)[],
  pick: Picks,
): ParameterValue {
  const field = getField(stack, path);
  if (field !== undefined && isReference(field))
    return acceptedValue(notebook.parameters.find((p) => p.key === field.parameter)!, pick);
  const spec = fieldSpec(stack, path);
  if (spec.type === 'choice') return pick.of(spec.choices(notebook)).value;
  return spec.min + pick.number() * (spec.max - spec.min);
}

const scenarioId = (notebook: Notebook, pick: Picks) => pick.of(notebook.scenarios).id;
const leafOf = (stack: Stack, pick: Picks) => pick.of(stack.layers.filter((l) => l.kind === 'leaf'));

function leakOf(notebook: Notebook, pick: Picks): { stack: Stack; leak: StackLeak | undefined } {
  const stack = pick.of(notebook.stacks);
  return { stack, leak: pick.of(stack.leaks ?? []) };
}

function someWall(notebook: Notebook, pick: Picks): FlankingWall {
  const wall = {
    id: pick.id(notebook),
    name: 'wall',
    junctionLength_m: 4,
    height_m: 2.5,
    junction: pick.of(['cross', 'tee', 'light-facade', 'joists', 'measured'] as const),
    straightK_dB: 5,
    cornerK_dB: 6,
  };
  return pick.number() < 0.5
    ? { ...wall, kind: 'rated', surfaceMass_kg_m2: 200, Rw_dB: 48 }
    : { ...wall, kind: 'homogeneous', material: pick.of(['concrete', 'aerated-concrete'] as const), thickness_m: 0.2 };
}

/** Every kind of edit. One that does not apply (removing the base, say) throws a RangeError. */
export const EDITS: Readonly<Record<string, PickedEdit>> = {
  setParameter: (n, pick) => {
    const parameter = pick.of(n.parameters);
    return setParameter(n, parameter.key, acceptedValue(parameter, pick));
  },
  resetParameter: (n, pick) => resetParameter(n, pick.of(n.parameters).key),
  updateParameter: (n, pick) => updateParameter(n, pick.of(n.parameters).key, { label: `label ${pick.index(9)}` }),
  addParameter: (n, pick) =>
    addParameter(n, { key: pick.id(n), label: 'new', quantity: 'level', value: 1, min: 0, max: 2, step: 1 }),
  removeParameter: (n, pick) => removeParameter(n, pick.of(n.parameters).key),
  forkScenario: (n, pick) => forkScenario(n, scenarioId(n, pick), { id: pick.id(n), name: 'fork' }),
  duplicateScenario: (n, pick) => duplicateScenario(n, scenarioId(n, pick), { id: pick.id(n), name: 'copy' }),
  renameScenario: (n, pick) => renameScenario(n, scenarioId(n, pick), `name ${pick.index(9)}`),
  removeScenario: (n, pick) => removeScenario(n, scenarioId(n, pick)),
  moveScenario: (n, pick) => moveScenario(n, scenarioId(n, pick), pick.index(n.scenarios.length)),
  showScenario: (n, pick) => showScenario(n, scenarioId(n, pick), pick.number() < 0.5),
  setReference: (n, pick) => setReference(n, scenarioId(n, pick)),
  setActive: (n, pick) => setActive(n, scenarioId(n, pick)),
  mergeChange: (n, pick) => mergeChange(n, scenarioId(n, pick), pick.of(n.parameters).key),
  mergeAllChanges: (n, pick) => mergeAllChanges(n, scenarioId(n, pick)),
  addCell: (n, pick) =>
    addCell(
      n,
      { kind: 'stack', id: pick.id(n), folded: false, stack: pick.of(n.stacks).id },
      pick.index(n.cells.length),
    ),
  removeCell: (n, pick) => removeCell(n, pick.of(n.cells).id),
  moveCell: (n, pick) => moveCell(n, pick.of(n.cells).id, pick.index(n.cells.length)),
  duplicateCell: (n, pick) => duplicateCell(n, pick.of(n.cells).id, pick.id(n)),
  foldCell: (n, pick) => foldCell(n, pick.of(n.cells).id, pick.number() < 0.5),
  updateCell: (n, pick) => updateCell(n, pick.of(n.cells).id, 'commentary', { text: `text ${pick.index(9)}` }),
  setTitle: (n, pick) => setTitle(n, `title ${pick.index(9)}`),
  setUnits: (n, pick) => setUnits(n, pick.of(['SI', 'inch-pound'])),
  setFlanking: (n, pick) =>
    setFlanking(n, { ...n.flanking, kind: pick.of(['none', 'weak', 'own', 'by the walls']), R500_dB: 60 }),
  setStackField: withFieldOf('any', (n, stack, path, pick) =>
    setStackField(n, stack.id, path, acceptedLiteral(n, stack, path, pick)),
  ),
  clearStackField: withFieldOf('any', (n, stack, path) => clearStackField(n, stack.id, path)),
  makeParameter: withFieldOf('literal', (n, stack, path) => makeParameter(n, stack.id, path)),
  makeLiteral: withFieldOf('linked', (n, stack, path) => makeLiteral(n, stack.id, path)),
  fixField: withFieldOf('linked', (n, stack, path) => fixField(n, stack.id, path)),
  linkField: withFieldOf('any', (n, stack, path, pick) => linkField(n, stack.id, path, pick.of(n.parameters).key)),
  insertLeaf: (n, pick) => {
    const stack = pick.of(n.stacks);
    const leaf = { ...leafOf(stack, pick), id: pick.id(n) };
    const mat = {
      kind: 'mat',
      id: pick.id(n),
      name: '',
      thickness_m: 0.01,
      dynamicStiffness_N_m3: 1e7,
      lossFactor: 0.1,
    } as const;
    return insertLeaf(n, stack.id, pick.index((stack.layers.length + 1) / 2), leaf, mat);
  },
  removeLayer: (n, pick) => {
    const stack = pick.of(n.stacks);
    return removeLayer(n, stack.id, pick.of(stack.layers).id);
  },
  moveLayer: (n, pick) => {
    const stack = pick.of(n.stacks);
    return moveLayer(n, stack.id, pick.of(stack.layers).id, pick.of([-1, 1]));
  },
  renameLayer: (n, pick) => {
    const stack = pick.of(n.stacks);
    return renameLayer(n, stack.id, pick.of(stack.layers).id, `name ${pick.index(9)}`);
  },
  replaceLayer: (n, pick) => {
    const stack = pick.of(n.stacks);
    const layer = pick.of(stack.layers);
    return replaceLayer(n, stack.id, layer.id, { ...pick.of(stack.layers), id: layer.id });
  },
  addSheet: (n, pick) => {
    const stack = pick.of(n.stacks);
    const leaf = leafOf(stack, pick);
    return addSheet(n, stack.id, leaf.id, pick.index(leaf.sheets.length), { material: 'osb', thickness_m: 0.018 });
  },
  removeSheet: (n, pick) => {
    const stack = pick.of(n.stacks);
    const leaf = leafOf(stack, pick);
    return removeSheet(n, stack.id, leaf.id, pick.index(leaf.sheets.length));
  },
  moveSheet: (n, pick) => {
    const stack = pick.of(n.stacks);
    const leaf = leafOf(stack, pick);
    return moveSheet(n, stack.id, leaf.id, pick.index(leaf.sheets.length), pick.index(leaf.sheets.length));
  },
  keepOnlyIn: (n, pick) => {
    const stack = pick.of(n.stacks);
    return keepOnlyIn(n, stack.id, [{ layer: pick.of(stack.layers).id }], pick.of(n.scenarios).id);
  },
  takeOutOf: (n, pick) => {
    const stack = pick.of(n.stacks);
    const leaf = leafOf(stack, pick);
    const sheet = pick.index(leaf.sheets.length);
    return takeOutOf(n, stack.id, [{ layer: leaf.id, sheet }], pick.of(n.scenarios).id);
  },
  putInto: (n, pick) => {
    const stack = pick.of(n.stacks);
    return putInto(
      n,
      stack.id,
      [{ layer: pick.of(stack.layers).id }],
      pick.of(n.scenarios).id,
      pick.of(n.scenarios).id,
    );
  },
  addFill: (n, pick) => {
    const stack = pick.of(n.stacks);
    const cavity = pick.of(stack.layers.filter((l) => l.kind === 'cavity'));
    const fill = { fill: 'mineral-wool', fillThickness_m: 0.4 * pick.number() };
    return cavity ? addFill(n, stack.id, cavity.id, fill) : n;
  },
  removeFill: (n, pick) => {
    const stack = pick.of(n.stacks);
    const cavity = pick.of(stack.layers.filter((l) => l.kind === 'cavity' && l.fillsAbove));
    return cavity ? removeFill(n, stack.id, cavity.id, 0) : n;
  },
  addStack: (n, pick) => addStack(n, { ...pick.of(n.stacks), id: pick.id(n) }),
  renameStack: (n, pick) => renameStack(n, pick.of(n.stacks).id, `name ${pick.index(9)}`),
  removeStack: (n, pick) => removeStack(n, pick.of(n.stacks).id),
  addLeak: (n, pick) => {
    const leak = { id: pick.id(n), name: 'gap', width_m: 0.001, depth_m: 0.1 } as const;
    const { width_m: diameter_m, ...hole } = leak;
    return addLeak(
      n,
      pick.of(n.stacks).id,
      pick.number() < 0.5 ? { ...leak, kind: 'slit', length_m: 2 } : { ...hole, kind: 'hole', diameter_m },
    );
  },
  renameLeak: (n, pick) => {
    const { stack, leak } = leakOf(n, pick);
    return leak ? renameLeak(n, stack.id, leak.id, `name ${pick.index(9)}`) : n;
  },
  removeLeak: (n, pick) => {
    const { stack, leak } = leakOf(n, pick);
    return leak ? removeLeak(n, stack.id, leak.id) : n;
  },
  addWall: (n, pick) => addWall(n, someWall(n, pick)),
  updateWall: (n, pick) => {
    const wall = pick.of(n.flanking.walls ?? []);
    return wall ? updateWall(n, { ...someWall(n, pick), id: wall.id }) : n;
  },
  removeWall: (n, pick) => {
    const wall = pick.of(n.flanking.walls ?? []);
    return wall ? removeWall(n, wall.id) : n;
  },
  addOwnMaterial: (n, pick) =>
    addOwnMaterial(n, {
      key: pick.id(n),
      name: 'own',
      source: '',
      ...pick.of([
        { kind: 'fibre', density_kg_m3: 30, flowResistivity_Pa_s_m2: 9000 },
        { kind: 'covering', surfaceMass_kg_m2: 3, thickness_m: 0.01, contactStiffness_N_m: 1e5 },
      ] as const),
    }),
  useOwnMaterial: (n, pick) => {
    const stack = pick.of(n.stacks);
    const leaf = leafOf(stack, pick);
    const path = ['layers', stack.layers.indexOf(leaf), 'sheets', pick.index(leaf.sheets.length), 'material'];
    const [board] = smallNotebook().materials;
    return useOwnMaterial(n, stack.id, path, { ...board!, key: pick.id(n) });
  },
  updateOwnMaterial: (n, pick) => {
    const [material] = n.materials;
    return material ? updateOwnMaterial(n, { ...material, name: `name ${pick.index(9)}` }) : n;
  },
  removeOwnMaterial: (n) => {
    const [material] = n.materials;
    return material ? removeOwnMaterial(n, material.kind, material.key) : n;
  },
};

/** An edit that does not apply leaves the notebook as it is. */
export function applied(notebook: Notebook, name: string, pick: Picks): Notebook {
  try {
    return EDITS[name]!(notebook, pick);
  } catch (error) {
    if (error instanceof RangeError) return notebook;
    throw error;
  }
}

export const editNames = fc.constantFrom(...Object.keys(EDITS));
export const seeds = fc.integer({ min: 0, max: 2 ** 31 });

/** What people make of the small notebook with up to thirty edits. */
export const notebooks: fc.Arbitrary<Notebook> = fc
  .tuple(fc.array(editNames, { maxLength: 30 }), seeds)
  .map(([names, seed]) => {
    const pick = picksFrom(seed);
    return names.reduce((notebook, name) => applied(notebook, name, pick), smallNotebook());
  });
