/** What people may write about a material of the notebook's own, and what a new one starts with. */
import { MODULUS_Pa } from '#src/acoustics/material-limits.ts';
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
  /** What holds while the field is empty; absent: it may not be. */
  readonly whenEmpty?: string;
}

const MODULUS_LIMITS = { min: MODULUS_Pa[0], max: MODULUS_Pa[1] };

export const SHEET_MATERIAL_FIELDS: readonly MaterialField<OwnSheetMaterial>[] = [
  { name: 'density_kg_m3', label: 'density', quantity: 'density', min: 20, max: 20_000 },
  { name: 'youngsModulus_Pa', label: "Young's modulus", quantity: 'modulus', ...MODULUS_LIMITS },
  { name: 'poissonRatio', label: "Poisson's ratio", quantity: 'ratio', min: 0, max: 0.49 },
  { name: 'lossFactor', label: 'loss factor', quantity: 'ratio', min: 1e-4, max: 1 },
  {
    name: 'youngsModulusAcross_Pa',
    label: "Young's modulus across",
    quantity: 'modulus',
    ...MODULUS_LIMITS,
    whenEmpty: 'the same',
  },
  {
    name: 'contactStiffness_N_m',
    label: 'contact stiffness',
    quantity: 'stiffness',
    min: 1,
    max: 1e12,
    whenEmpty: 'usual',
  },
];

export const FIBRE_MATERIAL_FIELDS: readonly MaterialField<OwnFibreMaterial>[] = [
  { name: 'density_kg_m3', label: 'density', quantity: 'density', min: 0, max: 1000 },
  { name: 'flowResistivity_Pa_s_m2', label: 'flow resistivity', quantity: 'flow-resistivity', min: 50, max: 1e7 },
];

export function materialFields({ kind }: OwnMaterial): readonly MaterialField<OwnMaterial & Record<string, unknown>>[] {
  return (kind === 'sheet' ? SHEET_MATERIAL_FIELDS : FIBRE_MATERIAL_FIELDS) as never;
}

/** One of the kind as a first guess that can be computed with: a board like gypsum board, a batt like glass fibre. */
const LIKE = { sheet: 'gypsum-board', fibre: 'glass-fibre' } as const;

/**
 * A new material with the numbers of the one that is named, or of a usual one. Where they come from is left open: whoever
 * makes it must say so.
 */
export function newMaterial(notebook: Notebook, kind: OwnMaterial['kind'], like?: string): OwnMaterial {
  const known: readonly Known[] = kind === 'sheet' ? sheetMaterials(notebook) : fibreMaterials(notebook);
  const model = known.find((m) => m.key === like);
  const base = model ?? known.find((m) => m.key === LIKE[kind])!;
  const name = model ? `${model.name}, own` : kind === 'sheet' ? 'own board' : 'own fibre';
  const taken = [...sheetMaterials(notebook), ...fibreMaterials(notebook)].map((m) => m.key);
  const numbers = (kind === 'sheet' ? SHEET_MATERIAL_FIELDS : FIBRE_MATERIAL_FIELDS).flatMap((field) => {
    const value = base[field.name as keyof Known];
    return value === undefined ? [] : [[field.name, value] as const];
  });
  const form = 'form' in base ? { form: base.form } : {};
  return { kind, key: freshKey(name, taken), name, source: '', ...form, ...Object.fromEntries(numbers) } as OwnMaterial;
}

type Known = ReturnType<typeof sheetMaterials>[number] | ReturnType<typeof fibreMaterials>[number];
