import * as v from 'valibot';
import { checkStacks } from './checks/check-stacks.ts';
import { checkUnique } from './checks/check-unique.ts';
import { asObject, own } from './checks/raw.ts';
import { parsedJson } from './parsed-json.ts';
import { plainDataProblems } from './plain-data.ts';
import type { Problem } from './problem.ts';
import { problemInWords } from './problem-in-words.ts';
import { bounded, notAbout } from './problem-lists.ts';
import { schemaProblem } from './schema-problems.ts';
import { bareStackSchema } from './stack-schema.ts';
import type { Flanking, OwnMaterial, Stack } from './types.ts';

/** A stack on its own, with what a notebook around it would hold. */
export interface LoneStack {
  readonly stack: Stack;
  readonly materials: readonly OwnMaterial[];
  /** Absent: nothing goes around. */
  readonly flanking?: Flanking;
}

export type StackReading =
  | ({ readonly ok: true } & LoneStack)
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads a file that holds one stack with literals only, and the materials it brings, with the care of `readNotebook`. */
export function readStack(text: string): StackReading {
  const parsed = parsedJson(text);
  if (!parsed.ok) return { ok: false, problems: [parsed.problem] };
  const { sizes, keys } = plainDataProblems(parsed.value);
  if (sizes.length > 0) return { ok: false, problems: inWords(sizes, parsed.value) };
  const shape = v.safeParse(bareStackSchema, parsed.value);
  const others = [...(shape.issues ?? []).map(schemaProblem), ...meaningProblems(parsed.value)];
  const problems = [...keys, ...notAbout(keys, others)];
  if (problems.length > 0 || !shape.success) return { ok: false, problems: inWords(problems, parsed.value) };
  const { materials = [], flanking, ...stack } = shape.output;
  return { ok: true, stack, materials, ...(flanking && { flanking }) };
}

function inWords(problems: readonly Problem[], stack: unknown): readonly Problem[] {
  return bounded(problems).map((problem) => problemInWords(stack, problem));
}

/** The checks of a notebook that has this stack and what comes with it, and nothing else, with paths as in the file. */
function meaningProblems(file: unknown): readonly Problem[] {
  const stack = asObject(file);
  const lone = { stacks: [stack], materials: own(stack, 'materials'), flanking: own(stack, 'flanking') };
  const within = '/stacks/0';
  return [...checkUnique(lone), ...checkStacks(lone)]
    .filter(({ path }) => !path.endsWith('/parameter'))
    .map((problem) => ({
      ...problem,
      path: problem.path.replace(within, ''),
      message: problem.message.replace(`(${within}`, '('),
    }));
}
