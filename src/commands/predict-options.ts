import { lowestBand_Hz } from './band-options.ts';
import type { AskedFile } from './command-line.ts';
import { asCsv } from './predict-csv.ts';
import type { PredictionWishes } from './predict-extras.ts';
import type { NotebookPrediction } from './predict-notebook.ts';
import { asTable } from './predict-table.ts';
import { readArguments } from './read-arguments.ts';
import { roomBelow } from './room-options.ts';

export interface PredictCommand extends AskedFile {
  readonly form: (result: NotebookPrediction) => string;
  readonly isStack: boolean;
  /** Files of levels, or `-`. */
  readonly source: string | undefined;
  readonly background: string | undefined;
  /** Without the levels, which are still to be read. */
  readonly wishes: PredictionWishes;
}

const OPTIONS = {
  help: { type: 'boolean', short: 'h' },
  json: { type: 'boolean' },
  csv: { type: 'boolean' },
  stack: { type: 'string' },
  from: { type: 'string' },
  gains: { type: 'boolean' },
  simple: { type: 'boolean' },
  sensitivities: { type: 'boolean' },
  uncertainty: { type: 'boolean' },
  room: { type: 'string' },
  reverberation: { type: 'string' },
  source: { type: 'string' },
  background: { type: 'string' },
} as const;

/** What was asked for, or why it cannot be understood. */
export function predictOptions(args: string[]): PredictCommand | string {
  const read = readArguments(args, OPTIONS);
  if (typeof read === 'string') return read;
  const { values, positionals } = read;
  const { help, gains, simple, sensitivities, uncertainty, source, background } = values;
  const files = [...positionals, ...(values.stack === undefined ? [] : [values.stack])];
  if (!help && files.length !== 1) return `Expected one file, got ${files.length}.`;
  if (values.json && values.csv) return 'Expected --json or --csv, got both.';
  if (gains && values.stack !== undefined) {
    return 'Expected a notebook with --gains, got --stack: one stack has no other scenario to gain over.';
  }
  if (source !== undefined && values.room === undefined) {
    return 'Expected --room with --source, got no --room: how loud it gets below depends on the room.';
  }
  if (background !== undefined && source === undefined) {
    return 'Expected --source with --background, got no --source.';
  }
  if ([...files, source, background].filter((file) => file === '-').length > 1) {
    return 'Expected standard input (-) for one file at most, got it for more.';
  }
  const room = roomBelow(values.room, values.reverberation);
  if (typeof room === 'string') return room;
  const lowest = lowestBand_Hz(values.from);
  if (typeof lowest === 'string') return lowest;
  return {
    help,
    file: files[0] ?? '',
    isStack: values.stack !== undefined,
    source,
    background,
    form: values.json ? asJson : values.csv ? asCsv : asTable,
    wishes: { room, lowestBand_Hz: lowest, gains, simple, sensitivities, uncertainty },
  };
}

/** NaN has no form in JSON and becomes null. */
function asJson(result: NotebookPrediction): string {
  return JSON.stringify(result, null, 2);
}
