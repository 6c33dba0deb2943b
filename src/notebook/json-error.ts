/**
 * Where a text stops being JSON (RFC 8259). `JSON.parse` says so in words that differ between browsers and often
 * without a place; this finds the place, in one pass and without recursion.
 */
export interface JsonError {
  /** Counted from 0. */
  readonly index: number;
  /** Counted from 1; a tab is one column. */
  readonly line: number;
  readonly column: number;
  readonly expected: string;
  readonly received: string;
}

type Awaited = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or ]' | ', or }' | 'the end';

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;
const BLANK = /[ \t\n\r]*/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** Undefined if the text is JSON. */
export function jsonError(text: string): JsonError | undefined {
  const open: ('[' | '{')[] = [];
  let awaited = 'value' as Awaited;
  let index = 0;
  const afterValue = (): Awaited => (open.length === 0 ? 'the end' : open.at(-1) === '[' ? ', or ]' : ', or }');

  for (;;) {
    index = endOf(BLANK, text, index) ?? index;
    const char = text[index];
    if (char === undefined) return awaited === 'the end' ? undefined : place(text, index, awaited);
    if (awaited === ':') {
      if (char !== ':') return place(text, index, awaited);
      awaited = 'value';
      index++;
    } else if (awaited === ', or ]' || awaited === ', or }') {
      if (char === ',') awaited = awaited === ', or ]' ? 'value' : 'key';
      else if (char === awaited.at(-1)) {
        open.pop();
        awaited = afterValue();
      } else return place(text, index, awaited);
      index++;
    } else if ((char === ']' && awaited === 'value or ]') || (char === '}' && awaited === 'key or }')) {
      open.pop();
      awaited = afterValue();
      index++;
    } else if (awaited === 'the end') {
      return place(text, index, awaited);
    } else if (char === '"') {
      const end = endOfString(text, index);
      if (end < 0) return place(text, ~end, 'a character of a string, or its closing quote');
      awaited = awaited === 'key' || awaited === 'key or }' ? ':' : afterValue();
      index = end;
    } else if (awaited === 'key' || awaited === 'key or }') {
      return place(text, index, awaited);
    } else if (char === '[' || char === '{') {
      open.push(char);
      awaited = char === '[' ? 'value or ]' : 'key or }';
      index++;
    } else {
      const end = endOf(NUMBER, text, index) ?? endOf(WORD, text, index);
      if (end === undefined) return place(text, index, awaited);
      awaited = afterValue();
      index = end;
    }
  }
}

function endOf(pattern: RegExp, text: string, index: number): number | undefined {
  pattern.lastIndex = index;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}

/** Index behind the closing quote; where the string breaks off, the bitwise complement of that place. */
function endOfString(text: string, start: number): number {
  let index = start + 1;
  for (;;) {
    const char = text[index];
    if (char === '"') return index + 1;
    if (char === undefined || char < ' ') return ~index;
    if (char === '\\') {
      const end = endOf(ESCAPE, text, index);
      if (end === undefined) return ~index;
      index = end;
    } else index++;
  }
}

function place(text: string, index: number, expected: string): JsonError {
  const before = text.slice(0, index);
  const lines = before.split(/\r\n|\r|\n/);
  const char = String.fromCodePoint(text.codePointAt(index) ?? 0);
  const received = index >= text.length ? 'the end of the file' : JSON.stringify(char);
  return { index, line: lines.length, column: lines.at(-1)!.length + 1, expected, received };
}
