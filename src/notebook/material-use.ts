import { fieldLabel, fieldPaths, fieldSpec, getField } from './field-path.ts';
import type { Notebook, OwnMaterial } from './types.ts';

/** The field that names a material of the kind. */
const NAMED_IN: Readonly<Record<OwnMaterial['kind'], string>> = {
  sheet: 'material',
  fibre: 'fill',
  covering: 'covering',
};

/** Where a material of the notebook's own is named, in words: `stack "Floor": ceiling material`; empty: nowhere. */
export function materialUses(notebook: Notebook, kind: OwnMaterial['kind'], key: string): readonly string[] {
  const inStacks = notebook.stacks.flatMap((stack) =>
    fieldPaths(stack)
      .filter((path) => path.at(-1) === NAMED_IN[kind] && fieldSpec(stack, path).type === 'choice')
      .filter((path) => getField(stack, path) === key)
      .map((path) => `stack "${stack.name}": ${fieldLabel(stack, path)}`),
  );
  const offered = notebook.parameters
    .filter((p) => 'choices' in p && p.choices.some((c) => c.value === key))
    .map((p) => `parameter "${p.label}"`);
  return [...inStacks, ...offered];
}
