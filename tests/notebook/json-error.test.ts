import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonError } from '#src/notebook/json-error.ts';
import { readNotebook } from '#src/notebook/read-file.ts';

test.each([
  ['', 1, 1, 'value', 'the end of the file'],
  ['{"a": NaN}', 1, 7, 'value', '"N"'],
  ['{\n  "a": 1,\n  "b": 2,\n}', 4, 1, 'key', '"}"'],
  ['[1, 2', 1, 6, ', or ]', 'the end of the file'],
  ['{"a" 1}', 1, 6, ':', '"1"'],
  ['{"a": 1 "b"}', 1, 9, ', or }', '"\\""'],
  ['[1] x', 1, 5, 'the end', '"x"'],
  ['["a\nb"]', 1, 4, 'a character of a string, or its closing quote', '"\\n"'],
  ['["\\x"]', 1, 3, 'a character of a string, or its closing quote', '"\\\\"'],
  ['[1,]', 1, 4, 'value', '"]"'],
  ['[}', 1, 2, 'value or ]', '"}"'],
  ['\r\n\r\n 💥', 3, 2, 'value', '"💥"'],
  ['01', 1, 2, 'the end', '"1"'],
])('%j stops being JSON at line %d, column %d', (text, line, column, expected, received) => {
  expect(jsonError(text)).toMatchObject({ line, column, expected, received });
});

test('finds a fault exactly where JSON.parse refuses', () => {
  const nearJson = fc
    .tuple(fc.json(), fc.nat(), fc.constantFrom('', '"', '{', '}', ']', ',', ':', '\\', '0', '-', 'e', '\n', 'NaN'))
    .map(([json, at, piece]) => {
      const cut = at % (json.length + 1);
      return json.slice(0, cut) + piece + json.slice(cut + (at % 2));
    });
  fc.assert(
    fc.property(fc.oneof(nearJson, fc.string()), (text) => {
      expect(jsonError(text) !== undefined).toBe(refused(text));
    }),
    { numRuns: 2000 },
  );
});

test('a syntax error is one problem with its place', () => {
  expect(readNotebook('{\n "format": oops')).toEqual({
    ok: false,
    problems: [
      {
        path: '',
        line: 2,
        column: 12,
        expected: 'value',
        received: '"o"',
        message: 'the file must be JSON: value expected, got "o" (line 2, column 12)',
      },
    ],
  });
});

function refused(text: string): boolean {
  try {
    JSON.parse(text);
    return false;
  } catch {
    return true;
  }
}
