/** Edits of whole layers, sheets and fills that the layer list offers, as pure functions with their words for undo. */
import { NotebookEdit } from '#cells/contract.ts';
import type { MatProduct } from '#src/acoustics/materials.ts';
import { addFill, moveFill, removeFill } from '#src/notebook/edits/edit-fills.ts';
import { addSheet, moveSheet, removeSheet } from '#src/notebook/edits/edit-sheets.ts';
import { addStack, removeStack } from '#src/notebook/edits/edit-stacks.ts';
import { insertLeaf } from '#src/notebook/edits/insert-leaf.ts';
import {
  keepOnlyIn,
  type LayerPart,
  putInto,
  takeOutOf,
  withoutLeftovers,
} from '#src/notebook/edits/layer-in-scenario.ts';
import { moveLayer } from '#src/notebook/edits/move-layer.ts';
import { goesWith, removeLayer } from '#src/notebook/edits/remove-layer.ts';
import { replaceLayer } from '#src/notebook/edits/replace-layer.ts';
import { setMatSource } from '#src/notebook/edits/set-mat-source.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { fillsOf } from '#src/notebook/fill-places.ts';
import { findLayerIndex, findStack } from '#src/notebook/find.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import type { CavityLayer, Interlayer, Layer, LeafLayer, Notebook, Stack } from '#src/notebook/types.ts';
import { knownMat } from './material-source.ts';
import { BOARD, newCavity, newCeiling, newDeck, newFill, newMat, newSlab } from './new-layers.ts';
import type { Reach } from './reach.ts';

/** The stack that is worked in, and whether what is done to it is meant for the active scenario or for every one. */
export interface Where {
  readonly notebook: Notebook;
  readonly stackId: string;
  readonly reach: Reach;
}

/** Ids are drawn when the edit is made, so that making it again gives the same notebook. */
function freshLayerIds(notebook: Notebook): [string, string] {
  const taken = notebook.stacks.flatMap((s) => s.layers.map((l) => l.id));
  const first = freshId(Math.random, taken);
  return [first, freshId(Math.random, [...taken, first])];
}

/** A leaf with its interlayer, `at` leaves from the top. */
function insertion(label: string, where: Where, at: number, leaf: LeafLayer, interlayer: Interlayer): NotebookEdit {
  const parts = [{ layer: leaf.id }, { layer: interlayer.id }];
  return inReach(label, where, parts, (n) => insertLeaf(n, where.stackId, at, leaf, interlayer));
}

/** What was added everywhere is then taken out of the other scenarios where it is meant for one: one step of undo. */
function inReach(
  label: string,
  { notebook, stackId, reach }: Where,
  parts: readonly LayerPart[],
  add: (n: Notebook) => Notebook,
): NotebookEdit {
  const { active } = notebook;
  return new NotebookEdit(label, (n) => (reach === 'this' ? keepOnlyIn(add(n), stackId, parts, active) : add(n)));
}

/** What is meant for one scenario is taken out there; taken out everywhere, what nothing needs any more goes too. */
function outOfReach(
  label: string,
  { notebook, stackId, reach }: Where,
  parts: readonly LayerPart[],
  remove: (n: Notebook) => Notebook,
): NotebookEdit {
  const { active } = notebook;
  return new NotebookEdit(label, (n) =>
    reach === 'this' ? takeOutOf(n, stackId, parts, active) : withoutLeftovers(n, remove(n), stackId, parts),
  );
}

/** A layer and what is taken out, or put in, with it. */
function withCompanion({ layers }: Stack, layer: Layer): readonly Layer[] {
  const companion = goesWith(layers, layers.indexOf(layer));
  return companion ? [layer, companion] : [layer];
}

function partsOf(layers: readonly Layer[]): readonly LayerPart[] {
  return layers.map(({ id }) => ({ layer: id }));
}

export function addFloatingSlab(where: Where): NotebookEdit {
  const { units } = where.notebook;
  const [leaf, mat] = freshLayerIds(where.notebook);
  return insertion('add a floating slab', where, 0, newSlab(leaf, units), newMat(mat, units));
}

/** `at` counts leaves from the top: the new one comes below it. */
export function addCeilingBelow(where: Where, at: number): NotebookEdit {
  const { units } = where.notebook;
  const [leaf, cavity] = freshLayerIds(where.notebook);
  return insertion('add a ceiling', where, at + 1, newCeiling(leaf), newCavity(cavity, units));
}

export function addLeafBelowOnMat(where: Where, at: number): NotebookEdit {
  const { units } = where.notebook;
  const [leaf, mat] = freshLayerIds(where.notebook);
  return insertion('add a leaf below a mat', where, at + 1, newDeck(leaf, units), newMat(mat, units));
}

/** In one scenario a leaf is taken out with the same companion that goes with it everywhere. */
export function removeLayerEdit(where: Where, layer: Layer): NotebookEdit {
  const { notebook, stackId } = where;
  const going = withCompanion(findStack(notebook, stackId), layer);
  const label = `remove ${going.map((l) => l.name).join(' and ')}`;
  return outOfReach(label, where, partsOf(going), (n) => removeLayer(n, stackId, layer.id));
}

/** A layer that the active scenario has not, with what belongs to it, as it is in another one. */
export function putLayerInto(notebook: Notebook, stackId: string, layer: Layer, like: string): NotebookEdit {
  const parts = partsOf(withCompanion(findStack(notebook, stackId), layer));
  const { active } = notebook;
  return new NotebookEdit(`put in ${layer.name}`, (n) => putInto(n, stackId, parts, active, like));
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
export function turnInterlayer(notebook: Notebook, stackId: string, layer: Interlayer): NotebookEdit {
  const { units } = notebook;
  const next = layer.kind === 'mat' ? newCavity(layer.id, units) : newMat(layer.id, units);
  return new NotebookEdit(`${next.name} instead of ${layer.name}`, (n) => replaceLayer(n, stackId, layer.id, next));
}

/**
 * A product's values in a mat, written as if each had been typed: in a fork they stay in the fork. Where they hold for every
 * scenario their source is known, and what was said of the former ones goes.
 */
export function takeMatProduct(stackId: string, index: number, product: MatProduct): NotebookEdit {
  return new NotebookEdit(product.name, (n) => {
    const at = (field: string) => ['layers', index, field];
    let next = setStackField(n, stackId, at('thickness_m'), product.thickness_m);
    next = setStackField(next, stackId, at('dynamicStiffness_N_m3'), product.dynamicStiffness_N_m3);
    next = setStackField(next, stackId, at('lossFactor'), product.lossFactor);
    const mat = findStack(next, stackId).layers[index];
    return mat?.kind === 'mat' && knownMat(mat) ? setMatSource(next, stackId, mat.id, '') : next;
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

export function addSheetEdit(where: Where, leaf: LeafLayer, at: number): NotebookEdit {
  const { stackId } = where;
  const parts = [{ layer: leaf.id, sheet: at }];
  return inReach(`add a sheet to ${leaf.name}`, where, parts, (n) => addSheet(n, stackId, leaf.id, at, BOARD));
}

export function removeSheetEdit(where: Where, leaf: LeafLayer, at: number): NotebookEdit {
  const { stackId } = where;
  const parts = [{ layer: leaf.id, sheet: at }];
  return outOfReach(`remove a sheet of ${leaf.name}`, where, parts, (n) => removeSheet(n, stackId, leaf.id, at));
}

export function moveSheetEdit(stackId: string, leaf: LeafLayer, from: number, to: number): NotebookEdit {
  return new NotebookEdit(`move a sheet of ${leaf.name}`, (n) => moveSheet(n, stackId, leaf.id, from, to));
}

/** On top of the fills that the cavity has. */
export function addFillEdit(where: Where, cavity: CavityLayer): NotebookEdit {
  const { notebook, stackId } = where;
  const { id, name } = cavity;
  const parts = [{ layer: id, fill: fillsOf(cavity).length }];
  return inReach(`add a fill to ${name}`, where, parts, (n) => addFill(n, stackId, id, newFill(notebook.units)));
}

export function removeFillEdit(where: Where, { id, name }: CavityLayer, place: number): NotebookEdit {
  const { stackId } = where;
  const parts = [{ layer: id, fill: place }];
  return outOfReach(`remove a fill of ${name}`, where, parts, (n) => removeFill(n, stackId, id, place));
}

export function moveFillEdit(stackId: string, { id, name }: CavityLayer, from: number, to: number): NotebookEdit {
  return new NotebookEdit(`move a fill of ${name}`, (n) => moveFill(n, stackId, id, from, to));
}
