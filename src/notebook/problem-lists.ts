import { LIMITS } from './limits.ts';
import { type Problem, problemAt } from './problem.ts';

/** No more than a reader can use: what goes beyond is counted. */
export function bounded(problems: readonly Problem[]): readonly Problem[] {
  const more = problems.length - LIMITS.problems;
  if (more <= 0) return problems;
  return [...problems.slice(0, LIMITS.problems), problemAt([], 'sound', `${more} more problems`)];
}

/** Without those about a place that is refused as a whole, or about anything inside it. */
export function notAbout(refused: readonly Problem[], problems: readonly Problem[]): readonly Problem[] {
  const places = new Set(refused.map(({ path }) => path));
  return problems.filter(({ path }) => {
    for (let at = path; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) if (places.has(at)) return false;
    return true;
  });
}

/** Without those about a place that has one already: a text instead of a number need not be told to lie in a range, too. */
export function notAt(told: readonly Problem[], problems: readonly Problem[]): readonly Problem[] {
  const places = new Set(told.map(({ path }) => path));
  return problems.filter(({ path }) => !places.has(path));
}
