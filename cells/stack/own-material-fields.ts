/** What people may write about a material of the notebook's own, and what a new one starts with. */
import { freshKey } from '#src/notebook/fresh-key.ts';
import { fibreMaterials, sheetMaterials } from '#src/notebook/material-lookup.ts';
import type { Notebook, OwnFibreMaterial, OwnMaterial, OwnSheetMaterial, QuantityKind } from '#src/notebook/types.ts';

export interface MaterialField<M extends OwnMaterial> {
  readonly name: keyof M & string;
  readonly label: string;
  readonly quantity: QuantityKind;
  /** As in the notebook's file. */
  readonly min: number;
  readonly max: number;
}

export const SHEET_MATERIAL_FIELDS: readonly MaterialField<OwnSheetMaterial>[] = [
  { name: 'density_kg_m3', label: 'density', quantity: 'density', min: 20, max: 20_000 },
  { name: 'youngsModulus_Pa', label: "Young's modulus", quantity: 'modulus', min: 1e5, max: 1e13 },
  { name: 'poissonRatio', label: "Poisson's ratio", quantity: 'ratio', min: 0, max: 0.49 },
  { name: 'lossFactor', label: 'loss factor', quantity: 'ratio', min: 1e-4, max: 1 },
];

export const FIBRE_MATERIAL_FIELDS: readonly MaterialField<OwnFibreMaterial>[] = [
  { name: 'density_kg_m3', label: 'density', quantity: 'density', min: 0, max: 1000 },
  { name: 'flowResistivity_Pa_s_m2', label: 'flow resistivity', quantity: 'flow-resistivity', min: 50, max: 1e7 },
];

export function materialFields({ kind }: OwnMaterial): readonly MaterialField<OwnMaterial & Record<string, unknown>>[] {
  return (kind === 'sheet' ? SHEET_MATERIAL_FIELDS : FIBRE_MATERIAL_FIELDS) as never;
}

/** A first guess that can be computed with: a board like gypsum board, a batt like glass fibre. */
export function newMaterial(notebook: Notebook, kind: OwnMaterial['kind']): OwnMaterial {
  const name = kind === 'sheet' ? 'own board' : 'own fibre';
  const taken = [...sheetMaterials(notebook), ...fibreMaterials(notebook)].map((m) => m.key);
  const base = { key: freshKey(name, taken), name, source: 'own values, no source' };
  if (kind === 'fibre') return { kind, ...base, density_kg_m3: 30, flowResistivity_Pa_s_m2: 10_000 };
  return {
    kind,
    ...base,
    form: 'board',
    density_kg_m3: 700,
    youngsModulus_Pa: 2.1e9,
    poissonRatio: 0.3,
    lossFactor: 0.03,
  };
}
