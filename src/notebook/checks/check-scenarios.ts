/** The first scenario is the base, the others descend from it without a circle and change what there is. */
import { type Path, type Problem, problemAt, shortValue } from '../problem.ts';
import { valueProblems } from './check-parameters.ts';
import { asObject, byText, type Entry, entriesOf, isText, own, type RawObject, textsOf } from './raw.ts';

export function checkScenarios(notebook: RawObject): readonly Problem[] {
  const scenarios = entriesOf(notebook, 'scenarios');
  const ids = textsOf(scenarios, 'id');
  const onCircle = idsOnCircles(scenarios);
  const parameters = byText(entriesOf(notebook, 'parameters'), 'key');
  return scenarios.flatMap((scenario, i) => [
    ...(i === 0 ? baseProblems(scenario) : parentProblems(scenario, ids, onCircle)),
    ...changeProblems(scenario, parameters),
  ]);
}

function baseProblems({ item, path }: Entry): readonly Problem[] {
  const changes = Object.keys(asObject(own(item, 'changes'))).length;
  return [
    ...(isText(own(item, 'parent'))
      ? [problemAt([...path, 'parent'], 'null, since the first scenario is the base', shortValue(own(item, 'parent')))]
      : []),
    ...(changes > 0
      ? [problemAt([...path, 'changes'], 'empty, since the first scenario is the base', `${changes} entries`)]
      : []),
  ];
}

function parentProblems(
  { item, path }: Entry,
  ids: ReadonlySet<string>,
  onCircle: ReadonlySet<unknown>,
): readonly Problem[] {
  const parent = own(item, 'parent');
  const place: Path = [...path, 'parent'];
  if (parent === null) return [problemAt(place, 'the id of a scenario, since only the first is the base', 'null')];
  if (!isText(parent)) return [];
  if (!ids.has(parent)) return [problemAt(place, 'the id of one of the scenarios', shortValue(parent))];
  if (!onCircle.has(own(item, 'id'))) return [];
  return [problemAt(place, 'a scenario that does not descend from this one', shortValue(parent))];
}

/** Ids of the scenarios that are their own ancestors. Each is passed once, however long the chains. */
function idsOnCircles(scenarios: readonly Entry[]): ReadonlySet<unknown> {
  const parents = new Map(scenarios.map(({ item }) => [own(item, 'id'), own(item, 'parent')]));
  const passed = new Set<unknown>();
  const onCircle = new Set<unknown>();
  for (const start of parents.keys()) {
    const chain: unknown[] = [];
    let at: unknown = start;
    for (; parents.has(at) && !passed.has(at); at = parents.get(at)) {
      passed.add(at);
      chain.push(at);
    }
    const closes = chain.indexOf(at);
    if (closes >= 0) for (const id of chain.slice(closes)) onCircle.add(id);
  }
  return onCircle;
}

function changeProblems({ item, path }: Entry, parameters: ReadonlyMap<string, RawObject>): readonly Problem[] {
  const changes = own(item, 'changes');
  if (Array.isArray(changes)) return [problemAt([...path, 'changes'], 'an object', shortValue(changes))];
  return Object.entries(asObject(changes)).flatMap(([key, value]) => {
    const place = [...path, 'changes', key];
    const parameter = parameters.get(key);
    if (!parameter) return [problemAt(place, "a change of one of the notebook's parameters", `"${key}"`)];
    const sameType = isText(value) || typeof value === 'number';
    return sameType ? valueProblems(parameter, value, place) : [];
  });
}
