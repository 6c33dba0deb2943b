/** Where something stands in a file, in the words of the page: `stack “Floor”, layer “deck”`. */
import { KINDS, kindOf } from '#src/quantities/kinds.ts';
import { asList, asObject, isText, own, type RawObject } from './checks/raw.ts';
import { nameOfKey, unitOfKey } from './key-in-words.ts';
import { shortened } from './problem.ts';

export interface PlaceInWords {
  /** Empty for what belongs to the whole file. */
  readonly where: string;
  /** What it is about, there; with its unit in the file where it has one. */
  readonly what: string;
}

interface EntryWords {
  /** What one entry is called. */
  readonly one: string;
  /** The key under which it has a name of its own. */
  readonly named?: string;
  /** Number of the first of them; absent: 1. */
  readonly first?: number;
  /** The key under which something stands that helps to find it, where it has no name. */
  readonly known?: string;
}

const ENTRIES: Readonly<Record<string, EntryWords>> = {
  stacks: { one: 'stack', named: 'name' },
  layers: { one: 'layer', named: 'name' },
  sheets: { one: 'sheet', known: 'material' },
  fillsAbove: { one: 'fill', first: 2, known: 'fill' },
  leaks: { one: 'leak', named: 'name' },
  walls: { one: 'wall', named: 'name' },
  scenarios: { one: 'scenario', named: 'name' },
  parameters: { one: 'parameter', named: 'label' },
  choices: { one: 'choice', named: 'label' },
  materials: { one: 'material', named: 'name' },
  cells: { one: 'cell', named: 'title', known: 'kind' },
  measured: { one: 'measured bands', named: 'name' },
};

const LONGEST_NAME = 40;

/** @param pointer JSON Pointer to a place that need not be there. */
export function placeInWords(file: unknown, pointer: string): PlaceInWords {
  const steps = pointer.split('/').slice(1).map(unescaped);
  const places: string[] = [];
  let what = 'the file';
  let holder: unknown = file;
  let owner: RawObject = {};
  for (const [i, step] of steps.entries()) {
    const isLast = i === steps.length - 1;
    const above = steps[i - 1] ?? '';
    if (Array.isArray(holder) && /^\d+$/.test(step)) {
      const item = asList(holder)[Number(step)];
      const entry = entryInWords(above, step, asObject(item));
      if (!isLast && entry) places.push(entry);
      what = entry ?? `entry ${Number(step) + 1} of ${withUnit(nameOfKey(above), unitOfKey(above))}`;
      owner = asObject(item);
      holder = item;
      continue;
    }
    what = above === 'changes' ? changeInWords(file, step) : keyInWords(step, above, owner);
    holder = own(asObject(holder), step);
  }
  return { where: places.join(', '), what };
}

function entryInWords(list: string, index: string, item: RawObject): string | undefined {
  if (!Object.hasOwn(ENTRIES, list)) return undefined;
  const { one, named, first = 1, known } = ENTRIES[list]!;
  const name = textUnder(named, item);
  if (name) return `${one} “${name}”`;
  const help = textUnder(known, item);
  return `${one} ${Number(index) + first}${help && ` (${help})`}`;
}

function textUnder(key: string | undefined, item: RawObject): string {
  const text = key === undefined ? undefined : own(item, key);
  return isText(text) ? shortened(text.trim(), LONGEST_NAME) : '';
}

/** @param owner The entry of a list in which the key stands. */
function keyInWords(key: string, above: string, owner: RawObject): string {
  if (key === 'parameter' && above !== '' && Number.isNaN(Number(above)))
    return `the parameter for ${nameOfKey(above)}`;
  const isOfParameter = ['value', 'min', 'max', 'step'].includes(key) && isText(own(owner, 'quantity'));
  return withUnit(nameOfKey(key), isOfParameter ? unitOfParameter(owner) : unitOfKey(key));
}

function changeInWords(file: unknown, key: string): string {
  const parameter = asList(own(asObject(file), 'parameters'))
    .map(asObject)
    .find((p) => own(p, 'key') === key);
  const label = parameter && own(parameter, 'label');
  return isText(label) ? withUnit(shortened(label, LONGEST_NAME), unitOfParameter(parameter!)) : key;
}

/** A file is in SI throughout: the unit of factor 1. */
function unitOfParameter(parameter: RawObject): string {
  const quantity = own(parameter, 'quantity');
  if (!isText(quantity) || !Object.hasOwn(KINDS, quantity)) return '';
  return kindOf(quantity as keyof typeof KINDS).units.find((unit) => unit.factor === 1)?.symbol ?? '';
}

function withUnit(name: string, unit: string): string {
  return unit === '' ? name : `${name} in ${unit}`;
}

function unescaped(step: string): string {
  return step.replaceAll('~1', '/').replaceAll('~0', '~');
}
