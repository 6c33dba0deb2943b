import type { PathName, Ratings } from '#src/acoustics/prediction.ts';
import { FIELD_VALUE_NAMES } from '#src/acoustics/ratings/field-values.ts';
import { csvText } from '#src/charts/csv.ts';
import { bandColumn, type CsvColumn } from './csv-column.ts';
import { EXTRA_COLUMNS } from './predict-csv-extras.ts';
import type { NotebookPrediction, StackPrediction } from './predict-notebook.ts';

/** One line for each scenario, stack and band; an empty cell where there is no such path or value. */
export function asCsv({ scenarios }: NotebookPrediction): string {
  const named = scenarios.flatMap((scenario) => scenario.stacks.map((stack) => ({ scenario: scenario.name, stack })));
  const stacks = named.map(({ stack }) => stack);
  const columns = [...usualColumns(stacks), ...EXTRA_COLUMNS.flatMap((of) => of(stacks))];
  const head = ['scenario', 'stack', 'frequency_Hz', ...columns.map(({ heading }) => heading)];
  const rows = named.flatMap(({ scenario, stack }) =>
    stack.bands_Hz.map((band_Hz, i) => [scenario, stack.name, band_Hz, ...columns.map(({ cell }) => cell(stack, i))]),
  );
  return csvText(head, rows).trimEnd();
}

/** Of what lies on the floor, on the standard slab. */
const IMPROVEMENTS = ['dLw', 'CIdelta', 'dLlin', 'dIIC'] as const;

const PATHS: readonly PathName[] = ['direct', 'supports', 'flanking', 'leaks'];

function usualColumns(stacks: readonly StackPrediction[]): readonly CsvColumn[] {
  const ratings = Object.keys(stacks[0]?.ratings ?? {}) as (keyof Ratings)[];
  const field = stacks[0]?.field ? FIELD_VALUE_NAMES : [];
  return [
    bandColumn('R_dB', ({ R_dB }) => R_dB),
    ...PATHS.map((path) => bandColumn(`R_${path}_dB`, ({ paths_dB }) => paths_dB[path])),
    bandColumn('Ln_dB', ({ Ln_dB }) => Ln_dB),
    ...PATHS.map((path) => bandColumn(`Ln_${path}_dB`, ({ impactPaths_dB }) => impactPaths_dB[path])),
    ...ratings.map((rating): CsvColumn => ({ heading: rating, cell: (stack) => stack.ratings[rating] })),
    { heading: 'surfaceMass_kg_m2', cell: (stack) => stack.surfaceMass_kg_m2 },
    { heading: 'height_m', cell: (stack) => stack.height_m },
    // A column and no line of its own before the head, which a spreadsheet would take for the head.
    { heading: 'outside_checked', cell: ({ outsideChecked }) => outsideChecked.map(({ text }) => text).join('; ') },
    { heading: 'walls_in_ratings', cell: ({ wallsCounted }) => wallsCounted.join(' and ') },
    bandColumn('dL_slab_dB', ({ improvement }) => improvement?.dL_dB),
    ...IMPROVEMENTS.map(
      (key): CsvColumn => ({ heading: key, cell: ({ improvement }) => improvement?.[key] ?? Number.NaN }),
    ),
    ...field.map(
      ({ key }): CsvColumn => ({ heading: `field_${key}`, cell: (stack) => stack.field?.[key] ?? Number.NaN }),
    ),
  ];
}
