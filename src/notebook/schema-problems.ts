/** From the schema library's issues to problems in our own words. */
import type * as v from 'valibot';
import { type Path, type Problem, problemAt, shortValue } from './problem.ts';

export function schemaProblem(issue: v.BaseIssue<unknown>): Problem {
  const path: Path = (issue.path ?? []).map((item) => item.key as string | number);
  if (issue.expected === 'never') return problemAt(path, 'absent (the key is unknown)', shortValue(issue.input));
  if (issue.path?.at(-1)?.origin === 'key' && issue.input === undefined) return problemAt(path, 'present', 'nothing');
  return problemAt(path, expectation(issue), received(issue));
}

function expectation(issue: v.BaseIssue<unknown>): string {
  const { requirement } = issue;
  switch (issue.type) {
    case 'min_value':
      return `at least ${requirement}`;
    case 'min_length':
      return `at least ${requirement} long`;
    case 'max_length':
      return `at most ${requirement} long`;
    case 'max_value':
    case 'regex':
    case 'check':
      return issue.message;
    default:
      return typeInWords(issue.expected ?? issue.type);
  }
}

function received(issue: v.BaseIssue<unknown>): string {
  const tooShortOrLong = issue.type === 'min_length' || issue.type === 'max_length';
  if (tooShortOrLong) return String((issue.input as string | readonly unknown[]).length);
  return shortValue(issue.input);
}

const WORDS: Readonly<Record<string, string>> = {
  number: 'a number',
  integer: 'a whole number',
  string: 'a text',
  boolean: 'true or false',
  Array: 'a list',
  Object: 'an object',
};

/** `("a" | "b")` → `"a" or "b"`; a type name → its article and word. */
function typeInWords(expected: string): string {
  return expected
    .replace(/^\(|\)$/g, '')
    .split(' | ')
    .map((part) => WORDS[part] ?? part)
    .join(' or ');
}
