/** How layers, sheets and fills are removed: what is said and asked before, and from where they then go. */
import { html, nothing, type TemplateResult } from 'lit';
import type { NotebookEdit } from '#cells/contract.ts';
import { fillName } from '#src/notebook/field-specs.ts';
import { fillsOf } from '#src/notebook/fill-places.ts';
import { findStack } from '#src/notebook/find.ts';
import type { CavityLayer, Layer, LeafLayer, Stack } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';
import { removeFillEdit, removeLayerEdit, removeSheetEdit, type Where } from './layer-edits.ts';
import { isIn, othersWith, type Presence } from './presence.ts';
import type { Reach } from './reach.ts';
import type { Removal } from './row-actions.ts';
import { whatGoes } from './what-goes.ts';

export interface RemovalFrom {
  readonly where: Where;
  readonly presence: Presence;
  /** Asks for the reach, in these words. */
  ask(label: string, reach: Reach): TemplateResult | typeof nothing;
  send(edit: NotebookEdit): void;
}

export function layerRemoval(from: RemovalFrom, layer: Layer): Removal {
  const { where, presence, send } = from;
  const { notebook, stackId } = where;
  const { active } = notebook;
  const stack = findStack(notebook, stackId);
  const index = stack.layers.indexOf(layer);
  return removal(from, {
    name: layer.name,
    mayGoHere: isIn(presence, active, index) && (layer.kind !== 'leaf' || hasOtherLeaf(stack, layer, presence, active)),
    isElsewhere: othersWith(presence, notebook, index).length > 0,
    goesToo: (reach) => whatGoes(notebook, stack, { layer: layer.id }, reach),
    remove: (reach) => send(removeLayerEdit({ ...where, reach }, layer)),
  });
}

export function sheetRemoval(from: RemovalFrom, leaf: LeafLayer, sheet: number): Removal {
  const { where, presence, send } = from;
  const { notebook, stackId } = where;
  const { active } = notebook;
  const stack = findStack(notebook, stackId);
  const isThere = (id: string, k = sheet) => fieldValue(leaf.sheets[k]!.thickness_m, valuesOf(notebook, id)) > 0;
  const sheetsLeft = leaf.sheets.some((_, k) => k !== sheet && isThere(active, k));
  return removal(from, {
    name: `sheet ${sheet + 1} of ${leaf.name}`,
    mayGoHere: isThere(active) && (sheetsLeft || hasOtherLeaf(stack, leaf, presence, active)),
    isElsewhere: notebook.scenarios.some(({ id }) => id !== active && isThere(id)),
    goesToo: (reach) => whatGoes(notebook, stack, { layer: leaf.id, sheet }, reach),
    remove: (reach) => send(removeSheetEdit({ ...where, reach }, leaf, sheet)),
  });
}

/** Of one of several: what lies on it comes down. */
export function fillRemoval(from: RemovalFrom, cavity: CavityLayer, place: number): Removal {
  const { where, send } = from;
  const { notebook } = where;
  const { fillThickness_m } = fillsOf(cavity)[place]!;
  const isThere = (id: string) => fieldValue(fillThickness_m, valuesOf(notebook, id)) > 0;
  return removal(from, {
    name: `${fillName(place)} of ${cavity.name}`,
    mayGoHere: isThere(notebook.active),
    isElsewhere: notebook.scenarios.some(({ id }) => id !== notebook.active && isThere(id)),
    goesToo: () => [],
    remove: (reach) => send(removeFillEdit({ ...where, reach }, cavity, place)),
  });
}

/** A floor keeps something. */
function hasOtherLeaf({ layers }: Stack, leaf: LeafLayer, presence: Presence, scenarioId: string): boolean {
  return layers.some((l, i) => l.kind === 'leaf' && l !== leaf && isIn(presence, scenarioId, i));
}

interface Going {
  readonly name: string;
  readonly mayGoHere: boolean;
  readonly isElsewhere: boolean;
  /** In sentences. */
  goesToo(reach: Reach): readonly string[];
  remove(reach: Reach): void;
}

/** Where no other scenario has it, or the active one has it not, there is nothing to choose. */
function removal({ where, ask }: RemovalFrom, { name, mayGoHere, isElsewhere, goesToo, remove }: Going): Removal {
  const isChoice = mayGoHere && isElsewhere;
  const reach = isChoice ? where.reach : 'every';
  const everywhere = isElsewhere && !isChoice;
  const said = goesToo(reach);
  const choice = isChoice ? ask('It is removed', reach) : nothing;
  const head = html`${said.map((sentence) => html`<p>${sentence}</p>`)}${choice}`;
  const label = everywhere ? `Remove ${name} from every scenario` : `Remove ${name}`;
  return {
    asksFirst: isChoice || everywhere || said.length > 0,
    head,
    item: { label, choose: () => remove(reach) },
  };
}
