/** Small schemas that the others are made of. */
import * as v from 'valibot';
import { LIMITS } from './limits.ts';
import { isForbiddenKey } from './plain-data.ts';

/**
 * An object with these keys and no others. Every key too many is a problem of its own, and the output is a new object
 * with the keys in this order.
 */
export function closed<E extends v.ObjectEntries>(entries: E): v.StrictObjectSchema<E, undefined> {
  // The library's strict object stops at the first unknown key; a rest that nothing satisfies names them all.
  return v.objectWithRest(entries, v.never()) as unknown as v.StrictObjectSchema<E, undefined>;
}

/** The schemas between which `either` chooses, for those who describe the schema. */
export const CHOICES_OF_EITHER = new WeakMap<object, readonly v.GenericSchema[]>();

/** One of two schemas, chosen by a look at the input, so that problems name what was probably meant. */
export function either<A extends v.GenericSchema, B extends v.GenericSchema>(
  isFirst: (input: unknown) => boolean,
  first: A,
  second: B,
): v.GenericSchema<v.InferInput<A> | v.InferInput<B>, v.InferOutput<A> | v.InferOutput<B>> {
  const schema = v.lazy((input) => (isFirst(input) ? first : second));
  CHOICES_OF_EITHER.set(schema, [first, second]);
  return schema as v.GenericSchema<v.InferInput<A> | v.InferInput<B>, v.InferOutput<A> | v.InferOutput<B>>;
}

export const isObject = (input: unknown): input is object => typeof input === 'object' && input !== null;

export function numberWithin(min: number, max: number, whyNotMore?: string) {
  return v.pipe(v.number(), v.minValue(min), v.maxValue(max, atMost(max, whyNotMore)));
}

/** In problems that name a limit. */
function atMost(limit: number, why?: string): string {
  return `at most ${limit}${why === undefined ? '' : ` (${why})`}`;
}

/** 0, 1, 2 … */
export function wholeNumberUpTo(max: number) {
  return v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(max, atMost(max)));
}

/** Any finite number: the bounds keep infinity out and are far beyond every unit. */
export const finite = numberWithin(-1e20, 1e20);

export function textUpTo(length: number) {
  return v.pipe(v.string(), v.maxLength(length));
}

/** A name that people read; may be empty. */
export const name = textUpTo(LIMITS.name);

/** Ids and keys: letters, digits, `-` and `_`, so that they can stand in a link. */
export const key = v.pipe(
  v.string(),
  v.regex(/^[A-Za-z][A-Za-z0-9_-]{0,63}$/, 'a letter, then at most 63 letters, digits, - and _'),
  v.check((input) => !isForbiddenKey(input), 'a name that objects do not have already'),
);

export function listUpTo<S extends v.GenericSchema>(item: S, length: number) {
  return v.pipe(v.array(item), v.maxLength(length));
}

export function nonEmptyListUpTo<S extends v.GenericSchema>(item: S, length: number) {
  return v.pipe(v.array(item), v.minLength(1), v.maxLength(length));
}

export const reference = closed({ parameter: key });

/** A literal or a reference to a parameter. */
export function field<S extends v.GenericSchema>(literal: S) {
  return either(isObject, reference, literal);
}

/** A choice among the keys of a table of labels. */
export function oneOf<T extends string>(labels: Readonly<Record<T, string>>) {
  return v.picklist(Object.keys(labels) as T[]);
}
