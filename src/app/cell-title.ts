/** What a cell is called on the page, and whether people may change that. */
import { cellKindInfo } from '#cells/cell-registry.ts';
import type { Cell, Notebook } from '#src/notebook/types.ts';

const TITLE_LENGTH = 60;

/** A commentary has no title of its own: while folded its first line stands in. */
export function cellTitle(notebook: Notebook, cell: Cell): string {
  if ('title' in cell) return cell.title || cellKindInfo(cell.kind).label;
  if (cell.kind === 'stack') return notebook.stacks.find((s) => s.id === cell.stack)?.name ?? 'Stack';
  return firstLine(cell.text) || 'Text';
}

export function hasOwnTitle(cell: Cell): cell is Extract<Cell, { readonly title: string }> {
  return 'title' in cell;
}

/** The first line of a Markdown text without its signs. */
function firstLine(text: string): string {
  const line = text.split('\n').find((l) => /\w/.test(l)) ?? '';
  const plain = line
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/^[\s#>*+-]+|[*_`]/g, '')
    .trim();
  return plain.length > TITLE_LENGTH ? `${plain.slice(0, TITLE_LENGTH - 1)}…` : plain;
}
