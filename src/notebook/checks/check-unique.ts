/** Ids, keys and the marks of scenarios stand for one thing each. */
import { COVERINGS, FIBRE_MATERIALS, SHEET_MATERIALS } from '#src/acoustics/materials.ts';
import { type Path, type Problem, problemAt, shortValue } from '../problem.ts';
import { asList, asObject, type Entry, entriesOf, isText, own, type RawObject } from './raw.ts';

export function checkUnique(notebook: RawObject): readonly Problem[] {
  const materials = (kind: string) => entriesOf(notebook, 'materials').filter(({ item }) => own(item, 'kind') === kind);
  return [
    ...repeated(entriesOf(notebook, 'parameters'), 'key'),
    ...entriesOf(notebook, 'parameters').flatMap(({ item, path }) =>
      repeated(entriesOf(item, 'choices', path), 'value'),
    ),
    ...repeated(entriesOf(notebook, 'stacks'), 'id'),
    ...entriesOf(notebook, 'stacks').flatMap(({ item, path }) => repeated(entriesOf(item, 'layers', path), 'id')),
    ...entriesOf(notebook, 'stacks').flatMap(({ item, path }) => repeated(entriesOf(item, 'leaks', path), 'id')),
    ...repeated(entriesOf(asObject(own(notebook, 'flanking')), 'walls', ['flanking']), 'id'),
    ...repeated(
      materials('sheet'),
      'key',
      SHEET_MATERIALS.map((m) => m.key),
    ),
    ...repeated(materials('fibre'), 'key', ['none', ...FIBRE_MATERIALS.map((m) => m.key)]),
    ...repeated(materials('covering'), 'key', ['none', ...COVERINGS.map((m) => m.key)]),
    ...repeated(entriesOf(notebook, 'cells'), 'id'),
    ...entriesOf(notebook, 'cells').flatMap(({ item, path }) => repeated(entriesOf(item, 'measured', path), 'id')),
    ...repeated(entriesOf(notebook, 'scenarios'), 'id'),
    ...repeated(entriesOf(notebook, 'scenarios'), 'mark'),
    ...repeatedTexts(asList(own(notebook, 'shown')), ['shown']),
  ];
}

function repeated(entries: readonly Entry[], key: string, taken: readonly string[] = []): readonly Problem[] {
  const seen = new Set<unknown>(taken);
  return entries.flatMap(({ item, path }) => seenBefore(own(item, key), [...path, key], seen));
}

function repeatedTexts(texts: readonly unknown[], path: Path): readonly Problem[] {
  const seen = new Set<unknown>();
  return texts.flatMap((text, i) => seenBefore(text, [...path, i], seen));
}

function seenBefore(value: unknown, path: Path, seen: Set<unknown>): readonly Problem[] {
  if (!isText(value) && typeof value !== 'number') return [];
  if (seen.has(value)) return [problemAt(path, 'unique', `${shortValue(value)} once more`)];
  seen.add(value);
  return [];
}
