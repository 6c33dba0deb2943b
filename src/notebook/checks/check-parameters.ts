/** A parameter's range is a range, and its value lies in it or among its choices. */
import { type Path, type Problem, problemAt, shortValue } from '../problem.ts';
import { entriesOf, isNumber, isText, own, type RawObject, textsOf } from './raw.ts';

export function checkParameters(notebook: RawObject): readonly Problem[] {
  return entriesOf(notebook, 'parameters').flatMap(({ item, path }) => [
    ...rangeProblems(item, path),
    ...valueProblems(item, own(item, 'value'), [...path, 'value']),
  ]);
}

function rangeProblems(parameter: RawObject, path: Path): readonly Problem[] {
  const [min, max, step] = ['min', 'max', 'step'].map((key) => own(parameter, key));
  return [
    ...(isNumber(min) && isNumber(max) && min > max ? [problemAt([...path, 'max'], `at least ${min}`, `${max}`)] : []),
    ...(isNumber(step) && step <= 0 ? [problemAt([...path, 'step'], 'more than 0', `${step}`)] : []),
  ];
}

/** What is wrong with a value of a parameter, wherever the value stands. */
export function valueProblems(parameter: RawObject, value: unknown, path: Path): readonly Problem[] {
  if (own(parameter, 'choices') !== undefined) {
    const choices = textsOf(entriesOf(parameter, 'choices'), 'value');
    if (choices.size === 0 || (isText(value) && choices.has(value))) return [];
    return [problemAt(path, `one of ${[...choices].map((c) => `"${c}"`).join(', ')}`, shortValue(value))];
  }
  const [min, max] = [own(parameter, 'min'), own(parameter, 'max')];
  if (!isNumber(min) || !isNumber(max) || min > max) return [];
  if (isNumber(value) && value >= min && value <= max) return [];
  return [problemAt(path, `a number from ${min} to ${max}`, shortValue(value))];
}
