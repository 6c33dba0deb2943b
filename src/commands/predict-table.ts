import type { NamedFrequency, Ratings } from '#src/acoustics/prediction.ts';
import { FIELD_VALUE_NAMES } from '#src/acoustics/ratings/field-values.ts';
import type { NotebookPrediction, StackPrediction } from './predict-notebook.ts';
import { printable } from './printable.ts';

/** Tables for reading: the ratings of every scenario first, then each stack's bands. */
export function asTable(result: NotebookPrediction): string {
  const stacks = result.scenarios.flatMap((scenario) =>
    scenario.stacks.map((stack) => ({ title: titleOf(scenario.name, stack.name), stack })),
  );
  const blocks = stacks.map(({ title, stack }) => stackBlock(title, stack));
  const head = `${result.notebook} (${result.engine})`;
  return printable([head, ratingsBlock(stacks), ...fieldBlock(stacks), ...blocks, CAUTION].join('\n\n'));
}

interface TitledStack {
  readonly title: string;
  readonly stack: StackPrediction;
}

const CAUTION =
  'Predicted, laboratory-like values; in the field sound also goes around. Added mass is load: ask a structural engineer.\n' +
  'Local codes and licensed practice decide.';

const RATINGS: readonly (readonly [heading: string, of: (ratings: Ratings) => string])[] = [
  ['STC', (r) => whole(r.STC)],
  ['OITC', (r) => whole(r.OITC)],
  ['Rw(C;Ctr)', (r) => `${whole(r.Rw)}(${whole(r.C)};${whole(r.Ctr)})`],
  ['IIC', (r) => whole(r.IIC)],
  ['Ln,w(CI)', (r) => `${whole(r.Lnw)}(${whole(r.CI)})`],
];

function ratingsBlock(stacks: readonly TitledStack[]): string {
  const head = ['', ...RATINGS.map(([heading]) => heading), 'kg/m²', 'mm'];
  const rows = stacks.map(({ title, stack }) => [
    title,
    ...RATINGS.map(([, of]) => of(stack.ratings)),
    stack.surfaceMass_kg_m2.toFixed(1),
    (1000 * stack.height_m).toFixed(0),
  ]);
  return columns([head, ...rows]);
}

function fieldBlock(stacks: readonly TitledStack[]): readonly string[] {
  const rows = stacks.flatMap(({ title, stack: { field } }) =>
    field ? [[title, ...FIELD_VALUE_NAMES.map(({ key }) => whole(field[key]))]] : [],
  );
  if (rows.length === 0) return [];
  const limits = new Set(stacks.flatMap(({ stack }) => stack.field?.limits ?? []));
  return [
    [
      'As it would be measured in the building, with the flanking of the notebook:',
      columns([['', ...FIELD_VALUE_NAMES.map(({ name }) => name)], ...rows]),
      ...limits,
    ].join('\n'),
  ];
}

function stackBlock(title: string, stack: StackPrediction): string {
  const paths = Object.entries(stack.paths_dB);
  const impactPaths = Object.entries(stack.impactPaths_dB);
  const head = [
    ...['Hz', 'R', ...paths.map(([path]) => `R ${path}`)],
    ...['Ln', ...impactPaths.map(([path]) => `Ln ${path}`)],
  ];
  const rows = stack.bands_Hz.map((band_Hz, i) => [
    String(band_Hz),
    ...[stack.R_dB, ...paths.map(([, levels]) => levels)].map((levels) => tenths(levels[i])),
    ...[stack.Ln_dB, ...impactPaths.map(([, levels]) => levels)].map((levels) => tenths(levels[i])),
  ]);
  const notes = [
    ...frequencyLine('Resonances', stack.resonances_Hz),
    ...frequencyLine('Critical frequencies', stack.criticalFrequencies_Hz),
    ...modesLine(stack),
  ];
  return [title, columns([head, ...rows]), ...notes].join('\n');
}

function modesLine({ diffuseFrom_Hz }: StackPrediction): readonly string[] {
  if (diffuseFrom_Hz === undefined) return [];
  const where = diffuseFrom_Hz === null ? 'In every band' : `Below ${diffuseFrom_Hz} Hz`;
  return [
    `${where} a room of these sides, 2.5 m high (assumed), has fewer than five modes a band: what is heard depends on the place.`,
  ];
}

function frequencyLine(heading: string, frequencies: readonly NamedFrequency[]): readonly string[] {
  if (frequencies.length === 0) return [];
  return [`${heading}: ${frequencies.map((f) => `${f.frequency_Hz.toFixed(0)} Hz (${f.name})`).join(', ')}`];
}

/** The first column to the left, numbers to the right. */
function columns(rows: readonly (readonly string[])[]): string {
  const widths = rows[0]!.map((_, i) => Math.max(...rows.map((row) => [...row[i]!].length)));
  return rows
    .map((row) => row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  '))
    .join('\n');
}

function titleOf(scenario: string, stack: string): string {
  return scenario === stack ? stack : `${scenario}: ${stack}`;
}

function whole(value: number): string {
  return minus(Number.isFinite(value) ? String(value) : '–');
}

function tenths(value: number | undefined): string {
  return minus(value !== undefined && Number.isFinite(value) ? value.toFixed(1) : '–');
}

function minus(text: string): string {
  return text.replace('-', '−');
}
