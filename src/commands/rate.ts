import { readFileSync } from 'node:fs';
import type { AstmRounding } from '#src/acoustics/ratings/astm-rounding.ts';
import { type RatingLine, ratingReport } from '#src/acoustics/ratings/rating-report.ts';
import { type BandColumn, type BandCsvReading, readBandCsv } from '#src/quantities/band-csv.ts';
import { type AskedFile, about, nameOf, runCommand } from './command-line.ts';
import { printable } from './printable.ts';
import { readArguments } from './read-arguments.ts';
import { rated } from './text-columns.ts';

const USAGE = `Usage: npm run --silent rate -- FILE [--json] [--tenths] [--half-even]

Rates measured bands. FILE is a table (- reads standard input): a heading line, then one band per line; cells set apart by
comma, semicolon, tab or blanks. Headings: frequency; and R (TL), Ln, delta L or level, in dB. One-third octaves or octaves.

  --json       print the result as JSON
  --tenths     ASTM classes from bands to 0.1 dB instead of whole decibels
  --half-even  ASTM classes: ties to the even digit (ASTM E29) instead of up

Exit code: 0 rated, 1 the file cannot be read or rated, 2 wrong use.`;

const QUANTITY_NAMES = {
  R: 'Airborne sound insulation',
  Ln: 'Impact sound level',
  improvement: 'Reduction of impact sound by a covering',
  level: 'Sound level in a room',
} as const;

type Rated = Extract<BandCsvReading, { ok: true }>;

interface RatedColumn extends BandColumn {
  readonly ratings: readonly RatingLine[];
}

interface Command extends AskedFile {
  readonly json: boolean;
  readonly rounding: AstmRounding;
}

const OPTIONS = {
  help: { type: 'boolean', short: 'h' },
  json: { type: 'boolean' },
  tenths: { type: 'boolean' },
  'half-even': { type: 'boolean' },
} as const;

process.exitCode = runCommand(process.argv.slice(2), { usage: USAGE, ask: rateOptions, answer: rateFile });

function rateFile({ file, json, rounding }: Command): string | readonly string[] {
  const name = nameOf(file);
  const reading = readBandCsv(readFileSync(file === '-' ? 0 : file, 'utf8'));
  if (!reading.ok) return reading.problems.map(({ message }) => about(file, message));
  const columns = reading.columns.map((column): RatedColumn => {
    const spectrum = { bands_Hz: reading.bands_Hz, values_dB: column.values_dB };
    return { ...column, ratings: ratingReport(column.quantity, spectrum, rounding) };
  });
  return json ? asJson(name, reading, columns) : printable(asTable(name, reading, columns));
}

/** What was asked for, or why it cannot be understood. */
function rateOptions(args: string[]): Command | string {
  const read = readArguments(args, OPTIONS);
  if (typeof read === 'string') return read;
  const { values, positionals } = read;
  const [file = ''] = positionals;
  if (!values.help && positionals.length !== 1) return `Expected one file, got ${positionals.length}.`;
  const rounding: AstmRounding = {
    rounding: values.tenths ? 'tenth' : 'whole',
    tie: values['half-even'] ? 'half-even' : 'half-up',
  };
  return { help: values.help, json: values.json, file, rounding };
}

function asJson(name: string, { bandWidth, bands_Hz, notices }: Rated, columns: readonly RatedColumn[]): string {
  // NaN has no form in JSON and becomes null.
  return JSON.stringify({ file: name, bandWidth, bands_Hz, columns, notices }, null, 2);
}

function asTable(name: string, { bandWidth, bands_Hz, notices }: Rated, columns: readonly RatedColumn[]): string {
  const width = bandWidth === 'third' ? 'one-third octaves' : 'octaves';
  const head = `${name}: ${bands_Hz.length} ${width}, ${bands_Hz[0]}–${bands_Hz.at(-1)} Hz`;
  const blocks = columns.map(({ quantity, name: heading, ratings }) => {
    const rows = ratings.map((rating) =>
      `  ${rating.name.padEnd(14)}${rated(rating).padStart(6)}   ${rating.standard.padEnd(14)}  ${rating.detail}`.trimEnd(),
    );
    return [`${QUANTITY_NAMES[quantity]} ("${heading}")`, ...rows].join('\n');
  });
  const notes = notices.length > 0 ? [notices.map((n) => `Note: ${n}.`).join('\n')] : [];
  return [head, ...blocks, ...notes].join('\n\n');
}
