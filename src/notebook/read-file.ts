/**
 * From the text of a file to a notebook. A file is hostile until it is read: its size is bounded before anything is
 * parsed, its keys and nesting before anything is looked at, and the notebook is a new object of known keys only.
 * Everything that is wrong is reported, not just the first thing; a size or syntax error alone ends the reading.
 */
import * as v from 'valibot';
import { checkLinks } from './checks/check-links.ts';
import { checkMeasured } from './checks/check-measured.ts';
import { checkParameters } from './checks/check-parameters.ts';
import { checkScenarios } from './checks/check-scenarios.ts';
import { checkStacks } from './checks/check-stacks.ts';
import { checkUnique } from './checks/check-unique.ts';
import { asObject, type Check, own, type RawObject } from './checks/raw.ts';
import { MIGRATIONS } from './migrations/all.ts';
import { type Migration, migrated } from './migrations/migrate.ts';
import { parsedJson } from './parsed-json.ts';
import { plainDataProblems } from './plain-data.ts';
import { type Problem, problemAt, shortValue } from './problem.ts';
import { problemInWords } from './problem-in-words.ts';
import { bounded, notAbout, notAt } from './problem-lists.ts';
import { notebookSchema } from './schema.ts';
import { schemaProblem } from './schema-problems.ts';
import { FORMAT, type Notebook, VERSION } from './types.ts';

export type Reading =
  | { readonly ok: true; readonly notebook: Notebook }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const CHECKS: readonly Check[] = [checkUnique, checkParameters, checkStacks, checkScenarios, checkMeasured, checkLinks];

/** Reads the text of a `.slabspring.json` file. Ask `sizeProblem` before reading a file of unknown size into memory. */
export function readNotebook(text: string): Reading {
  const parsed = parsedJson(text);
  return parsed.ok ? readNotebookValue(parsed.value) : failed([parsed.problem]);
}

/** Reads what `JSON.parse` or the store gave; `value` is not changed and not kept. */
export function readNotebookValue(value: unknown, migrations: readonly Migration[] = MIGRATIONS): Reading {
  const { sizes, keys } = plainDataProblems(value);
  if (sizes.length > 0) return failed(sizes, value);
  const raw = asObject(value);
  if (own(raw, 'format') !== FORMAT) return failed([...keys, notANotebook(value, raw)], value);
  const current = migrated(raw, migrations, VERSION);
  if (!current.ok) return failed([...keys, current.problem], value);
  const shape = v.safeParse(notebookSchema, current.file);
  const shapes = (shape.issues ?? []).map(schemaProblem);
  const others = [
    ...shapes,
    ...notAt(
      shapes,
      CHECKS.flatMap((check) => check(current.file)),
    ),
  ];
  const problems = [...keys, ...notAbout(keys, others)];
  return problems.length === 0 && shape.success ? { ok: true, notebook: shape.output } : failed(problems, current.file);
}

/** Everything that would keep a notebook from being read again; empty for a sound one. */
export function notebookProblems(notebook: Notebook): readonly Problem[] {
  const reading = readNotebookValue(notebook);
  return reading.ok ? [] : reading.problems;
}

function notANotebook(value: unknown, raw: RawObject): Problem {
  if (Object.keys(raw).length === 0) return problemAt([], 'a notebook (a JSON object)', shortValue(value));
  return problemAt(['format'], `"${FORMAT}"`, shortValue(own(raw, 'format')));
}

function failed(problems: readonly Problem[], file?: unknown): Reading {
  return { ok: false, problems: bounded(problems).map((problem) => problemInWords(file, problem)) };
}
