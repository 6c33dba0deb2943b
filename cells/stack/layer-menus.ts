/** What the menus of the layer list offer. */
import type { NotebookEdit } from '#cells/contract.ts';
import type { MenuItem } from '#cells/shared/pop-menu.ts';
import { MAT_PRODUCTS } from '#src/acoustics/materials.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { FILLS_ABOVE_FIELDS } from '#src/notebook/field-specs.ts';
import { fillPath, fillsOf } from '#src/notebook/fill-places.ts';
import { findStack } from '#src/notebook/find.ts';
import type { Interlayer, Layer, LeafLayer, Notebook, Stack } from '#src/notebook/types.ts';
import {
  addCeilingBelow,
  addFillEdit,
  addFloatingSlab,
  addLeafBelowOnMat,
  addSheetEdit,
  copyStack,
  removeStackEdit,
  takeMatProduct,
  turnInterlayer,
  type Where,
} from './layer-edits.ts';
import { hasReach } from './reach.ts';
import { hasJoists } from './what-goes.ts';

type Send = (edit: NotebookEdit) => void;

export function stackMenu(notebook: Notebook, stack: Stack, send: Send): readonly MenuItem[] {
  const copy = { label: 'Add a copy of this stack to the notebook', choose: () => send(copyStack(notebook, stack)) };
  if (notebook.stacks.length === 1) return [copy];
  return [copy, { label: 'Remove this stack, and the cells that show it', choose: () => send(removeStackEdit(stack)) }];
}

export function interlayerMenu({ notebook, stackId }: Where, layer: Interlayer, send: Send): readonly MenuItem[] {
  const what = layer.kind === 'mat' ? 'Make it a cavity' : 'Make it a mat';
  const reach = hasReach(notebook) ? ', in every scenario' : '';
  const loss = hasJoists(notebook, layer) ? ': its joists go' : '';
  return [{ label: `${what}${reach}${loss}`, choose: () => send(turnInterlayer(notebook, stackId, layer)) }];
}

/** Hears too which field says of what the new part is made. */
type SendAdded = (edit: NotebookEdit, material: FieldPath) => void;

/** What can be added at a layer. */
export function addMenu(where: Where, layer: Layer, send: SendAdded): readonly MenuItem[] {
  return layer.kind === 'leaf' ? leafMenu(where, layer, send) : fillMenu(where, layer, send);
}

function leafMenu(where: Where, layer: LeafLayer, send: SendAdded): readonly MenuItem[] {
  const index = findStack(where.notebook, where.stackId).layers.indexOf(layer);
  const leaf = index / 2;
  const { length } = layer.sheets;
  const material = (at: number, sheet: number): FieldPath => ['layers', at, 'sheets', sheet, 'material'];
  return [
    { label: 'Add a sheet on top', choose: () => send(addSheetEdit(where, layer, 0), material(index, 0)) },
    {
      label: 'Add a sheet underneath',
      choose: () => send(addSheetEdit(where, layer, length), material(index, length)),
    },
    ...(leaf === 0
      ? [{ label: 'Add a floating slab on a mat above', choose: () => send(addFloatingSlab(where), material(0, 0)) }]
      : []),
    {
      label: 'Add a ceiling below, under a cavity',
      choose: () => send(addCeilingBelow(where, leaf), material(index + 2, 0)),
    },
    {
      label: 'Add a deck below, under a mat',
      choose: () => send(addLeafBelowOnMat(where, leaf), material(index + 2, 0)),
    },
  ];
}

function fillMenu(where: Where, layer: Interlayer, send: SendAdded): readonly MenuItem[] {
  const fill = nextFill(layer);
  if (layer.kind !== 'cavity' || fill === undefined) return [];
  const index = findStack(where.notebook, where.stackId).layers.indexOf(layer);
  const material = fillPath(index, fillsOf(layer).length, 'fill');
  return [{ label: `Add a ${fill} on top of the fill`, choose: () => send(addFillEdit(where, layer), material) }];
}

/** "second fill"; undefined where nothing takes another. */
export function nextFill(layer: Interlayer): string | undefined {
  return layer.kind === 'cavity' ? FILLS_ABOVE_FIELDS[layer.fillsAbove?.length ?? 0]?.fill.label : undefined;
}

export function matMenu(stackId: string, index: number, send: Send): readonly MenuItem[] {
  return MAT_PRODUCTS.map((product) => ({
    label: product.name,
    choose: () => send(takeMatProduct(stackId, index, product)),
  }));
}
