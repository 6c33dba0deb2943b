/** Materials of the notebook's own: add, change, remove. */
import { replacedWhere } from '../lists.ts';
import { MATERIALS_OF } from '../material-lookup.ts';
import { materialUses } from '../material-use.ts';
import type { Notebook, OwnMaterial } from '../types.ts';

/** @throws RangeError if a material of the kind, built in or own, has the key already. */
export function addOwnMaterial(notebook: Notebook, material: OwnMaterial): Notebook {
  if (MATERIALS_OF[material.kind](notebook).some((m) => m.key === material.key))
    throw new RangeError(`material key must be new, got "${material.key}"`);
  return { ...notebook, materials: [...notebook.materials, material] };
}

/** Replaces the own material of the same kind and key. */
export function updateOwnMaterial(notebook: Notebook, material: OwnMaterial): Notebook {
  requireOwn(notebook, material);
  const same = (m: OwnMaterial) => m.kind === material.kind && m.key === material.key;
  return { ...notebook, materials: replacedWhere(notebook.materials, same, () => material) };
}

/** @throws RangeError if a stack or a choice still names it. */
export function removeOwnMaterial(notebook: Notebook, kind: OwnMaterial['kind'], key: string): Notebook {
  requireOwn(notebook, { kind, key });
  const [user] = materialUses(notebook, kind, key);
  if (user) throw new RangeError(`material to remove must be unused, got "${key}" used in ${user}`);
  return { ...notebook, materials: notebook.materials.filter((m) => m.kind !== kind || m.key !== key) };
}

function requireOwn(notebook: Notebook, { kind, key }: Pick<OwnMaterial, 'kind' | 'key'>): void {
  if (!notebook.materials.some((m) => m.kind === kind && m.key === key))
    throw new RangeError(`${kind} material must be one of the notebook's own, got "${key}"`);
}
