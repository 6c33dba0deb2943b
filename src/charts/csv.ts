/** A table as CSV (RFC 4180): a head, then one line per row; a number that is no value becomes an empty cell. */
export function csvText(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const lines = [head, ...rows].map((row) => row.map(csvCell).join(','));
  return `${lines.join('\r\n')}\r\n`;
}

function csvCell(value: string | number): string {
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const text = inert(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Names come from files of strangers: a spreadsheet must not take one for a formula, nor trim or narrow it into one. */
function inert(text: string): string {
  return /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/.test(text) ? `'${text}` : text;
}
