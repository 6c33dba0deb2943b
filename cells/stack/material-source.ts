import { COVERINGS } from '#src/acoustics/materials.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { fibreMaterials, sheetMaterials } from '#src/notebook/material-lookup.ts';
import type { Notebook } from '#src/notebook/types.ts';

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
