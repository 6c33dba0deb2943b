/** How layers and sheets are removed: what is said and asked before, and from where they then go. */
import { html, nothing, type TemplateResult } from 'lit';
import type { NotebookEdit } from '#cells/contract.ts';
import { findStack } from '#src/notebook/find.ts';
import type { Layer, LeafLayer } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';
import { removeLayerEdit, removeSheetEdit, type Where } from './layer-edits.ts';
import { isIn, othersWith, type Presence } from './presence.ts';
import type { Reach } from './reach.ts';
import type { Removal } from './row-actions.ts';
import { whatGoesWith } from './what-goes.ts';

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
  const leavesLeft = stack.layers.some((l, i) => l.kind === 'leaf' && i !== index && isIn(presence, active, i));
  return removal(from, {
    name: layer.name,
    mayGoHere: isIn(presence, active, index) && (layer.kind !== 'leaf' || leavesLeft),
    isElsewhere: othersWith(presence, notebook, index).length > 0,
    goesToo: whatGoesWith(notebook, stack, layer),
    remove: (reach) => send(removeLayerEdit({ ...where, reach }, layer)),
  });
}

export function sheetRemoval(from: RemovalFrom, leaf: LeafLayer, sheet: number): Removal {
  const { where, send } = from;
  const { notebook } = where;
  const isThere = (id: string) => fieldValue(leaf.sheets[sheet]!.thickness_m, valuesOf(notebook, id)) > 0;
  return removal(from, {
    name: `sheet ${sheet + 1} of ${leaf.name}`,
    mayGoHere: isThere(notebook.active),
    isElsewhere: notebook.scenarios.some(({ id }) => id !== notebook.active && isThere(id)),
    goesToo: undefined,
    remove: (reach) => send(removeSheetEdit({ ...where, reach }, leaf, sheet)),
  });
}

interface Going {
  readonly name: string;
  readonly mayGoHere: boolean;
  readonly isElsewhere: boolean;
  readonly goesToo: string | undefined;
  remove(reach: Reach): void;
}

/** Where no other scenario has it, or the active one has it not, there is nothing to choose. */
function removal({ where, ask }: RemovalFrom, { name, mayGoHere, isElsewhere, goesToo, remove }: Going): Removal {
  const isChoice = mayGoHere && isElsewhere;
  const reach = isChoice ? where.reach : 'every';
  const everywhere = isElsewhere && !isChoice;
  const head = html`${goesToo ? html`<p>${goesToo}</p>` : nothing}${isChoice ? ask('It is removed', reach) : nothing}`;
  const label = everywhere ? `Remove ${name} from every scenario` : `Remove ${name}`;
  return {
    asksFirst: isChoice || everywhere || goesToo !== undefined,
    head,
    item: { label, choose: () => remove(reach) },
  };
}
