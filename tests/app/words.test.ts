import { expect, test } from 'vitest';
import { cellTitle } from '#src/app/cell-title.ts';
import { dayWords } from '#src/app/day-words.ts';
import { freshName } from '#src/app/fresh-scenario.ts';
import { keptWords } from '#src/app/kept-words.ts';
import type { SessionState } from '#src/app/session.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const text = (words: string) => cellTitle(practiceRoom(), { kind: 'commentary', id: 'a', folded: true, text: words });

test('a folded text is called by its first line, without signs', () => {
  expect(text('\n## What *gains* more?\n\nMore.')).toBe('What gains more?');
  expect(text('It reaches [41](value:floor/stc) STC.')).toBe('It reaches 41 STC.');
  expect(text('')).toBe('Text');
  expect(text('word '.repeat(50)).length).toBeLessThanOrEqual(60);
});

test('a stack cell is called after its stack, others by their title or kind', () => {
  const [, knobs, section] = practiceRoom().cells;
  expect(cellTitle(practiceRoom(), knobs!)).toBe('Try it');
  expect(cellTitle(practiceRoom(), section!)).toBe('Floor of the practice room');
  expect(cellTitle(practiceRoom(), { ...knobs!, title: '' } as typeof knobs & object)).toBe('Parameters');
});

test('a fork is numbered on, and never takes a name that is there', () => {
  expect(freshName('Slab on top', ['Slab on top'])).toBe('Slab on top 2');
  expect(freshName('Slab on top 2', ['Slab on top', 'Slab on top 2', 'Slab on top 3'])).toBe('Slab on top 4');
});

test('a time of today has no date, one of another year has its year', () => {
  const now = new Date(2026, 10, 25, 15, 0);
  expect(dayWords(new Date(2026, 10, 25, 14, 2).getTime(), now, 'en-GB')).toBe('14:02');
  expect(dayWords(new Date(2026, 10, 24, 14, 2).getTime(), now, 'en-GB')).toMatch(/^24 Nov(,| at) 14:02$/);
  expect(dayWords(new Date(2025, 10, 24, 14, 2).getTime(), now, 'en-GB')).toContain('2025');
});

test('the page says where the work is kept, and when the file is behind', () => {
  const now = new Date(2026, 10, 25, 15, 0);
  const at = (hour: number) => new Date(2026, 10, 25, hour).getTime();
  const state = { access: 'writing', savedAt_ms: at(14), exportedAt_ms: null } as SessionState;
  expect(keptWords(state, now)).toMatch(/^Kept in this browser, .* · not yet saved to a file$/);
  expect(keptWords({ ...state, exportedAt_ms: at(13) }, now)).toMatch(/in a file as of .*, changed since$/);
  expect(keptWords({ ...state, exportedAt_ms: at(14) }, now)).not.toContain('changed since');
  expect(keptWords({ ...state, access: 'memory' }, now)).toContain('stores nothing');
});
