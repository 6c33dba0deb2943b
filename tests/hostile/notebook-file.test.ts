import { afterEach, describe, expect, test, vi } from 'vitest';
import { LIMITS } from '#src/notebook/limits.ts';
import { readNotebook, readNotebookValue } from '#src/notebook/read-file.ts';
import { writeNotebook } from '#src/notebook/write-file.ts';
import { smallNotebook } from '../notebook/small-notebook.ts';

afterEach(() => vi.restoreAllMocks());

const text = writeNotebook(smallNotebook());

function problems(file: string) {
  const reading = readNotebook(file);
  return reading.ok ? [] : reading.problems;
}

test('10 MB of garbage are refused by their size, before any of it is parsed', () => {
  const parse = vi.spyOn(JSON, 'parse');
  expect(problems('x'.repeat(10_000_000))).toMatchObject([{ path: '', received: '10000000' }]);
  expect(parse).not.toHaveBeenCalled();
});

test.each([
  ['nothing', ''],
  ['NaN in place of a number', text.replace('0.038', 'NaN')],
  ['a text that breaks off', text.slice(0, 500)],
  ['single quotes', text.replaceAll('"', "'")],
  ['bytes of a picture', '\u0089PNG\r\n\u001a\n'],
])('%s is one problem with its place', (_name, file) => {
  const found = problems(file);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({ line: expect.any(Number), column: expect.any(Number) });
});

test.each(['null', 'true', '3', '"text"', '[]', '{}', '[{"format": "slab-and-spring"}]'])(
  '%s is not a notebook',
  (file) => {
    expect(problems(file)).toHaveLength(1);
  },
);

describe('keys that reach into the prototype of objects', () => {
  const places = ['"title":', '"value":', '"material":', '"slab":', '"text":'];

  test.each(places.flatMap((place) => ['__proto__', 'constructor', 'prototype', 'toString'].map((k) => [k, place])))(
    '%s beside %s is refused and leaves objects alone',
    (key, place) => {
      const file = text.replace(place!, `"${key}": {"polluted": true}, ${place}`);
      expect(file).not.toBe(text);
      expect(problems(file).map((p) => p.message)).toEqual([
        expect.stringMatching(
          new RegExp(`^(?:[A-Z].*: )?the key "${key}" is not allowed in a notebook \\(/.*${key}\\)$`),
        ),
      ]);
      expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    },
  );

  test('are named together with whatever else is wrong', () => {
    const file = text.replace('"title": "Practice room"', '"__proto__": 1, "title": 3');
    expect(problems(file).map((p) => p.path)).toEqual(['/__proto__', '/title']);
  });
});

test('a circle of scenario parents is named at each scenario on it', () => {
  const file = text.replace('"parent": "existing"', '"parent": "both"');
  expect(problems(file).map((p) => p.path)).toEqual(['/scenarios/1/parent', '/scenarios/2/parent']);
});

test('a million brackets inside each other are refused without exhausting the stack', () => {
  const deep = '['.repeat(900_000) + ']'.repeat(900_000);
  expect(problems(deep)[0]).toMatchObject({ expected: 'nested at most 16 deep' });
  expect(problems('{"a":'.repeat(300_000))).toMatchObject([{ received: 'the end of the file' }]);
});

test('endless lists and texts are size problems', () => {
  const many = JSON.stringify({ ...smallNotebook(), shown: Array(200_000).fill('x') });
  expect(problems(many)).toMatchObject([{ path: '/shown', expected: 'at most 1000 entries long' }]);
  const long = JSON.stringify({ ...smallNotebook(), title: 'x'.repeat(LIMITS.commentary + 1) });
  expect(problems(long)).toMatchObject([{ path: '/title', expected: 'at most 50000 characters long' }]);
});

test('a page of text never stands in a message', () => {
  const loud = JSON.stringify({ ...smallNotebook(), units: 'x'.repeat(40_000), ['k'.repeat(40_000)]: 1 });
  for (const { message } of problems(loud)) expect(message.length).toBeLessThan(LIMITS.name * 3);
});

test('thousands of problems end in a count of those that are not listed', () => {
  const cells = Array.from({ length: 900 }, (_, i) => ({ kind: 'stack', id: `c${i}`, folded: 1, stack: 'nowhere' }));
  const found = problems(JSON.stringify({ ...smallNotebook(), cells }));
  expect(found).toHaveLength(LIMITS.problems + 1);
  expect(found.at(-1)!.message).toMatch(/\d+ more problems/);
});

test('what only memory can hold is refused as well', () => {
  const circular: Record<string, unknown> = { ...smallNotebook() };
  for (let i = 0; i < 20; i++) circular[`self${i}`] = circular;
  for (const value of [Number.NaN, Symbol('x'), () => 1, undefined, circular, new Map([['format', 1]]), new Date()])
    expect(readNotebookValue(value).ok).toBe(false);
});

describe('growth', () => {
  /** Reads of properties and array entries, counted by a proxy around everything below the root. */
  function steps(value: unknown): number {
    let count = 0;
    const wrapped = (inner: unknown): unknown =>
      typeof inner !== 'object' || inner === null
        ? inner
        : new Proxy(inner, {
            get(target, key, receiver) {
              count++;
              return wrapped(Reflect.get(target, key, receiver));
            },
          });
    readNotebookValue(wrapped(value));
    return count;
  }

  const scenarios = (n: number) => ({
    ...smallNotebook(),
    scenarios: Array.from({ length: n }, (_, i) => ({
      id: `s${i}`,
      name: '',
      mark: i,
      parent: i === 0 ? null : `s${i - 1}`,
      changes: i === 0 ? {} : { slab: 0.05 },
    })),
    shown: ['s0'],
    reference: 's0',
    active: 's0',
  });
  const cells = (n: number) => ({
    ...smallNotebook(),
    cells: Array.from({ length: n }, (_, i) => ({ kind: 'stack', id: `c${i}`, folded: false, stack: 'floor' })),
  });
  const strangers = (n: number) => ({
    ...smallNotebook(),
    ...Object.fromEntries(Array.from({ length: n }, (_, i) => [`stranger${i}`, i])),
  });

  const materials = (n: number) => {
    const [own] = smallNotebook().materials;
    const [floor] = smallNotebook().stacks;
    const layers = floor!.layers.map((l) =>
      l.kind === 'leaf' ? { ...l, sheets: Array.from({ length: n }, () => ({ ...l.sheets[0], material: 'm1' })) } : l,
    );
    return {
      ...smallNotebook(),
      materials: Array.from({ length: n }, (_, i) => ({ ...own, key: `m${i}` })),
      stacks: [{ ...floor, layers }],
    };
  };

  test.each([
    ['sheets and materials', materials],
    ['a chain of scenarios', scenarios],
    ['cells', cells],
    ['unknown keys', strangers],
  ])('twice as many of %s take at most about twice the steps', (_name, make) => {
    const counts = [25, 50, 100, 200].map((n) => steps(make(n)));
    for (let i = 1; i < counts.length; i++) expect(counts[i]! / counts[i - 1]!).toBeLessThan(2.2);
  });

  test('the search for a syntax error passes over the text once', () => {
    // A quadratic search would not end within the time a test has.
    expect(problems(`[${'"a\\n",'.repeat(280_000)}`)).toMatchObject([{ line: 1, received: 'the end of the file' }]);
  });
});
