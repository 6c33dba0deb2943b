import { type BandQuantity, KNOWN_HEADINGS, quantityOfHeading } from './band-columns.ts';
import { LEVEL_RANGE_dB } from './level-range.ts';
import { parseQuantity } from './parse-quantity.ts';
import { type Row, splitCells } from './split-cells.ts';

export interface BandColumn {
  readonly quantity: BandQuantity;
  /** The heading as it stands in the file. */
  readonly name: string;
  /** One value per band; NaN where the cell is empty. */
  readonly values_dB: readonly number[];
}

export interface CsvProblem {
  /** Line of the file, from 1. */
  readonly line: number;
  /** Number of the cell in its line, from 1; 0: the whole line. */
  readonly column: number;
  readonly expected: string;
  readonly received: string;
  readonly message: string;
}

export type BandCsvReading =
  | {
      readonly ok: true;
      readonly bandWidth: 'third' | 'octave';
      /** Nominal mid-band frequencies, ascending, Hz. */
      readonly bands_Hz: readonly number[];
      readonly columns: readonly BandColumn[];
      /** What was read in a way that the reader should know of. */
      readonly notices: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly CsvProblem[] };

const LONGEST_TEXT = 1_000_000;
const MOST_PROBLEMS = 20;
const { low: LOWEST_DB, high: HIGHEST_DB } = LEVEL_RANGE_dB;
const GAPS = ['', '-', '–', '—', 'nan', 'n/a', 'na'];

/** R 10 series of IEC 61260-1: nominal mid-band frequencies 10 Hz–20 kHz, every third from 16 Hz an octave. */
const NOMINAL_HZ = [10, 100, 1000, 10000]
  .flatMap((decade) => [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8].map((m) => Math.round(m * decade * 100) / 100))
  .filter((f) => f <= 20000);
const isOctave = (f: number) => (NOMINAL_HZ.indexOf(f) - NOMINAL_HZ.indexOf(1000)) % 3 === 0;
/** Exact mid-bands lie up to 1 % from nominal ones, and people write 31 for 31.5. */
const SAME_BAND = 0.02;

/**
 * Reads measured bands from a table of text: a heading line, then one band per line.
 *
 * Cells are separated by tab, semicolon, comma or blanks; numbers may have a decimal comma unless the comma separates;
 * # begins a comment line. A heading with a frequency column and at least one of R (TL), Ln, delta L, level is needed; other
 * columns are left out with a notice. "≥ 61" counts as 61, with a notice.
 * @returns All problems found, not only the first (what goes beyond twenty is counted); nothing is guessed.
 */
export function readBandCsv(text: string): BandCsvReading {
  if (text.length > LONGEST_TEXT) {
    return failed([problem(0, 0, `at most ${LONGEST_TEXT} characters`, `${text.length}`)]);
  }
  const { separator, rows } = splitCells(text);
  const [head, ...body] = rows;
  if (!head) return failed([problem(1, 0, 'a heading line and bands', 'nothing')]);

  const quantities = head.cells.map(quantityOfHeading);
  const frequencyColumn = quantities.indexOf('frequency');
  const wanted = quantities.flatMap((q, i) => (q && q !== 'frequency' ? [{ quantity: q, i }] : []));
  const headProblems: CsvProblem[] = [];
  if (frequencyColumn < 0)
    headProblems.push(problem(head.line, 0, 'a heading for the frequency, such as "f (Hz)"', shown(head.cells)));
  if (wanted.length === 0)
    headProblems.push(problem(head.line, 0, `a heading for values (${KNOWN_HEADINGS})`, shown(head.cells)));
  if (quantities.filter((q) => q === 'frequency').length > 1) {
    headProblems.push(problem(head.line, quantities.lastIndexOf('frequency') + 1, 'one frequency column', 'another'));
  }
  if (headProblems.length > 0) return failed(headProblems);
  if (body.length === 0) return failed([problem(head.line, 0, 'bands after the heading line', 'none')]);

  const problems: CsvProblem[] = [];
  const notices = quantities.flatMap((q, i) =>
    q ? [] : [`column ${i + 1} "${head.cells[i]}" is left out: its heading is not known`],
  );
  const bands = new Map<number, { row: Row; values: number[] }>();
  for (const row of body) {
    if (row.cells.length !== head.cells.length) {
      const hint = separator === ',' ? ' (with decimal commas, separate by ; or tab)' : '';
      problems.push(problem(row.line, 0, `${head.cells.length} cells as in the heading${hint}`, `${row.cells.length}`));
      continue;
    }
    const band_Hz = readBand(row, frequencyColumn, problems);
    const values = wanted.map(({ i }) => readLevel(row, i, problems, notices));
    if (band_Hz === undefined) continue;
    const earlier = bands.get(band_Hz);
    if (earlier)
      problems.push(
        problem(
          row.line,
          frequencyColumn + 1,
          `each band once (${band_Hz} Hz also in line ${earlier.row.line})`,
          `${band_Hz} Hz`,
        ),
      );
    else bands.set(band_Hz, { row, values });
  }
  if (problems.length > 0) return failed(problems);

  const sorted = [...bands].sort(([a], [b]) => a - b);
  const bands_Hz = sorted.map(([f]) => f);
  return {
    ok: true,
    bandWidth: bands_Hz.length > 1 && bands_Hz.every(isOctave) ? 'octave' : 'third',
    bands_Hz,
    columns: wanted.map(({ quantity, i }, n) => ({
      quantity,
      name: head.cells[i]!,
      values_dB: sorted.map(([, { values }]) => values[n]!),
    })),
    notices,
  };
}

function readBand(row: Row, column: number, problems: CsvProblem[]): number | undefined {
  const cell = row.cells[column]!;
  const parsed = parseQuantity(cell, 'frequency', 'SI');
  const band_Hz = parsed.ok && NOMINAL_HZ.find((f) => Math.abs(parsed.value / f - 1) <= SAME_BAND);
  if (band_Hz) return band_Hz;
  const expected = 'a mid-band frequency of IEC 61260-1 in Hz, such as 125';
  problems.push(problem(row.line, column + 1, expected, quoted(cell)));
  return undefined;
}

function readLevel(row: Row, column: number, problems: CsvProblem[], notices: string[]): number {
  const cell = row.cells[column]!;
  if (GAPS.includes(cell.toLowerCase())) return NaN;
  const limit = /^(>=|≥|>)\s*/.exec(cell)?.[0] ?? '';
  const parsed = parseQuantity(cell.slice(limit.length), 'level', 'SI');
  if (!parsed.ok || parsed.value < LOWEST_DB || parsed.value > HIGHEST_DB) {
    problems.push(
      problem(row.line, column + 1, `a level from ${LOWEST_DB} to ${HIGHEST_DB} dB, or nothing`, quoted(cell)),
    );
    return NaN;
  }
  if (limit) notices.push(`line ${row.line}, column ${column + 1}: "${cell}" counts as ${parsed.value} dB`);
  return parsed.value;
}

function problem(line: number, column: number, expected: string, received: string): CsvProblem {
  const place = line === 0 ? '' : ` (line ${line}${column === 0 ? '' : `, column ${column}`})`;
  return { line, column, expected, received, message: `Expected ${expected}, got ${received}${place}.` };
}

function failed(problems: readonly CsvProblem[]): BandCsvReading {
  const more = problems.length - MOST_PROBLEMS;
  if (more <= 0) return { ok: false, problems };
  const rest = { ...problem(0, 0, 'no problems', `${more} more`), message: `${more} more problems are not listed.` };
  return { ok: false, problems: [...problems.slice(0, MOST_PROBLEMS), rest] };
}

function shown(cells: readonly string[]): string {
  return quoted(cells.join(' | '));
}

function quoted(text: string): string {
  return text === '' ? 'nothing' : `"${text.length > 60 ? `${text.slice(0, 59)}…` : text}"`;
}
