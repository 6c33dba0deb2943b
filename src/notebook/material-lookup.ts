/** Materials by key: built in, and the notebook's own. */
import {
  COVERINGS,
  type CoveringMaterial,
  FIBRE_MATERIALS,
  type FibreMaterial,
  SHEET_MATERIALS,
  type SheetMaterial,
} from '#src/acoustics/materials.ts';
import type { Notebook, OwnCovering, OwnFibreMaterial, OwnMaterial, OwnSheetMaterial } from './types.ts';

/** The key that stands for "nothing here" in a covering or a fill. */
export const NONE = 'none';

type OwnMaterials = Pick<Notebook, 'materials'>;

/** Built-in sheet materials, then the notebook's own. */
export function sheetMaterials(notebook: OwnMaterials): readonly (SheetMaterial | OwnSheetMaterial)[] {
  return [...SHEET_MATERIALS, ...notebook.materials.filter((m) => m.kind === 'sheet')];
}

/** Built-in fibre materials, then the notebook's own. */
export function fibreMaterials(notebook: OwnMaterials): readonly (FibreMaterial | OwnFibreMaterial)[] {
  return [...FIBRE_MATERIALS, ...notebook.materials.filter((m) => m.kind === 'fibre')];
}

/** Built-in coverings, then the notebook's own. */
export function coverings(notebook: OwnMaterials): readonly (CoveringMaterial | OwnCovering)[] {
  return [...COVERINGS, ...notebook.materials.filter((m) => m.kind === 'covering')];
}

/** Every material of a kind, built in and the notebook's own. */
export const MATERIALS_OF = {
  sheet: sheetMaterials,
  fibre: fibreMaterials,
  covering: coverings,
} as const satisfies Record<OwnMaterial['kind'], unknown>;

export function sheetMaterial(notebook: OwnMaterials, key: string): SheetMaterial | OwnSheetMaterial {
  return byKey(sheetMaterials(notebook), 'sheet material', key);
}

export function fibreMaterial(notebook: OwnMaterials, key: string): FibreMaterial | OwnFibreMaterial {
  return byKey(fibreMaterials(notebook), 'fibre material', key);
}

export function coveringMaterial(notebook: OwnMaterials, key: string): CoveringMaterial | OwnCovering {
  return byKey(coverings(notebook), 'covering', key);
}

function byKey<T extends { readonly key: string }>(list: readonly T[], what: string, key: string): T {
  const material = list.find((m) => m.key === key);
  if (!material) throw new RangeError(`${what} must be a known key, got "${key}"`);
  return material;
}
