/**
 * The first look at parsed JSON, before anything of it is used: bounded in depth, count and length, and free of keys
 * that would reach into the prototype of objects. Walks without recursion, so that nesting cannot exhaust the stack.
 */
import { LIMITS } from './limits.ts';
import { type Path, type Problem, problemAt } from './problem.ts';

/** Names that every object inherits, `__proto__`, `constructor`, `toString` and so on; and `prototype`. */
const FORBIDDEN_KEYS: ReadonlySet<string> = new Set([...Object.getOwnPropertyNames(Object.prototype), 'prototype']);

export function isForbiddenKey(key: string): boolean {
  return FORBIDDEN_KEYS.has(key);
}

export interface PlainDataProblems {
  /** Too deep, too many, too long: nothing further is looked at. */
  readonly sizes: readonly Problem[];
  readonly keys: readonly Problem[];
}

interface Visit {
  readonly value: unknown;
  readonly path: Path;
}

export function plainDataProblems(root: unknown): PlainDataProblems {
  const sizes: Problem[] = [];
  const keys: Problem[] = [];
  const waiting: Visit[] = [{ value: root, path: [] }];
  // Enough problems end the walk: something that contains itself would have no end of them.
  for (let visit = waiting.pop(); visit && sizes.length <= LIMITS.problems; visit = waiting.pop()) {
    const { value, path } = visit;
    if (typeof value === 'string' && value.length > LIMITS.commentary)
      sizes.push(problemAt(path, `at most ${LIMITS.commentary} characters long`, `${value.length} characters`));
    if (typeof value !== 'object' || value === null) continue;
    const entries = Object.entries(value);
    if (path.length >= LIMITS.depth) {
      sizes.push(problemAt(path, `nested at most ${LIMITS.depth} deep`, 'deeper nesting'));
      continue;
    }
    if (entries.length > LIMITS.entries)
      sizes.push(problemAt(path, `at most ${LIMITS.entries} entries long`, `${entries.length} entries`));
    for (const [key, inner] of entries.slice(0, LIMITS.entries)) {
      const place = [...path, Array.isArray(value) ? Number(key) : key];
      if (!Array.isArray(value) && isForbiddenKey(key)) keys.push(forbidden(place, key));
      else waiting.push({ value: inner, path: place });
    }
  }
  return { sizes, keys };
}

function forbidden(path: Path, key: string): Problem {
  const problem = problemAt(path, 'absent', 'a value');
  return { ...problem, message: `the key "${key}" is not allowed in a notebook (${problem.path})` };
}
