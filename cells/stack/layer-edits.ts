/** Edits of whole layers and sheets that the layer list offers, as pure functions with their words for undo. */
import { NotebookEdit } from '#cells/contract.ts';
import type { MatProduct } from '#src/acoustics/materials.ts';
import { addSheet, moveSheet, removeSheet } from '#src/notebook/edits/edit-sheets.ts';
import { addStack, removeStack } from '#src/notebook/edits/edit-stacks.ts';
import { insertLeaf } from '#src/notebook/edits/insert-leaf.ts';
import { moveLayer } from '#src/notebook/edits/move-layer.ts';
import { removeLayer } from '#src/notebook/edits/remove-layer.ts';
import { replaceLayer } from '#src/notebook/edits/replace-layer.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { findLayerIndex, findStack } from '#src/notebook/find.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import type { CavityLayer, Layer, LeafLayer, MatLayer, Notebook, SheetField, Stack } from '#src/notebook/types.ts';

const BOARD: SheetField = { material: 'gypsum-board', thickness_m: 0.0127 };
const TOPPING: SheetField = { material: 'cellular-concrete', thickness_m: 0.038 };

function newLeaf(id: string, name: string, sheet: SheetField): LeafLayer {
  return { kind: 'leaf', id, name, contact: 'loose', sheets: [sheet] };
}

/** 10 mm at 20 MN/m³: the middle of what footfall mats have. Common practice, no source. */
function newMat(id: string): MatLayer {
  return { kind: 'mat', id, name: 'mat', thickness_m: 0.01, dynamicStiffness_N_m3: 2e7, lossFactor: 0.1 };
}

function newCavity(id: string): CavityLayer {
  return {
    kind: 'cavity',
    id,
    name: 'cavity',
    joists: 'none',
    depth_m: 0.1,
    joistWidth_m: 0.038,
    joistSpacing_m: 0.406,
    support: 'hangers',
    fill: 'glass-fibre',
    fillThickness_m: 0.05,
  };
}

/** Ids are drawn when the edit is made, so that making it again gives the same notebook. */
function freshLayerIds(notebook: Notebook): [string, string] {
  const taken = notebook.stacks.flatMap((s) => s.layers.map((l) => l.id));
  const first = freshId(Math.random, taken);
  return [first, freshId(Math.random, [...taken, first])];
}

export function addFloatingSlab(notebook: Notebook, stackId: string): NotebookEdit {
  const [leaf, mat] = freshLayerIds(notebook);
  return new NotebookEdit('add a floating slab', (n) =>
    insertLeaf(n, stackId, 0, newLeaf(leaf, 'floating slab', TOPPING), newMat(mat)),
  );
}

/** `at` counts leaves from the top: the new one comes below it. */
export function addCeilingBelow(notebook: Notebook, stackId: string, at: number): NotebookEdit {
  const [leaf, cavity] = freshLayerIds(notebook);
  return new NotebookEdit('add a ceiling', (n) =>
    insertLeaf(n, stackId, at + 1, newLeaf(leaf, 'ceiling', BOARD), newCavity(cavity)),
  );
}

export function addLeafBelowOnMat(notebook: Notebook, stackId: string, at: number): NotebookEdit {
  const [leaf, mat] = freshLayerIds(notebook);
  return new NotebookEdit('add a leaf below a mat', (n) =>
    insertLeaf(n, stackId, at + 1, newLeaf(leaf, 'deck', { material: 'osb', thickness_m: 0.0183 }), newMat(mat)),
  );
}

export function removeLayerEdit(stackId: string, layer: Layer): NotebookEdit {
  return new NotebookEdit(`remove ${layer.name}`, (n) => removeLayer(n, stackId, layer.id));
}

/** Puts a layer where another of its sort stands, one change of places after the other. */
export function moveLayerTo(notebook: Notebook, stackId: string, layer: Layer, to: number): NotebookEdit | undefined {
  const from = findLayerIndex(findStack(notebook, stackId), layer.id);
  const steps = Math.trunc((to - from) / 2);
  if (steps === 0) return undefined;
  const by = steps > 0 ? 1 : -1;
  return new NotebookEdit(`move ${layer.name}`, (n) => {
    let moved = n;
    for (let i = 0; i < Math.abs(steps); i++) moved = moveLayer(moved, stackId, layer.id, by);
    return moved;
  });
}

/** A mat in a cavity's place or the other way round; the name goes with the old kind. */
export function turnInterlayer(stackId: string, layer: MatLayer | CavityLayer): NotebookEdit {
  const next = layer.kind === 'mat' ? newCavity(layer.id) : newMat(layer.id);
  return new NotebookEdit(`${next.name} instead of ${layer.name}`, (n) => replaceLayer(n, stackId, layer.id, next));
}

/** A product's values in a mat, written as if each had been typed: in a fork they stay in the fork. */
export function takeMatProduct(stackId: string, index: number, product: MatProduct): NotebookEdit {
  return new NotebookEdit(product.name, (n) => {
    const at = (field: string) => ['layers', index, field];
    let next = setStackField(n, stackId, at('thickness_m'), product.thickness_m);
    next = setStackField(next, stackId, at('dynamicStiffness_N_m3'), product.dynamicStiffness_N_m3);
    return setStackField(next, stackId, at('lossFactor'), product.lossFactor);
  });
}

/** Cells that show the stack go with it. */
export function removeStackEdit({ id, name }: Stack): NotebookEdit {
  return new NotebookEdit(`remove ${name}`, (n) => removeStack(n, id));
}

/** A second stack like the first, for a cell of its own. */
export function copyStack(notebook: Notebook, stack: Stack): NotebookEdit {
  const id = freshId(
    Math.random,
    notebook.stacks.map((s) => s.id),
  );
  return new NotebookEdit(`copy of ${stack.name}`, (n) => addStack(n, { ...stack, id, name: `${stack.name}, copy` }));
}

export function addSheetEdit(stackId: string, leaf: LeafLayer, at: number): NotebookEdit {
  return new NotebookEdit(`add a sheet to ${leaf.name}`, (n) => addSheet(n, stackId, leaf.id, at, BOARD));
}

export function removeSheetEdit(stackId: string, leaf: LeafLayer, at: number): NotebookEdit {
  return new NotebookEdit(`remove a sheet of ${leaf.name}`, (n) => removeSheet(n, stackId, leaf.id, at));
}

export function moveSheetEdit(stackId: string, leaf: LeafLayer, from: number, to: number): NotebookEdit {
  return new NotebookEdit(`move a sheet of ${leaf.name}`, (n) => moveSheet(n, stackId, leaf.id, from, to));
}
