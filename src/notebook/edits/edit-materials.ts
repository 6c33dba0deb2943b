/** Materials of the notebook's own: add, change, remove. */
import { fieldPaths, fieldSpec, getField } from '../field-path.ts';
import { replacedWhere } from '../lists.ts';
import { fibreMaterials, sheetMaterials } from '../material-lookup.ts';
import type { Notebook, OwnMaterial } from '../types.ts';

/** @throws RangeError if a material of the kind, built in or own, has the key already. */
export function addOwnMaterial(notebook: Notebook, material: OwnMaterial): Notebook {
  const taken = material.kind === 'sheet' ? sheetMaterials(notebook) : fibreMaterials(notebook);
  if (taken.some((m) => m.key === material.key))
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
  const user = userOf(notebook, kind, key);
  if (user) throw new RangeError(`material to remove must be unused, got "${key}" used in ${user}`);
  return { ...notebook, materials: notebook.materials.filter((m) => m.kind !== kind || m.key !== key) };
}

function requireOwn(notebook: Notebook, { kind, key }: Pick<OwnMaterial, 'kind' | 'key'>): void {
  if (!notebook.materials.some((m) => m.kind === kind && m.key === key))
    throw new RangeError(`${kind} material must be one of the notebook's own, got "${key}"`);
}

function userOf(notebook: Notebook, kind: OwnMaterial['kind'], key: string): string | undefined {
  const fieldName = kind === 'sheet' ? 'material' : 'fill';
  for (const stack of notebook.stacks)
    for (const path of fieldPaths(stack)) {
      if (path.at(-1) !== fieldName || fieldSpec(stack, path).type !== 'choice') continue;
      if (getField(stack, path) === key) return `stack "${stack.name}"`;
    }
  const offering = notebook.parameters.find((p) => 'choices' in p && p.choices.some((c) => c.value === key));
  return offering && `parameter "${offering.label}"`;
}
