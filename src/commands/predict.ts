// Computes a notebook or a single stack without a browser: npm run --silent predict -- FILE [--json | --csv]
import { readFileSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { sizeProblem } from '#src/notebook/parsed-json.ts';
import type { Problem } from '#src/notebook/problem.ts';
import { readNotebook } from '#src/notebook/read-file.ts';
import { readStack } from '#src/notebook/read-stack.ts';
import { lowestBand_Hz } from './band-options.ts';
import { type AskedFile, runCommand } from './command-line.ts';
import { asCsv } from './predict-csv.ts';
import {
  type NotebookPrediction,
  PredictionFailure,
  type PredictionWishes,
  predictNotebook,
  predictStack,
} from './predict-notebook.ts';
import { asTable } from './predict-table.ts';
import { roomBelow } from './room-options.ts';

const USAGE = `Usage: npm run --silent predict -- FILE [--json | --csv] [--from HZ] [--room VOLUME [--reverberation TIME]]
       npm run --silent predict -- --stack FILE [--json | --csv] [--from HZ] [--room VOLUME [--reverberation TIME]]

Predicts every stack of every scenario of a notebook (.slabspring.json), or a single stack whose fields are all literals
(src/notebook/stack.schema.json, example demo-notebooks/one-stack.json). FILE may be -, standard input.

  --json   one JSON object: SI units, levels in dB, null where there is no value
  --csv    one line for each scenario, stack and band; the ratings stand on every line
  without  tables for reading

  --room VOLUME          also the values as they would be measured in a room of this volume below, m³ unless a unit stands
                         with it: ASTC, NNIC, NIC, R'w, DnT,w, Dn,w, AIIC, NISR, ISR, L'n,w, L'nT,w
  --reverberation TIME   of that room, s; 0.5 unless given
  --from HZ              lowest band: 20, 25, 31.5, 40 or 50 Hz; 50 unless given

Exit code: 0 predicted, 1 the file cannot be read or computed (every problem on standard error), 2 wrong use.`;

interface Command extends AskedFile {
  readonly form: (result: NotebookPrediction) => string;
  readonly isStack: boolean;
  readonly wishes: PredictionWishes;
}

process.exitCode = runCommand(process.argv.slice(2), {
  usage: USAGE,
  ask: readArguments,
  answer: (command) => {
    const result = predicted(command);
    return 'engine' in result ? command.form(result) : result;
  },
});

/** What was asked for, or why it cannot be understood. */
function readArguments(args: string[]): Command | string {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      help: { type: 'boolean', short: 'h', default: false },
      json: { type: 'boolean', default: false },
      csv: { type: 'boolean', default: false },
      stack: { type: 'string' },
      room: { type: 'string' },
      reverberation: { type: 'string' },
      from: { type: 'string' },
    },
  });
  const files = [...positionals, ...(values.stack === undefined ? [] : [values.stack])];
  if (!values.help && files.length !== 1) return `Expected one file, got ${files.length}.`;
  if (values.json && values.csv) return 'Expected --json or --csv, got both.';
  const form = values.json ? asJson : values.csv ? asCsv : asTable;
  const room = roomBelow(values.room, values.reverberation);
  if (typeof room === 'string') return room;
  const lowest = lowestBand_Hz(values.from);
  if (typeof lowest === 'string') return lowest;
  const wishes = { room, lowestBand_Hz: lowest };
  return { help: values.help, wishes, form, file: files[0] ?? '', isStack: values.stack !== undefined };
}

/** The result, or everything that is wrong, one sentence each. */
function predicted({ file, isStack, wishes }: Command): NotebookPrediction | readonly string[] {
  try {
    const tooBig = file === '-' ? undefined : sizeProblem(statSync(file).size);
    if (tooBig) return [tooBig.message];
    const text = readFileSync(file === '-' ? 0 : file, 'utf8');
    if (isStack) {
      const reading = readStack(text);
      return reading.ok ? predictStack(reading.stack, wishes) : sentences(reading.problems);
    }
    const reading = readNotebook(text);
    return reading.ok ? predictNotebook(reading.notebook, wishes) : sentences(reading.problems);
  } catch (error) {
    if (error instanceof PredictionFailure) return error.failures;
    throw error;
  }
}

function sentences(problems: readonly Problem[]): readonly string[] {
  return problems.map(({ message }) => message);
}

/** NaN has no form in JSON and becomes null. */
function asJson(result: NotebookPrediction): string {
  return JSON.stringify(result, null, 2);
}
