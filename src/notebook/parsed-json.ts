import { jsonError } from './json-error.ts';
import { LIMITS } from './limits.ts';
import { messageOf } from './message-of.ts';
import { type Problem, problemAt } from './problem.ts';

export type Parsed = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly problem: Problem };

/** Parses the text of a file, if it is not too big; what is wrong is one problem with its place. */
export function parsedJson(text: string): Parsed {
  const tooBig = sizeProblem(text.length);
  if (tooBig) return { ok: false, problem: tooBig };
  const json = text.replace(/^\uFEFF/, '');
  try {
    return { ok: true, value: JSON.parse(json) };
  } catch (error) {
    return { ok: false, problem: syntaxProblem(json, error) };
  }
}

/** Why a file is too big to be read at all; undefined if it is not. */
export function sizeProblem(size_bytes: number): Problem | undefined {
  if (size_bytes <= LIMITS.fileBytes) return undefined;
  return problemAt([], `at most ${LIMITS.fileBytes} bytes long`, `${size_bytes}`);
}

function syntaxProblem(text: string, error: unknown): Problem {
  const at = jsonError(text);
  // Parsing fails only on what is not JSON; should the two ever disagree, the parser's own words are better than none.
  if (!at) return problemAt([], 'JSON', messageOf(error));
  const { line, column, expected, received } = at;
  const message = `the file must be JSON: ${expected} expected, got ${received} (line ${line}, column ${column})`;
  return { path: '', expected, received, message, line, column };
}
