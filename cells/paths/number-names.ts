import { FIBRE_MATERIAL_FIELDS, SHEET_MATERIAL_FIELDS } from '#cells/stack/own-material-fields.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { numberOwner } from '#src/acoustics/number-owner.ts';
import type { NumberPath } from '#src/acoustics/number-path.ts';
import { CAVITY_FIELDS, LEAK_FIELDS, MAT_FIELDS, SHEET_FIELDS, SUPPORT_LABELS } from '#src/notebook/field-specs.ts';
import type { QuantityKind, Stack } from '#src/notebook/types.ts';

export interface NumberName {
  /** "gypsum board, thickness" */
  readonly name: string;
  /** What of the floor it belongs to: "ceiling". */
  readonly place: string;
  readonly quantity: QuantityKind;
}

interface Words {
  readonly label: string;
  readonly quantity: QuantityKind;
}

const WORDS: Readonly<Record<string, Words>> = {
  surfaceMass_kg_m2: { label: 'surface mass', quantity: 'surface-mass' },
  ...Object.fromEntries([...SHEET_MATERIAL_FIELDS, ...FIBRE_MATERIAL_FIELDS].map((field) => [field.name, field])),
  ...Object.fromEntries(
    Object.entries({ ...SHEET_FIELDS, ...MAT_FIELDS, ...CAVITY_FIELDS }).flatMap(([name, spec]) =>
      spec.type === 'number' ? [[name, spec]] : [],
    ),
  ),
};

/** What people call a number of a construction that was made from the stack. @throws RangeError for an unknown number. */
export function numberName(construction: Construction, stack: Stack, path: NumberPath): NumberName {
  const field = path.split('/').at(-1)!;
  const isOfLeak = path.startsWith('leaks/');
  const words = isOfLeak ? leakWords(construction, path, field) : WORDS[field];
  if (!words) throw new RangeError(`path must name a number of a floor, got "${path}"`);
  const { layer: at, part } = numberOwner(construction, path);
  if (at === undefined) return named(part, words, isOfLeak ? 'gaps' : 'covering');
  const layer = construction.layers[at];
  // What a support reads is told by its kind: "isolation clips, stiffness of one support".
  const isSupport = layer?.kind === 'cavity' && /^(support|hanger)/.test(field);
  return named(isSupport ? SUPPORT_LABELS[layer.support] : part, words, stack.layers[at]?.name ?? '');
}

/** A hole's width is its diameter. */
function leakWords({ leaks = [] }: Construction, path: NumberPath, field: string): Words | undefined {
  const leak = leaks[Number(path.split('/')[1])];
  const isHole = leak?.length_m === undefined;
  const specs: Readonly<Record<string, Words>> = LEAK_FIELDS[isHole ? 'hole' : 'slit'];
  return specs[isHole && field === 'width_m' ? 'diameter_m' : field];
}

function named(thing: string | undefined, { label, quantity }: Words, place: string): NumberName {
  return { name: thing ? `${thing}, ${label}` : label, place, quantity };
}
