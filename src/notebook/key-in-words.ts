/** What a key of the file is called on the page, and the unit that its number has in the file. */
import { type FieldSpec, LAYER_FIELDS, LEAK_FIELDS, SHEET_FIELDS, STACK_FIELDS } from './field-specs.ts';
import { RANGE_WORDS } from './range-words.ts';

const FIELDS: Readonly<Record<string, FieldSpec>> = {
  ...LEAK_FIELDS.slit,
  ...LEAK_FIELDS.hole,
  ...STACK_FIELDS,
  ...SHEET_FIELDS,
  ...LAYER_FIELDS.leaf,
  ...LAYER_FIELDS.mat,
  ...LAYER_FIELDS.cavity,
};

/** Where taking the key apart would not do. */
const NAMES: Readonly<Record<string, string>> = {
  youngsModulus_Pa: "Young's modulus",
  youngsModulusAcross_Pa: "Young's modulus across",
  poissonRatio: "Poisson's ratio",
  R500_dB: 'R at 500 Hz',
  straightK_dB: 'K straight on',
  cornerK_dB: 'K around the corner',
  Rw_dB: 'Rw',
  min: `“${RANGE_WORDS.min}”`,
  max: `“${RANGE_WORDS.max}”`,
};

/** By the end of a key. Longer ends first, so that a part of one is not taken for the whole. */
const UNITS: readonly (readonly [end: string, unit: string])[] = [
  ['_dB_per_octave', 'dB per octave'],
  ['_Pa_s_m2', 'Pa·s/m²'],
  ['_kg_m3', 'kg/m³'],
  ['_kg_m2', 'kg/m²'],
  ['_N_m3', 'N/m³'],
  ['_N_m', 'N/m'],
  ['_Pa', 'Pa'],
  ['_Hz', 'Hz'],
  ['_dB', 'dB'],
  ['_m3', 'm³'],
  ['_m', 'm'],
  ['_s', 's'],
];

/** "thickness" for `thickness_m`; a key that is not one of the file's stays as it is. */
export function nameOfKey(key: string): string {
  const spec = Object.hasOwn(FIELDS, key) ? FIELDS[key] : undefined;
  if (spec) return spec.label;
  if (Object.hasOwn(NAMES, key)) return NAMES[key]!;
  const [end] = endOf(key) ?? [''];
  const stem = key.slice(0, key.length - end.length);
  return /^[a-z]+([A-Z][a-z]+)*$/.test(stem) ? stem.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`) : key;
}

/** Empty for what has none. */
export function unitOfKey(key: string): string {
  return endOf(key)?.[1] ?? '';
}

function endOf(key: string) {
  return UNITS.find(([end]) => key.endsWith(end));
}
