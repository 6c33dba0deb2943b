/** From a file of measured bands to what can be laid over the curves: a set per column of R or Ln. */

import { bandWidthOf } from '#src/acoustics/ratings/spectrum.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import { shortened } from '#src/notebook/problem.ts';
import type { MeasuredBands } from '#src/notebook/types.ts';
import { type BandColumn, readBandCsv } from '#src/quantities/band-csv.ts';

/** What the file says; who lays it over the curves adds where it comes from. */
export type MeasuredColumn = Omit<MeasuredBands, 'id' | 'source'>;

export type MeasuredReading =
  | {
      readonly ok: true;
      readonly columns: readonly MeasuredColumn[];
      /** What was read in a way that the reader should know of. */
      readonly notices: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly string[] };

/** Beyond that no character of the file is looked at; a table of bands has some thousand bytes. Our own choice. */
const LARGEST_bytes = 4_000_000;

/** @param room How many sets may still be added. */
export async function readMeasuredFile(file: File, room: number): Promise<MeasuredReading> {
  if (file.size > LARGEST_bytes) return failed(`Expected at most ${LARGEST_bytes} bytes, got ${file.size}.`);
  try {
    return readMeasured(decoded(await file.arrayBuffer()), stemOf(file.name), room);
  } catch (error) {
    return failed(`It could not be read: ${messageOf(error)}.`);
  }
}

/** @param name What the sets are called after. */
export function readMeasured(text: string, name: string, room: number): MeasuredReading {
  const reading = readBandCsv(text);
  if (!reading.ok) return failed(...reading.problems.map(({ message }) => message));
  const { bands_Hz, columns } = reading;
  const usable = columns.filter(isUsable);
  if (usable.length === 0)
    return failed(`Expected a column of R (TL) or Ln with values, got ${columns.map(quotedName).join(', ')}.`);
  if (usable.length > room)
    return failed(`Expected at most ${room} columns, since a cell holds ${LIMITS.measured}, got ${usable.length}.`);
  return {
    ok: true,
    columns: usable.map((column) => ({
      name: shortened(isAlone(column, usable) ? name : `${name}, ${column.name}`, LIMITS.name),
      quantity: column.quantity === 'R' ? 'airborne' : 'impact',
      bands_Hz: bands_Hz.filter((_, i) => Number.isFinite(column.values_dB[i])),
      values_dB: column.values_dB.filter(Number.isFinite),
    })),
    notices: [...reading.notices, ...columns.filter((column) => !isUsable(column)).map(leftOut)],
  };
}

/** "airborne, 16 one-third octaves, 100 to 3150 Hz" */
export function bandWords({ quantity, bands_Hz }: Pick<MeasuredBands, 'quantity' | 'bands_Hz'>): string {
  const width = bandWidthOf(bands_Hz) === 'octave' ? 'octave' : 'one-third octave';
  if (bands_Hz.length === 1) return `${quantity}, 1 ${width}, ${bands_Hz[0]} Hz`;
  return `${quantity}, ${bands_Hz.length} ${width}s, ${bands_Hz[0]} to ${bands_Hz.at(-1)} Hz`;
}

function isUsable({ quantity, values_dB }: BandColumn): boolean {
  return (quantity === 'R' || quantity === 'Ln') && values_dB.some(Number.isFinite);
}

/** Then the file's name is enough. */
function isAlone({ quantity }: BandColumn, columns: readonly BandColumn[]): boolean {
  return columns.filter((c) => c.quantity === quantity).length === 1;
}

function leftOut(column: BandColumn): string {
  const why = column.values_dB.some(Number.isFinite) ? 'only R (TL) and Ln lie over curves' : 'it has no values';
  return `column ${quotedName(column)} is left out: ${why}`;
}

function quotedName({ name }: BandColumn): string {
  return `"${shortened(name, 60)}"`;
}

/** Spreadsheets save "Unicode text" in UTF-16, with a byte order mark. */
function decoded(bytes: ArrayBuffer): string {
  const [first, second] = new Uint8Array(bytes);
  const littleEndian = first === 0xff && second === 0xfe;
  const bigEndian = first === 0xfe && second === 0xff;
  return new TextDecoder(littleEndian ? 'utf-16le' : bigEndian ? 'utf-16be' : 'utf-8').decode(bytes);
}

function stemOf(fileName: string): string {
  return fileName.replace(/\.[^.]{1,5}$/, '');
}

function failed(...problems: readonly string[]): MeasuredReading {
  return { ok: false, problems };
}
