/** What people may write about a material of the notebook's own, and what a new one starts with. */
import { COVERING_LIMITS, MODULUS_Pa } from '#src/acoustics/material-limits.ts';
import { freshKey } from '#src/notebook/fresh-key.ts';
import { MATERIALS_OF } from '#src/notebook/material-lookup.ts';
import type {
  Notebook,
  OwnCovering,
  OwnFibreMaterial,
  OwnMaterial,
  OwnSheetMaterial,
  QuantityKind,
} from '#src/notebook/types.ts';

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

const MODULUS_LIMITS = limits(MODULUS_Pa);

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

export const COVERING_FIELDS: readonly MaterialField<OwnCovering>[] = [
  {
    name: 'surfaceMass_kg_m2',
    label: 'surface mass',
    quantity: 'surface-mass',
    ...limits(COVERING_LIMITS.surfaceMass_kg_m2),
  },
  { name: 'thickness_m', label: 'thickness', quantity: 'length', ...limits(COVERING_LIMITS.thickness_m) },
  {
    name: 'contactStiffness_N_m',
    label: 'contact stiffness',
    quantity: 'stiffness',
    ...limits(COVERING_LIMITS.contactStiffness_N_m),
  },
];

const FIELDS = { sheet: SHEET_MATERIAL_FIELDS, fibre: FIBRE_MATERIAL_FIELDS, covering: COVERING_FIELDS } as const;

export function materialFields({ kind }: OwnMaterial): readonly MaterialField<OwnMaterial & Record<string, unknown>>[] {
  return FIELDS[kind] as never;
}

/** One of the kind as a first guess that can be computed with, and what a new one is called. */
const FIRST = {
  sheet: { like: 'gypsum-board', name: 'own board' },
  fibre: { like: 'glass-fibre', name: 'own fibre' },
  covering: { like: 'carpet', name: 'own covering' },
} as const;

/**
 * A new material with the numbers of the one that is named, or of a usual one. Where they come from is left open: whoever
 * makes it must say so.
 */
export function newMaterial(notebook: Notebook, kind: OwnMaterial['kind'], like?: string): OwnMaterial {
  const known: readonly Known[] = MATERIALS_OF[kind](notebook);
  const model = known.find((m) => m.key === like);
  const base = model ?? known.find((m) => m.key === FIRST[kind].like)!;
  const name = model ? `${model.name}, own` : FIRST[kind].name;
  const taken = Object.values(MATERIALS_OF).flatMap((all) => all(notebook).map((m) => m.key));
  const numbers = FIELDS[kind].flatMap((field) => {
    const value = base[field.name as keyof Known];
    return value === undefined ? [] : [[field.name, value] as const];
  });
  const form = 'form' in base ? { form: base.form } : {};
  return { kind, key: freshKey(name, taken), name, source: '', ...form, ...Object.fromEntries(numbers) } as OwnMaterial;
}

type Known = ReturnType<(typeof MATERIALS_OF)[keyof typeof MATERIALS_OF]>[number];

function limits([min, max]: readonly [number, number]) {
  return { min, max };
}
