import type { StackPrediction } from './predict-notebook.ts';

/** A column of the table: its heading, and what stands in it for one band of one stack; NaN leaves the cell empty. */
export interface CsvColumn {
  readonly heading: string;
  readonly cell: (stack: StackPrediction, band: number) => string | number;
}

/** A column of values per band; a stack that has none leaves its cells empty. */
export function bandColumn(
  heading: string,
  values: (stack: StackPrediction) => readonly number[] | null | undefined,
): CsvColumn {
  return { heading, cell: (stack, i) => values(stack)?.[i] ?? Number.NaN };
}
