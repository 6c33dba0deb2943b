import * as v from 'valibot';
import { expect, expectTypeOf, test } from 'vitest';
import { notebookSchema } from '#src/notebook/schema.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { smallNotebook } from './small-notebook.ts';

type Read = v.InferOutput<typeof notebookSchema>;
type DeepReadonly<T> = T extends object ? { readonly [K in keyof T]: DeepReadonly<T[K]> } : T;
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
type Agreement = { [K in keyof Notebook]: Same<DeepReadonly<Read[K]>, DeepReadonly<Notebook[K]>> };

test('the schema and the types agree both ways', () => {
  expectTypeOf<keyof Read>().toEqualTypeOf<keyof Notebook>();
  expectTypeOf<Agreement[keyof Notebook]>().toEqualTypeOf<true>();
  expect(v.parse(notebookSchema, smallNotebook())).toEqual(smallNotebook());
});
