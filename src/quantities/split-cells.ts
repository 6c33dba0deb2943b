/** One line of a text table, and where in the file it stands. */
export interface Row {
  /** Counted from 1, in the file. */
  readonly line: number;
  readonly cells: readonly string[];
}

export type Separator = '\t' | ';' | ',' | ' ';

/**
 * Splits a table of cells. Empty lines and lines that begin with # are left out; cells lose their outer blanks.
 *
 * The separator is the first of tab, semicolon, comma and blanks that the first line has outside quotes. A cell may stand
 * in double quotes (RFC 4180), within one line.
 */
export function splitCells(text: string): { readonly separator: Separator; readonly rows: readonly Row[] } {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((content, i) => ({ line: i + 1, content }))
    .filter(({ content }) => content.trim() !== '' && !content.trimStart().startsWith('#'));
  const separator = separatorOf(lines[0]?.content ?? '');
  const rows = lines.map(({ line, content }) => ({ line, cells: cellsOf(content, separator) }));
  return { separator, rows };
}

function separatorOf(line: string): Separator {
  const bare = line.replace(/"[^"]*"/g, '').trim();
  return (['\t', ';', ','] as const).find((s) => bare.includes(s)) ?? ' ';
}

function cellsOf(line: string, separator: Separator): string[] {
  if (separator === ' ') return line.trim().split(/\s+/);
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i]!;
    if (c === '"' && quoted && line[i + 1] === '"') {
      cell += c;
      i++;
    } else if (c === '"' && (quoted || cell.trim() === '')) {
      quoted = !quoted;
    } else if (c === separator && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else {
      cell += c;
    }
  }
  cells.push(cell.trim());
  return cells;
}
