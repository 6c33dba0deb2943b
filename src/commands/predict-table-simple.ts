import type { StackPrediction } from './predict-notebook.ts';
import { SIMPLE_MODELS, type SimpleModel } from './predict-simple.ts';
import { columns, tenths } from './text-columns.ts';

/** The textbook rules that fit beside R and Ln, then what each takes for what, and why the others do not fit. */
export function simpleTable({ bands_Hz, R_dB, Ln_dB, simple }: StackPrediction): string | undefined {
  if (!simple) return undefined;
  const fitting = simple.filter(({ values_dB }) => values_dB !== null);
  const head = ['Hz', 'R', 'Ln', ...fitting.map(headingOf)];
  const rows = bands_Hz.map((band_Hz, i) => [
    String(band_Hz),
    ...[R_dB, Ln_dB, ...fitting.map(({ values_dB }) => values_dB!)].map((values) => tenths(values[i])),
  ]);
  const notes = simple.map((model) => `${headingOf(model)}: ${model.reason ?? withNumbers(model)}.`);
  return ['textbook rules beside the prediction, for learning', columns([head, ...rows]), ...notes].join('\n');
}

function headingOf({ key }: SimpleModel): string {
  return SIMPLE_MODELS.find((model) => model.key === key)!.heading;
}

function withNumbers({ about, numbers = {} }: SimpleModel): string {
  const shown = Object.entries(numbers).map(
    ([name, value]) => `${name} ${Number.isNaN(value) ? '–' : Number(value.toPrecision(4))}`,
  );
  return `${about}; ${shown.join(', ')}`;
}
