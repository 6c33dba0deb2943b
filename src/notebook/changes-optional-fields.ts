import { OPTIONAL_CAVITY_FIELDS } from './optional-cavity-fields.ts';
import type { Layer, Notebook } from './types.ts';

/** Whether a scenario changes what a field holds that may be absent: only then may a change be no more than what is usual. */
export function changesOptionalFields({ stacks, scenarios }: Notebook): boolean {
  const keys = new Set(stacks.flatMap(({ layers }) => layers.flatMap(optionalFields)).map((field) => field.parameter));
  return scenarios.some(({ changes }) => Object.keys(changes).some((key) => keys.has(key)));
}

function optionalFields(layer: Layer): readonly { readonly parameter: string }[] {
  const fields =
    layer.kind === 'cavity'
      ? OPTIONAL_CAVITY_FIELDS.map((name) => layer[name])
      : layer.kind === 'leaf'
        ? layer.sheets.map((sheet) => sheet.density_kg_m3)
        : [];
  return fields.filter((field) => typeof field === 'object');
}
