import { readFileSync, statSync } from 'node:fs';
import type { Spectrum } from '#src/acoustics/ratings/spectrum.ts';
import { thirdsFromOctaves } from '#src/acoustics/ratings/spread-octaves.ts';
import { readBandCsv } from '#src/quantities/band-csv.ts';
import { about, nameOf, unreadable } from './command-line.ts';

/** Sound levels in a room, one-third octaves, as a CSV file gives them. */
export interface LevelSpectrum extends Spectrum {
  /** The file's name. */
  readonly file: string;
  /** What was read in a way that the reader should know of. */
  readonly notices: readonly string[];
}

/** A table of bands is far smaller; a file above it is not read at all. */
const LARGEST_BYTES = 4_000_000;

/** Levels from the one column of levels in a file; octaves are spread over their thirds. Or everything that is wrong. */
export function readLevels(file: string): LevelSpectrum | readonly string[] {
  try {
    const size = file === '-' ? 0 : statSync(file).size;
    if (size > LARGEST_BYTES) return [about(file, `Expected at most ${LARGEST_BYTES} bytes, got ${size}.`)];
    return levelsOf(file, readFileSync(file === '-' ? 0 : file, 'utf8'));
  } catch (error) {
    return [unreadable(file, error)];
  }
}

/** As `readLevels`, from the text of the file. */
export function levelsOf(file: string, text: string): LevelSpectrum | readonly string[] {
  const reading = readBandCsv(text);
  if (!reading.ok) return reading.problems.map(({ message }) => about(file, message));
  const { bands_Hz, bandWidth, columns, notices } = reading;
  const levels = columns.filter(({ quantity }) => quantity === 'level');
  const [column] = levels;
  if (!column || levels.length > 1) {
    const got = columns.map(({ name }) => `"${name}"`).join(', ');
    return [about(file, `Expected one column of levels (heading "level", dB), got ${got}.`)];
  }
  if (column.values_dB.every(Number.isNaN)) return [about(file, 'Expected a level in at least one band, got none.')];
  const spectrum = { bands_Hz, values_dB: column.values_dB };
  const isOctave = bandWidth === 'octave';
  const others = columns
    .filter((c) => c !== column)
    .map(({ name }) => `column "${name}" is left out: it holds no levels`);
  const spread = 'octaves are spread over their one-third octaves with equal energy, 4.77 dB less each (assumed)';
  return {
    ...(isOctave ? thirdsFromOctaves(spectrum) : spectrum),
    file: nameOf(file),
    notices: [...notices, ...others, ...(isOctave ? [spread] : [])],
  };
}
