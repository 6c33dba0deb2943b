/** By which drafting convention a material is drawn. */
import type { Sheet } from '#src/acoustics/construction.ts';
import type { Stack } from '#src/notebook/types.ts';
import { fieldValue, type Values } from '#src/notebook/values.ts';
import type { Hatch, Origin } from './section.ts';

const HATCHES: Readonly<Record<string, Hatch>> = {
  'gypsum-board': 'gypsum',
  'gypsum-board-fire-rated': 'gypsum',
  'gypsum-fibre-board': 'gypsum',
  'dry-screed': 'gypsum',
  'cement-board': 'topping',
  'magnesium-oxide-board': 'topping',
  plywood: 'panel',
  osb: 'panel',
  chipboard: 'panel',
  'softwood-boards': 'timber',
  'hardwood-flooring': 'timber',
  'engineered-wood-flooring': 'timber',
  'cross-laminated-timber': 'timber',
  chippings: 'concrete',
  'ceramic-tile': 'metal',
  glass: 'metal',
  steel: 'metal',
  'hollow-core-slab': 'concrete',
  'aerated-concrete': 'topping',
  concrete: 'concrete',
  'cellular-concrete': 'topping',
  'gypsum-concrete': 'topping',
  'cement-screed': 'topping',
};

/** By its key, or as what it is used for where the key is the notebook's own. */
export function hatchOfMaterial(key: string, form: Sheet['form']): Hatch {
  return HATCHES[key] ?? (form === 'slab' ? 'concrete' : 'panel');
}

/** For the sheets of one stack in one scenario; the resolved sheet no longer says what it is made of. */
export function hatchesOf({ layers }: Stack, values: Values): (sheet: Sheet, origin: Origin) => Hatch {
  return ({ form }, { layer, sheet }) => {
    const leaf = layer === undefined ? undefined : layers[layer];
    const field = leaf?.kind === 'leaf' && sheet !== undefined ? leaf.sheets[sheet] : undefined;
    return hatchOfMaterial(field ? fieldValue(field.material, values) : '', form);
  };
}
