/** One thing that is wrong with a file: where, what was expected, what was there. */
export interface Problem {
  /** JSON Pointer (RFC 6901) to the place: `/scenarios/2/changes/slab`; '' is the whole file. */
  readonly path: string;
  readonly expected: string;
  readonly received: string;
  /** All of it as one sentence. */
  readonly message: string;
  /** Place in the text where it is not JSON, counted from 1. */
  readonly line?: number;
  readonly column?: number;
}

/** Of what a file holds, no more characters than this stand in a message or a path. */
const LONGEST = 80;

export type Path = readonly (string | number)[];

export function problemAt(path: Path, expected: string, received: string): Problem {
  const pointer = jsonPointer(path);
  const place = pointer === '' ? '' : ` (${pointer})`;
  return {
    path: pointer,
    expected,
    received,
    message: `${subject(path)} must be ${expected}, got ${received}${place}`,
  };
}

function jsonPointer(path: Path): string {
  return path
    .map((step) => `/${shortened(String(step), LONGEST).replaceAll('~', '~0').replaceAll('/', '~1')}`)
    .join('');
}

/** What the sentence is about: the last name of the path, with the number of the entry where it ends in one. */
function subject(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return 'the file';
  if (typeof last === 'string') return shortened(last, LONGEST);
  return `entry ${last + 1} of ${path.at(-2) ?? 'the file'}`;
}

/** A value as it may stand in a message: short, quoted, never a page of text. */
export function shortValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return JSON.stringify(shortened(value, LONGEST));
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

export function shortened(text: string, longest: number): string {
  return text.length <= longest ? text : `${text.slice(0, longest - 1)}…`;
}
