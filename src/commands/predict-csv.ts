import type { PathName, Ratings } from '#src/acoustics/prediction.ts';
import { FIELD_VALUE_NAMES } from '#src/acoustics/ratings/field-values.ts';
import { csvText } from '#src/charts/csv.ts';
import type { NotebookPrediction, StackPrediction } from './predict-notebook.ts';

const PATHS: readonly PathName[] = ['direct', 'supports', 'flanking', 'leaks'];

/** One line for each scenario, stack and band; an empty cell where there is no such path or value. */
export function asCsv({ scenarios }: NotebookPrediction): string {
  const stacks = scenarios.flatMap((scenario) => scenario.stacks.map((stack) => ({ scenario: scenario.name, stack })));
  const ratings = Object.keys(stacks[0]?.stack.ratings ?? {}) as (keyof Ratings)[];
  const field = stacks[0]?.stack.field ? FIELD_VALUE_NAMES.map(({ key }) => key) : [];
  const head = [
    ...['scenario', 'stack', 'frequency_Hz', 'R_dB', ...PATHS.map((path) => `R_${path}_dB`)],
    ...['Ln_dB', ...PATHS.map((path) => `Ln_${path}_dB`)],
    ...ratings,
    ...['surfaceMass_kg_m2', 'height_m'],
    ...field.map((value) => `field_${value}`),
  ];
  const rows = stacks.flatMap(({ scenario, stack }) =>
    stack.bands_Hz.map((band_Hz, i) => [
      ...[scenario, stack.name, band_Hz, ...bandCells(stack.R_dB, stack.paths_dB, i)],
      ...bandCells(stack.Ln_dB, stack.impactPaths_dB, i),
      ...ratings.map((rating) => stack.ratings[rating]),
      ...[stack.surfaceMass_kg_m2, stack.height_m],
      ...field.map((value) => stack.field![value]),
    ]),
  );
  return csvText(head, rows).trimEnd();
}

function bandCells(
  total_dB: readonly number[],
  paths_dB: StackPrediction['paths_dB'],
  band: number,
): readonly number[] {
  return [total_dB, ...PATHS.map((path) => paths_dB[path])].map((levels) => levels?.[band] ?? Number.NaN);
}
