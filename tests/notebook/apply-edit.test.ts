import { expect, test } from 'vitest';
import { applyEdit } from '#src/notebook/apply-edit.ts';
import { forkScenario } from '#src/notebook/edits/fork-scenario.ts';
import { removeScenario } from '#src/notebook/edits/remove-scenario.ts';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { smallNotebook } from './small-notebook.ts';

test('an edit that applies gives the edited notebook', () => {
  const result = applyEdit(smallNotebook(), (n) => setTitle(n, 'Club'));
  expect(result).toMatchObject({ ok: true, notebook: { title: 'Club' } });
});

test('an edit that changes nothing gives the very notebook', () => {
  const notebook = smallNotebook();
  expect(applyEdit(notebook, (n) => n)).toEqual({ ok: true, notebook });
});

test('an edit that does not apply is refused in words', () => {
  expect(applyEdit(smallNotebook(), (n) => removeScenario(n, 'existing'))).toEqual({
    ok: false,
    message: 'scenario to remove must be a fork, got the base',
    problems: [],
  });
});

test('an edit beyond a limit is refused before it could make a notebook that cannot be read again', () => {
  expect(applyEdit(smallNotebook(), (n) => setTitle(n, 'x'.repeat(LIMITS.name + 1)))).toMatchObject({
    ok: false,
    message: 'title must be at most 200 long, got 201 (/title)',
  });
  let notebook = smallNotebook();
  for (let i = notebook.scenarios.length; i < LIMITS.scenarios; i++)
    notebook = forkScenario(notebook, 'heavy', { id: `f${i}`, name: '' });
  expect(applyEdit(notebook, (n) => forkScenario(n, 'heavy', { id: 'more', name: '' })).ok).toBe(false);
});

test('a fault of another kind is not hidden', () => {
  const fault = () => {
    throw new SyntaxError('a fault');
  };
  expect(() => applyEdit(smallNotebook(), fault)).toThrow('a fault');
});
