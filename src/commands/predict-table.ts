import type { Ratings } from '#src/acoustics/prediction.ts';
import type { NotebookPrediction, StackPrediction } from './predict-notebook.ts';
import { bandTable } from './predict-table-bands.ts';
import { soundBelowTable } from './predict-table-below.ts';
import { fieldBlock } from './predict-table-field.ts';
import { gainsBlock } from './predict-table-gains.ts';
import { laidBlock } from './predict-table-laid.ts';
import { sensitivityTable, toleranceTable, uncertaintyTable } from './predict-table-numbers.ts';
import { simpleTable } from './predict-table-simple.ts';
import { printable } from './printable.ts';
import type { RatingNames } from './rating-names.ts';
import { columns, rated, whole } from './text-columns.ts';
import { type TitledStack, titledStacks } from './titled-stack.ts';

/** Tables for reading: the ratings of every scenario first, then each stack's bands and what else was asked for. */
export function asTable(result: NotebookPrediction): string {
  const stacks = titledStacks(result);
  const head = `${result.notebook} (${result.engine})`;
  const overview = [
    ...ratingsBlock(stacks),
    ...gainsBlock(stacks),
    ...laidBlock(stacks),
    ...fieldBlock(stacks),
    ...belowBlock(stacks),
    ...noticesBlock(stacks),
    ...outsideBlock(stacks),
  ];
  const blocks = stacks.flatMap(({ title, stack }) => [
    `${title}\n${bandTable(stack)}`,
    ...PARTS.flatMap((table) => table(stack) ?? []).map((block) => `${title}: ${block}`),
  ]);
  return printable([head, ...overview, ...blocks, caution(stacks)].join('\n\n'));
}

/** What is shown of a stack besides its bands, each with its heading; undefined where it was not asked for. */
const PARTS: readonly ((stack: StackPrediction) => string | undefined)[] = [
  soundBelowTable,
  simpleTable,
  uncertaintyTable,
  toleranceTable,
  sensitivityTable,
];

function caution(stacks: readonly TitledStack[]): string {
  const flanked = stacks.some(({ stack }) => stack.paths_dB.flanking !== undefined);
  const how = flanked
    ? 'Predicted with the sound that is stated to go around; what is not stated, and workmanship, make it worse.'
    : 'Predicted, laboratory-like values; in the field sound also goes around.';
  return `${how} Added mass is load: ask a structural engineer.\nLocal codes and licensed practice decide.`;
}

const RATINGS: readonly (readonly [heading: (names: RatingNames) => string, of: (ratings: Ratings) => string])[] = [
  [({ STC }) => STC, (r) => whole(r.STC)],
  [({ OITC }) => OITC, (r) => whole(r.OITC)],
  [({ Rw }) => `${Rw}(C;Ctr)`, (r) => `${whole(r.Rw)}(${whole(r.C)};${whole(r.Ctr)})`],
  [({ IIC }) => IIC, (r) => whole(r.IIC)],
  [({ Lnw }) => `${Lnw}(CI)`, (r) => `${whole(r.Lnw)}(${whole(r.CI)})`],
];

function ratingsBlock(stacks: readonly TitledStack[]): readonly string[] {
  const [first] = stacks;
  if (!first) return [];
  const head = ['', ...RATINGS.map(([heading]) => heading(first.stack.ratingNames)), 'kg/m²', 'mm'];
  const rows = stacks.map(({ title, stack }) => [
    title,
    ...RATINGS.map(([, of]) => of(stack.ratings)),
    stack.surfaceMass_kg_m2.toFixed(1),
    (1000 * stack.height_m).toFixed(0),
  ]);
  return [columns([head, ...rows])];
}

/** The ratings of what is heard below, every scenario in one look. */
function belowBlock(stacks: readonly TitledStack[]): readonly string[] {
  const rows = stacks.flatMap(({ title, stack: { soundBelow } }) =>
    soundBelow ? [[title, ...soundBelow.ratings.map(rated), String(heardBands(soundBelow.audible))]] : [],
  );
  const sound = stacks[0]?.stack.soundBelow;
  if (!sound || rows.length === 0) return [];
  const head = ['', ...sound.ratings.map(({ name }) => name), 'bands heard'];
  return [`In the room below, with ${sound.source} above:\n${columns([head, ...rows])}`];
}

function heardBands(audible: readonly (string | null)[]): number {
  return audible.filter((a) => a === 'heard').length;
}

function noticesBlock(stacks: readonly TitledStack[]): readonly string[] {
  const notices = new Set(stacks.flatMap(({ stack }) => stack.soundBelow?.notices ?? []));
  return notices.size === 0 ? [] : [[...notices].map((notice) => `Note: ${notice}.`).join('\n')];
}

/** Their reasons stand in --json. */
function outsideBlock(stacks: readonly TitledStack[]): readonly string[] {
  const lines = stacks.flatMap(({ title, stack: { outsideChecked } }) =>
    outsideChecked.length === 0 ? [] : [`  ${title}: ${outsideChecked.map(({ text }) => text).join('; ')}`],
  );
  return lines.length === 0 ? [] : [['Outside what was checked (ACCURACY.md):', ...lines].join('\n')];
}
