/**
 * From the document to what the engine is given: every reference replaced by the scenario's value, every material
 * looked up, the flanking in numbers. Pure; the same notebook, scenario and stack give equal constructions.
 */
import type {
  Cavity,
  Construction,
  ConstructionLayer,
  Covering,
  Leaf,
  Leak,
  Mat,
  Sheet,
} from '#src/acoustics/construction.ts';
import { cavityDepth_m } from '#src/acoustics/normalise-construction.ts';
import { fillsOf } from './fill-places.ts';
import { findStack } from './find.ts';
import { coveringMaterial, fibreMaterial, NONE, sheetMaterial } from './material-lookup.ts';
import { OPTIONAL_CAVITY_FIELDS } from './optional-cavity-fields.ts';
import { resolveFlanking } from './resolve-flanking.ts';
import type {
  CavityLayer,
  Field,
  Layer,
  LeafLayer,
  MatLayer,
  Notebook,
  ParameterValue,
  SheetField,
  StackLeak,
} from './types.ts';
import { fieldValue, type Values, valuesOf } from './values.ts';

/** Contact stiffness of a timber sheet under the tapping machine's hammer, N/m: common practice, no source. */
const TIMBER_CONTACT_N_m = 2e7;

export { changedKeys, inheritedValues, valuesOf } from './values.ts';

/** @throws RangeError for an unknown scenario, stack, parameter or material; a notebook that was read has none. */
export function resolveStack(notebook: Notebook, scenarioId: string, stackId: string): Construction {
  return resolveStackWith(notebook, valuesOf(notebook, scenarioId), stackId);
}

/** As `resolveStack`, for values that need not belong to a scenario (a sweep's, for instance). */
export function resolveStackWith(notebook: Notebook, values: Values, stackId: string): Construction {
  const stack = findStack(notebook, stackId);
  const flanking = resolveFlanking(notebook.flanking);
  const covering = resolveCovering(notebook, fieldValue(stack.covering, values));
  return {
    length_m: fieldValue(stack.length_m, values),
    width_m: fieldValue(stack.width_m, values),
    ...(covering && { covering }),
    layers: stack.layers.map((layer) => resolveLayer(notebook, layer, values)),
    ...(flanking && { flanking }),
    ...(stack.leaks?.length && { leaks: stack.leaks.map((leak) => resolveLeak(leak, values)) }),
  };
}

/** To the engine a leak without length is a round hole. */
function resolveLeak(leak: StackLeak, values: Values): Leak {
  const { name } = leak;
  const depth_m = fieldValue(leak.depth_m, values);
  return leak.kind === 'hole'
    ? { name, width_m: fieldValue(leak.diameter_m, values), depth_m }
    : { name, width_m: fieldValue(leak.width_m, values), length_m: fieldValue(leak.length_m, values), depth_m };
}

function resolveCovering(notebook: Notebook, key: string): Covering | undefined {
  if (key === NONE) return undefined;
  const { name, surfaceMass_kg_m2, contactStiffness_N_m, thickness_m } = coveringMaterial(notebook, key);
  return { name, surfaceMass_kg_m2, contactStiffness_N_m, thickness_m };
}

function resolveLayer(notebook: Notebook, layer: Layer, values: Values): ConstructionLayer {
  switch (layer.kind) {
    case 'leaf':
      return resolveLeaf(notebook, layer, values);
    case 'mat':
      return resolveMat(layer, values);
    case 'cavity':
      return resolveCavity(notebook, layer, values);
  }
}

function resolveLeaf(notebook: Notebook, leaf: LeafLayer, values: Values): Leaf {
  return {
    kind: 'leaf',
    sheets: leaf.sheets.map((sheet) => resolveSheet(notebook, sheet, values)),
    contact: fieldValue(leaf.contact, values),
  };
}

function resolveSheet(notebook: Notebook, sheet: SheetField, values: Values): Sheet {
  const material = sheetMaterial(notebook, fieldValue(sheet.material, values));
  const { youngsModulusAcross_Pa: across_Pa } = material;
  const contact_N_m = material.contactStiffness_N_m ?? (material.form === 'board' ? TIMBER_CONTACT_N_m : undefined);
  return {
    name: material.name,
    thickness_m: fieldValue(sheet.thickness_m, values),
    density_kg_m3: optional(sheet.density_kg_m3, values) ?? material.density_kg_m3,
    youngsModulus_Pa: material.youngsModulus_Pa,
    ...(across_Pa !== undefined && { youngsModulusAcross_Pa: across_Pa }),
    poissonRatio: material.poissonRatio,
    lossFactor: material.lossFactor,
    form: material.form,
    ...(contact_N_m !== undefined && { contactStiffness_N_m: contact_N_m }),
  };
}

function resolveMat(mat: MatLayer, values: Values): Mat {
  return {
    kind: 'mat',
    name: mat.name,
    thickness_m: fieldValue(mat.thickness_m, values),
    dynamicStiffness_N_m3: fieldValue(mat.dynamicStiffness_N_m3, values),
    lossFactor: fieldValue(mat.lossFactor, values),
  };
}

function resolveCavity(notebook: Notebook, cavity: CavityLayer, values: Values): Cavity {
  const empty = emptyCavity(cavity, values);
  const fitting_m = fittingFills_m(cavity, cavityDepth_m(empty), values);
  const fill = fillsOf(cavity).flatMap((field, i) => resolveFill(notebook, field.fill, fitting_m[i]!, values));
  return { ...empty, fill };
}

/** A cavity before anything is put into it. */
export function emptyCavity(cavity: CavityLayer, values: Values): Cavity {
  const overrides = OPTIONAL_CAVITY_FIELDS.flatMap((name) => {
    const value = optional(cavity[name], values);
    return value === undefined ? [] : [[name, value] as const];
  });
  return {
    kind: 'cavity',
    joists: fieldValue(cavity.joists, values),
    depth_m: fieldValue(cavity.depth_m, values),
    joistWidth_m: fieldValue(cavity.joistWidth_m, values),
    joistSpacing_m: fieldValue(cavity.joistSpacing_m, values),
    support: fieldValue(cavity.support, values),
    ...Object.fromEntries(overrides),
    fill: [],
  };
}

/** How much of each fill lies in a cavity of this depth, m: what is thicker is cut off at the top, and none is 0. */
export function fittingFills_m(cavity: CavityLayer, depth_m: number, values: Values): readonly number[] {
  let left_m = depth_m;
  return fillsOf(cavity).map(({ fill, fillThickness_m }) => {
    const thickness_m = fieldValue(fill, values) === NONE ? 0 : Math.min(fieldValue(fillThickness_m, values), left_m);
    left_m -= thickness_m;
    // What is left of a difference of decimals is no room.
    if (left_m < 1e-9) left_m = 0;
    return thickness_m;
  });
}

function resolveFill(notebook: Notebook, fill: Field<string>, thickness_m: number, values: Values): Cavity['fill'] {
  if (thickness_m === 0) return [];
  const { name, flowResistivity_Pa_s_m2, density_kg_m3 } = fibreMaterial(notebook, fieldValue(fill, values));
  return [{ name, thickness_m, flowResistivity_Pa_s_m2, density_kg_m3 }];
}

function optional<T extends ParameterValue>(field: Field<T> | undefined, values: Values): T | undefined {
  return field === undefined ? undefined : fieldValue(field, values);
}
