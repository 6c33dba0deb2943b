import { expect, test } from 'vitest';
import { MIGRATIONS } from '#src/notebook/migrations/all.ts';
import { type Migration, migrated } from '#src/notebook/migrations/migrate.ts';
import { readNotebookValue } from '#src/notebook/read-file.ts';
import { VERSION } from '#src/notebook/types.ts';
import { smallNotebook } from './small-notebook.ts';

/** Two invented steps: the name became a title, then the title lost its blanks. */
const STEPS: readonly Migration[] = [
  { from: 1, migrate: ({ name, ...rest }) => ({ ...rest, version: 2, title: name }) },
  {
    from: 2,
    migrate: (file) => {
      if (typeof file.title !== 'string') throw new TypeError('title must be a text');
      return { ...file, version: 3, title: file.title.trim() };
    },
  },
];

test('an old file goes through every step in turn', () => {
  expect(migrated({ version: 1, name: ' Club ' }, STEPS, 3)).toEqual({
    ok: true,
    from: 1,
    file: { version: 3, title: 'Club' },
  });
});

test('a current file goes through none', () => {
  const file = { version: 3, title: ' Club ' };
  expect(migrated(file, STEPS, 3)).toEqual({ ok: true, from: 3, file });
});

test('what a step cannot use is a problem, not a crash', () => {
  expect(migrated({ version: 2 }, STEPS, 3)).toMatchObject({
    ok: false,
    problem: { message: 'the file must be a sound file of version 2, got title must be a text' },
  });
});

test.each([0, 4, 1.5, '1', null, undefined])('version %j is unknown', (version) => {
  expect(migrated({ version }, STEPS, 3)).toMatchObject({ ok: false, problem: { path: '/version' } });
});

test('a missing step is a problem', () => {
  expect(migrated({ version: 1, name: 'x' }, STEPS.slice(1), 3).ok).toBe(false);
});

test('the result of a step is checked like any other file', () => {
  const file = { ...smallNotebook(), version: VERSION - 1 };
  const step = (title: unknown): Migration => ({
    from: VERSION - 1,
    migrate: (old) => ({ ...old, version: VERSION, title }),
  });
  expect(readNotebookValue(file, [step('Club')])).toMatchObject({ ok: true, notebook: { title: 'Club' } });
  expect(readNotebookValue(file, [step(7)])).toMatchObject({ ok: false, problems: [{ path: '/title' }] });
});

test('there is a migration for every older version', () => {
  expect(MIGRATIONS.map((m) => m.from)).toEqual(Array.from({ length: VERSION - 1 }, (_, i) => i + 1));
});
