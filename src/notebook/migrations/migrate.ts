/**
 * Older files become new ones step by step: each migration turns the JSON of one version into that of the next. None is
 * ever removed.
 */
import { messageOf } from '../message-of.ts';
import { type Problem, problemAt, shortValue } from '../problem.ts';

export type Json = Readonly<Record<string, unknown>>;

export interface Migration {
  /** Turns this version … */
  readonly from: number;
  /** … into the next, and writes its number. Gets JSON that nobody has checked; throws what it cannot use. */
  readonly migrate: (file: Json) => Json;
}

export type Migrated =
  | { readonly ok: true; readonly file: Json; readonly from: number }
  | { readonly ok: false; readonly problem: Problem };

/** Brings a file to the current version. */
export function migrated(file: Json, migrations: readonly Migration[], current: number): Migrated {
  const from = file.version;
  if (typeof from !== 'number' || !Number.isInteger(from) || from > current)
    return { ok: false, problem: unknownVersion(from, current) };
  let next = file;
  for (let version = from; version < current; version++) {
    const step = migrations.find((m) => m.from === version);
    if (!step) return { ok: false, problem: unknownVersion(from, current) };
    try {
      next = step.migrate(next);
    } catch (error) {
      const reason = messageOf(error);
      return { ok: false, problem: problemAt([], `a sound file of version ${version}`, reason) };
    }
  }
  return { ok: true, file: next, from };
}

function unknownVersion(version: unknown, current: number): Problem {
  const expected = current === 1 ? '1' : `a whole number from 1 to ${current}`;
  const problem = problemAt(['version'], expected, shortValue(version));
  if (typeof version !== 'number' || !(version > current)) return problem;
  return { ...problem, message: `${problem.message}; a newer Slab & Spring wrote this file` };
}
