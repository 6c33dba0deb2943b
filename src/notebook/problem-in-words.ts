import { placeInWords } from './place-in-words.ts';
import type { Problem } from './problem.ts';

/**
 * The problem with a message that says first where in the notebook it is, in the words of the page, and last the path, for
 * whoever edits the file.
 *
 * @param file The file as it was parsed; `path` leads through it.
 */
export function problemInWords(file: unknown, problem: Problem): Problem {
  const { path, expected, received, message } = problem;
  if (path === '') return problem;
  const { where, what } = placeInWords(file, path);
  // A key that the file should not have has no other name than its own.
  const isOwnName = expected.startsWith('absent');
  const usual = isOwnName ? -1 : message.indexOf(` must be ${expected}, got ${received} (${path})`);
  const sentence = usual < 0 ? message : `${what}${message.slice(usual)}`;
  const place = where === '' ? '' : `${where[0]!.toUpperCase()}${where.slice(1)}: `;
  return { ...problem, message: `${place}${sentence}` };
}
