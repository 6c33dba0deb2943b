/** What refers to a scenario, a stack or a parameter by name refers to one that is there. */
import { type Path, type Problem, problemAt, shortValue } from '../problem.ts';
import { asList, entriesOf, isText, own, type RawObject, textsOf } from './raw.ts';

export function checkLinks(notebook: RawObject): readonly Problem[] {
  const scenarios = textsOf(entriesOf(notebook, 'scenarios'), 'id');
  const stacks = textsOf(entriesOf(notebook, 'stacks'), 'id');
  const parameters = textsOf(entriesOf(notebook, 'parameters'), 'key');
  const shown = asList(own(notebook, 'shown'));
  return [
    ...shown.flatMap((id, i) => unknownName(id, scenarios, ['shown', i], 'the id of one of the scenarios')),
    ...unknownName(own(notebook, 'reference'), scenarios, ['reference'], 'the id of one of the scenarios'),
    ...unknownName(own(notebook, 'active'), new Set(shown.filter(isText)), ['active'], 'the id of a shown scenario'),
    ...entriesOf(notebook, 'cells').flatMap(({ item, path }) => [
      ...unknownName(own(item, 'stack'), stacks, [...path, 'stack'], 'the id of one of the stacks'),
      ...asList(own(item, 'parameters')).flatMap((key, i) =>
        unknownName(key, parameters, [...path, 'parameters', i], "the key of one of the notebook's parameters"),
      ),
    ]),
  ];
}

function unknownName(value: unknown, known: ReadonlySet<string>, path: Path, expected: string): readonly Problem[] {
  return isText(value) && !known.has(value) ? [problemAt(path, expected, shortValue(value))] : [];
}
