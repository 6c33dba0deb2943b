import { expect, test } from 'vitest';
import { freshId } from '#src/notebook/fresh-id.ts';
import { freshKey } from '#src/notebook/fresh-key.ts';

test('an id is eight letters and digits, starts with a letter and is not taken', () => {
  const draws = [...Array(8).fill(0), ...Array(8).fill(0.999)];
  const random = () => draws.shift()!;
  expect(freshId(random, ['aaaaaaaa'])).toMatch(/^[a-z][a-z0-9]{7}$/);
  expect(draws).toEqual([]);
});

test('a key is made of its label and numbered when taken', () => {
  expect(freshKey('Slab thickness', [])).toBe('slab-thickness');
  expect(freshKey('Slab thickness', ['slab-thickness', 'slab-thickness-2'])).toBe('slab-thickness-3');
  expect(freshKey('2 × 13 mm Plâtre', [])).toBe('mm-platre');
  expect(freshKey('板', [])).toBe('value');
  expect(freshKey('Constructor', [])).toBe('constructor-2');
  expect(freshKey(`${'a'.repeat(47)} b`, [])).toBe('a'.repeat(47));
});
