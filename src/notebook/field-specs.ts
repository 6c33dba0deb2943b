/**
 * What every field of a stack may hold: its name, kind of quantity or choices, limits and a usual range for sliders.
 *
 * The limits are wide, so that unusual floors can be built, but keep every accepted stack within what the engine
 * computes without a gap. They are our own, no source.
 */
import { CAVITY_DEPTH_m } from '#src/acoustics/cavity-limits.ts';
import type { JoistKind, SheetContact, SupportKind } from '#src/acoustics/construction.ts';
import { coverings, fibreMaterials, NONE, sheetMaterials } from './material-lookup.ts';
import type { Choice, Notebook, QuantityKind } from './types.ts';

export interface NumberSpec {
  readonly type: 'number';
  readonly label: string;
  readonly quantity: QuantityKind;
  /** Accepted, SI, inclusive. */
  readonly min: number;
  readonly max: number;
  /** In plain words, where more would be something else. */
  readonly whyNotMore?: string;
  /** Range and step of a slider that is made for the field. */
  readonly usualMin: number;
  readonly usualMax: number;
  readonly step: number;
  /** True where the field may be absent. */
  readonly optional: boolean;
}

export interface ChoiceSpec {
  readonly type: 'choice';
  readonly label: string;
  readonly choices: (notebook: Pick<Notebook, 'materials'>) => readonly Choice[];
  /** True where the choices are the same for every notebook and the schema knows them. */
  readonly fixed: boolean;
  readonly optional: false;
}

export type FieldSpec = NumberSpec | ChoiceSpec;

export function number(
  label: string,
  quantity: QuantityKind,
  [min, max]: readonly [number, number],
  [usualMin, usualMax, step]: readonly [number, number, number],
): NumberSpec {
  return { type: 'number', label, quantity, min, max, usualMin, usualMax, step, optional: false };
}

function choice(label: string, labels: Readonly<Record<string, string>>): ChoiceSpec {
  const choices = Object.entries(labels).map(([value, words]) => ({ value, label: words }));
  return { type: 'choice', label, choices: () => choices, fixed: true, optional: false };
}

function material(label: string, choices: ChoiceSpec['choices']): ChoiceSpec {
  return { type: 'choice', label, choices, fixed: false, optional: false };
}

const because = (whyNotMore: string, spec: NumberSpec): NumberSpec => ({ ...spec, whyNotMore });
const optional = (spec: NumberSpec): NumberSpec => ({ ...spec, optional: true });
const named = (list: readonly { readonly key: string; readonly name: string }[]): readonly Choice[] =>
  list.map(({ key, name }) => ({ value: key, label: name }));
const NOT_A_ROOM = 'what is higher is a room with modes of its own';
const NOTHING: Choice = { value: NONE, label: 'none' };

export const CONTACT_LABELS: Readonly<Record<SheetContact, string>> = {
  loose: 'lying loose',
  bonded: 'glued together',
  damped: 'with a damping layer between',
};

export const JOIST_LABELS: Readonly<Record<JoistKind, string>> = {
  none: 'no joists',
  'solid-timber': 'solid timber joists',
  'i-joist': 'timber I-joists',
  'open-truss': 'open timber trusses',
  'cold-formed-steel': 'cold-formed steel joists',
};

export const SUPPORT_LABELS: Readonly<Record<SupportKind, string>> = {
  direct: 'screwed direct',
  'resilient-channel': 'resilient channel',
  clips: 'isolation clips',
  hangers: 'spring hangers',
  'separate-joists': 'joists of its own',
};

export const STACK_FIELDS = {
  length_m: number('length', 'span', [0.5, 100], [2, 20, 0.1]),
  width_m: number('width', 'span', [0.5, 100], [2, 20, 0.1]),
  covering: material('covering', (notebook) => [NOTHING, ...named(coverings(notebook))]),
} as const satisfies Record<string, FieldSpec>;

const LEAF_FIELDS = {
  contact: choice('contact between sheets', CONTACT_LABELS),
} as const satisfies Record<string, FieldSpec>;

export const SHEET_FIELDS = {
  material: material('material', (notebook) => named(sheetMaterials(notebook))),
  // Bending theory holds up to 0.05 c_L/h, 175 Hz for a metre of concrete (Cremer & Heckl, Structure-borne Sound; from memory).
  thickness_m: because(
    'what is thicker bends as a plate at low frequencies only',
    number('thickness', 'length', [0, 1], [0, 0.1, 0.001]),
  ),
  density_kg_m3: optional(number('density', 'density', [20, 20000], [200, 2600, 10])),
} as const satisfies Record<string, FieldSpec>;

export const MAT_FIELDS = {
  thickness_m: number('thickness', 'length', [0, 0.5], [0, 0.06, 0.001]),
  dynamicStiffness_N_m3: number('dynamic stiffness', 'dynamic-stiffness', [1e5, 1e11], [2e6, 1e8, 1e6]),
  lossFactor: number('loss factor', 'ratio', [0.001, 1], [0.01, 0.5, 0.01]),
} as const satisfies Record<string, FieldSpec>;

function fillFields(name: string) {
  return {
    fill: material(name, (notebook) => [NOTHING, ...named(fibreMaterials(notebook))]),
    fillThickness_m: number(`${name} thickness`, 'length', [0, 5], [0, 0.4, 0.005]),
  } as const satisfies Record<string, FieldSpec>;
}

export const CAVITY_FIELDS = {
  joists: choice('joists', JOIST_LABELS),
  depth_m: because(NOT_A_ROOM, number('depth', 'length', CAVITY_DEPTH_m, [0, 0.6, 0.005])),
  joistWidth_m: number('joist width', 'length', [0.001, 1], [0.03, 0.1, 0.001]),
  joistSpacing_m: number('joist spacing', 'length', [0.05, 10], [0.3, 0.8, 0.001]),
  support: choice('ceiling support', SUPPORT_LABELS),
  supportLineSpacing_m: optional(number('spacing of support lines', 'length', [0.05, 10], [0.3, 0.8, 0.001])),
  supportPointSpacing_m: optional(number('spacing along a line', 'length', [0.05, 10], [0.3, 1.5, 0.001])),
  supportHeight_m: optional(
    because(NOT_A_ROOM, number('height of the support', 'length', CAVITY_DEPTH_m, [0.01, 0.3, 0.001])),
  ),
  supportStiffness_N_m: optional(number('stiffness of one support', 'stiffness', [1e2, 1e10], [5e4, 2e6, 1e4])),
  hangerFrequency_Hz: optional(number('natural frequency of the hangers', 'frequency', [1, 200], [3, 20, 0.5])),
  ...fillFields('fill'),
} as const satisfies Record<string, FieldSpec>;

/** Of the fibres that lie on the first, from the lower one up. A cavity may have as many; our own choice, no source. */
export const FILLS_ABOVE_FIELDS = ['second fill', 'third fill', 'fourth fill'].map(fillFields);

/** What a fill is called where there are several: `place` counts from the first, 0. */
export function fillName(place: number): string {
  return place === 0 ? 'first fill' : FILLS_ABOVE_FIELDS[place - 1]!.fill.label;
}

const depth_m = number('depth', 'length', [0, 2], [0, 0.4, 0.001]);

export const LEAK_FIELDS = {
  slit: {
    width_m: number('width', 'length', [0, 1], [0, 0.02, 0.0005]),
    length_m: number('length', 'span', [0, 100], [0, 10, 0.1]),
    depth_m,
  },
  hole: { diameter_m: number('diameter', 'length', [0, 1], [0, 0.2, 0.001]), depth_m },
} as const satisfies Record<string, Record<string, FieldSpec>>;

export const LAYER_FIELDS = { leaf: LEAF_FIELDS, mat: MAT_FIELDS, cavity: CAVITY_FIELDS } as const;
