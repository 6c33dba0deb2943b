import { type FieldPath, getField } from '../field-path.ts';
import { findStack } from '../find.ts';
import { replacedWhere } from '../lists.ts';
import type { Notebook, OwnMaterial } from '../types.ts';
import { isReference } from '../values.ts';
import { addOwnMaterial } from './edit-materials.ts';
import { setStackField } from './set-stack-field.ts';

/**
 * Adds a material and takes it for a field, in the active scenario; where the field refers to a parameter, the material
 * becomes one of its choices.
 */
export function useOwnMaterial(notebook: Notebook, stackId: string, path: FieldPath, material: OwnMaterial): Notebook {
  const added = addOwnMaterial(notebook, material);
  const field = getField(findStack(notebook, stackId), path);
  const offered = field !== undefined && isReference(field) ? withChoice(added, field.parameter, material) : added;
  return setStackField(offered, stackId, path, material.key);
}

function withChoice(notebook: Notebook, key: string, material: OwnMaterial): Notebook {
  const choice = { value: material.key, label: material.name };
  const parameters = replacedWhere(
    notebook.parameters,
    (p) => p.key === key,
    (p) => ('choices' in p ? { ...p, choices: [...p.choices, choice] } : p),
  );
  return { ...notebook, parameters };
}
