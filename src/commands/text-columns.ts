import type { RatingLine } from '#src/acoustics/ratings/rating-report.ts';

/** The shapes of numbers and columns in tables for reading. */

/** The first column to the left, numbers to the right; `words` columns at the end to the left again. */
export function columns(rows: readonly (readonly string[])[], words = 0): string {
  const widths = rows[0]!.map((_, i) => Math.max(...rows.map((row) => [...row[i]!].length)));
  const isLeft = (i: number) => i === 0 || i >= widths.length - words;
  const padded = (cell: string, i: number) => {
    const blanks = ' '.repeat(widths[i]! - [...cell].length);
    return isLeft(i) ? cell + blanks : blanks + cell;
  };
  return rows.map((row) => row.map(padded).join('  ').trimEnd()).join('\n');
}

export function whole(value: number | undefined): string {
  return shown(value, String);
}

/** A rating; beyond the end of its scale with the sign of that. */
export function rated({ value, beyond }: Pick<RatingLine, 'value' | 'beyond'>): string {
  return `${beyond ? { above: '>', below: '<' }[beyond] : ''}${whole(value)}`;
}

export function tenths(value: number | undefined): string {
  return shown(value, (number) => number.toFixed(1));
}

/** A change: with its sign. */
export function signedTenths(value: number | undefined): string {
  const text = tenths(value);
  return value !== undefined && value > 0 && text !== '0.0' ? `+${text}` : text.replace('−0.0', '0.0');
}

export function signedWhole(value: number): string {
  return value > 0 ? `+${whole(value)}` : whole(value);
}

function shown(value: number | undefined, inWords: (value: number) => string): string {
  return value !== undefined && Number.isFinite(value) ? inWords(value).replace('-', '−') : '–';
}
