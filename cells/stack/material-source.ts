import { MATERIAL_SOURCES, type MaterialKind } from '#src/acoustics/material-sources.ts';
import { MAT_PRODUCTS } from '#src/acoustics/materials.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import type { MatLayer, Notebook } from '#src/notebook/types.ts';

/** What kind of material a field names by its key. */
const NAMED_BY: Readonly<Record<string, MaterialKind>> = { material: 'sheet', fill: 'fibre', covering: 'covering' };

/** Where the numbers of the material come from that a field names; undefined for fields that name none. */
export function materialSource({ materials }: Notebook, path: FieldPath, key: string): string | undefined {
  const kind = NAMED_BY[path.at(-1)!];
  if (!kind) return undefined;
  const own = materials.find((m) => m.kind === kind && m.key === key);
  return own?.source ?? builtInSource(kind, key);
}

/** A mat product whose values a mat has, and where they come from. */
export interface KnownMat {
  readonly name: string;
  readonly source: string | undefined;
}

/** Undefined where there is none, or where a value comes from a parameter. */
export function knownMat({ thickness_m, dynamicStiffness_N_m3, lossFactor }: MatLayer): KnownMat | undefined {
  const product = MAT_PRODUCTS.find(
    (p) =>
      p.thickness_m === thickness_m && p.dynamicStiffness_N_m3 === dynamicStiffness_N_m3 && p.lossFactor === lossFactor,
  );
  return product && { name: product.name, source: builtInSource('mat', product.key) };
}

/** Where a mat's numbers come from: as the notebook says, unless in no words, or of the known mat that has the same. */
export function matSource(mat: MatLayer): string | undefined {
  return mat.source || knownMat(mat)?.source;
}

function builtInSource(kind: MaterialKind, key: string): string | undefined {
  const sources = MATERIAL_SOURCES[kind];
  return Object.hasOwn(sources, key) ? sources[key] : undefined;
}
