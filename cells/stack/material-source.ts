import { COVERINGS, MAT_PRODUCTS, type MatProduct } from '#src/acoustics/materials.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { fibreMaterials, sheetMaterials } from '#src/notebook/material-lookup.ts';
import type { MatLayer, Notebook } from '#src/notebook/types.ts';

/** Where the numbers of the material come from that a field names; undefined for fields that name none. */
export function materialSource(notebook: Notebook, path: FieldPath, key: string): string | undefined {
  switch (path.at(-1)) {
    case 'material':
      return sheetMaterials(notebook).find((m) => m.key === key)?.source;
    case 'fill':
      return fibreMaterials(notebook).find((m) => m.key === key)?.source;
    case 'covering':
      return COVERINGS.find((m) => m.key === key)?.source;
    default:
      return undefined;
  }
}

/** The mat product whose values a mat has; undefined where there is none, or where a value comes from a parameter. */
export function matProductOf({ thickness_m, dynamicStiffness_N_m3, lossFactor }: MatLayer): MatProduct | undefined {
  return MAT_PRODUCTS.find(
    (p) =>
      p.thickness_m === thickness_m && p.dynamicStiffness_N_m3 === dynamicStiffness_N_m3 && p.lossFactor === lossFactor,
  );
}
