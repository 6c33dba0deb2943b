/** The materials of a floor in some scenarios, with every number the engine reads of them and where it comes from. */
import { presenceByScenario } from '#src/notebook/layer-presence.ts';
import { coveringMaterial, fibreMaterial, NONE, sheetMaterial } from '#src/notebook/material-lookup.ts';
import type { CavityLayer, Notebook, Stack } from '#src/notebook/types.ts';
import { fieldValue, type Values, valuesOf } from '#src/notebook/values.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import type { QuantityKind } from '#src/quantities/kinds.ts';
import { knownMat, materialSource, matSource } from '../stack/material-source.ts';
import { COVERING_FIELDS, FIBRE_MATERIAL_FIELDS, SHEET_MATERIAL_FIELDS } from '../stack/own-material-fields.ts';

export interface MaterialRecord {
  readonly name: string;
  readonly isOwn: boolean;
  /** "density 700 kg/m³, loss factor 0.035" */
  readonly numbers: string;
  readonly source: string;
}

interface NumberField {
  readonly name: string;
  readonly label: string;
  readonly quantity: QuantityKind;
}

export function materialsRecord(
  notebook: Notebook,
  stack: Stack,
  scenarioIds: readonly string[],
): readonly MaterialRecord[] {
  const found = new Map<string, MaterialRecord>();
  const add = (field: 'material' | 'fill' | 'covering', key: string) => {
    if (key === NONE || found.has(`${field}/${key}`)) return;
    const { material, fields } = lookedUp(notebook, field, key);
    found.set(`${field}/${key}`, {
      name: material.name,
      isOwn: notebook.materials.some((m) => m === material),
      numbers: inWords(material, fields, notebook),
      source: materialSource(notebook, [field], key) || 'not stated',
    });
  };
  for (const values of scenarioIds.map((id) => valuesOf(notebook, id))) {
    add('covering', fieldValue(stack.covering, values));
    for (const layer of stack.layers) {
      if (layer.kind === 'leaf') for (const key of sheetKeys(layer.sheets, values)) add('material', key);
      else if (layer.kind === 'cavity') for (const key of fillKeys(layer, values)) add('fill', key);
    }
  }
  return [...found.values(), ...mats(notebook, stack, scenarioIds)];
}

function sheetKeys(sheets: Extract<Stack['layers'][number], { kind: 'leaf' }>['sheets'], values: Values) {
  return sheets.filter((s) => fieldValue(s.thickness_m, values) > 0).map((s) => fieldValue(s.material, values));
}

/** The first fill is told whatever its thickness, those on it where they are there. */
function fillKeys({ fill, fillsAbove = [] }: CavityLayer, values: Values) {
  const above = fillsAbove.filter((f) => fieldValue(f.fillThickness_m, values) > 0);
  return [fill, ...above.map((f) => f.fill)].map((key) => fieldValue(key, values));
}

function lookedUp(notebook: Notebook, field: 'material' | 'fill' | 'covering', key: string) {
  switch (field) {
    case 'material':
      return { material: sheetMaterial(notebook, key), fields: SHEET_MATERIAL_FIELDS };
    case 'fill':
      return { material: fibreMaterial(notebook, key), fields: FIBRE_MATERIAL_FIELDS };
    case 'covering':
      return { material: coveringMaterial(notebook, key), fields: COVERING_FIELDS };
  }
}

function inWords(material: object, fields: readonly NumberField[], { units }: Notebook): string {
  const numbers: Readonly<Record<string, unknown>> = { ...material };
  return fields
    .flatMap(({ name, label, quantity }) => {
      const value = numbers[name];
      return typeof value === 'number' ? [`${label} ${formatQuantity(value, quantity, units)}`] : [];
    })
    .join(', ');
}

/** A mat's numbers stand among the layers; what remains is where they come from. */
function mats(notebook: Notebook, stack: Stack, scenarioIds: readonly string[]): readonly MaterialRecord[] {
  const presence = presenceByScenario(notebook, stack.id);
  return stack.layers.flatMap((layer, i) => {
    if (layer.kind !== 'mat' || !scenarioIds.some((id) => presence.get(id)![i])) return [];
    const known = knownMat(layer);
    const name = known ? `${layer.name}: ${known.name}` : layer.name;
    return [{ name, isOwn: !known, numbers: 'as stated above', source: matSource(layer) ?? 'not stated' }];
  });
}
