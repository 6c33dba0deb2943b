import * as v from 'valibot';
import { checkStacks } from './checks/check-stacks.ts';
import { checkUnique } from './checks/check-unique.ts';
import { asObject } from './checks/raw.ts';
import { parsedJson } from './parsed-json.ts';
import { plainDataProblems } from './plain-data.ts';
import type { Problem } from './problem.ts';
import { problemInWords } from './problem-in-words.ts';
import { bounded, notAbout } from './problem-lists.ts';
import { schemaProblem } from './schema-problems.ts';
import { bareStackSchema } from './stack-schema.ts';
import type { Stack } from './types.ts';

export type StackReading =
  | { readonly ok: true; readonly stack: Stack }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads a file that holds one stack with literals only and built-in materials, with the care of `readNotebook`. */
export function readStack(text: string): StackReading {
  const parsed = parsedJson(text);
  if (!parsed.ok) return { ok: false, problems: [parsed.problem] };
  const { sizes, keys } = plainDataProblems(parsed.value);
  if (sizes.length > 0) return { ok: false, problems: inWords(sizes, parsed.value) };
  const shape = v.safeParse(bareStackSchema, parsed.value);
  const others = [...(shape.issues ?? []).map(schemaProblem), ...meaningProblems(parsed.value)];
  const problems = [...keys, ...notAbout(keys, others)];
  return problems.length === 0 && shape.success
    ? { ok: true, stack: shape.output }
    : { ok: false, problems: inWords(problems, parsed.value) };
}

function inWords(problems: readonly Problem[], stack: unknown): readonly Problem[] {
  return bounded(problems).map((problem) => problemInWords(stack, problem));
}

/** The checks of a notebook that has this stack and nothing else, with paths that begin at the stack. */
function meaningProblems(stack: unknown): readonly Problem[] {
  const lone = { stacks: [asObject(stack)] };
  const within = '/stacks/0';
  return [...checkUnique(lone), ...checkStacks(lone)]
    .filter(({ path }) => !path.endsWith('/parameter'))
    .map((problem) => ({
      ...problem,
      path: problem.path.replace(within, ''),
      message: problem.message.replace(`(${within}`, '('),
    }));
}
