import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/ratings/ratings-cell.ts';
import { laidImprovement } from '#src/acoustics/laid-improvement.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, RatingsCell } from '#src/notebook/types.ts';
import { MAT, SLAB } from '../notebook/floating-layers.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const SUMMARY = 'What lies on the floor, by itself on a concrete slab';
const mount = (notebook: Notebook) => mountCell(document.createElement('ratings-cell'), notebook, 'ratings');
const table = () => page.getByRole('region', { name: 'What lies on the floor, on a concrete slab' });
const words = (element: Element) => element.textContent!.replace(/\s+/g, ' ').trim();

/** A slab on a mat lies on the floor of every scenario; it is carpeted too in the one that is worked in. */
function floating(): Notebook {
  const room = practiceRoom();
  const stacks = room.stacks.map((s) => ({ ...s, layers: [SLAB, MAT, ...s.layers] }));
  return setStackField({ ...room, stacks }, 'floor', ['covering'], 'carpet');
}

function row(name: string): string[] {
  const found = [...table().element().querySelectorAll('tbody tr')].find(
    (r) => words(r.querySelector('th')!) === name,
  )!;
  return [...found.querySelectorAll('td.number')].map(words);
}

test('is not there where nothing lies on the floor', async () => {
  await mount(practiceRoom());
  expect(page.getByText(SUMMARY).elements()).toEqual([]);
});

test('once unfolded shows what lies on each floor on the standard slab, and stays so in the notebook', async () => {
  const { notebook, edits } = await mount(floating());
  expect(table().elements()).toEqual([]);
  await userEvent.click(page.getByText(SUMMARY));
  await expect.element(table()).toBeVisible();
  expect(edits).toEqual(['what lies on the floor']);
  expect(notebook().cells.find((c) => c.id === 'ratings')).toMatchObject({ laidPart: true });
  expect(notebookProblems(notebook())).toEqual([]);

  const expected = notebook().shown.map((id) => laidImprovement(resolveStack(notebook(), id, 'floor'))!);
  const [plain, carpeted] = expected;
  expect(carpeted!.dLw).toBeGreaterThan(plain!.dLw);
  expect(row('ΔLw (CI,Δ)')).toEqual(expected.map((e) => `${e.dLw} (${e.CIdelta})`.replaceAll('-', '−')));
  expect(row('ΔIIC')).toEqual(expected.map((e) => String(e.dIIC)));
  expect(row('f0')).toEqual(expected.map((e) => `${Math.round(e.floatingResonance_Hz!)} Hz`));
  const at500 = expected[0]!.bands_Hz.indexOf(500);
  expect(row('500 Hz')).toEqual(expected.map((e) => `+${e.dL_dB[at500]!.toFixed(1)}`));

  await userEvent.click(page.getByText(SUMMARY));
  expect(table().elements()).toEqual([]);
});

test('a shown floor that nothing lies on has no column, and is named', async () => {
  const carpeted = setStackField(practiceRoom(), 'floor', ['covering'], 'carpet');
  await mount(withUnfolded(carpeted));
  await expect.element(table()).toBeVisible();
  const heads = [...table().element().querySelectorAll('thead th.number')].map(words);
  expect(heads).toEqual(['Slab on top', 'Both']);
  expect(row('f0')).toEqual(['–', '–']);
  await expect
    .element(page.getByText('Nothing of the kind lies on: As built, Ceiling on channel.', { exact: false }))
    .toBeVisible();
});

function withUnfolded(notebook: Notebook): Notebook {
  const cells = notebook.cells.map((c) => (c.id === 'ratings' ? ({ ...c, laidPart: true } as RatingsCell) : c));
  return { ...notebook, cells };
}

test('axe finds nothing in it, and it fits a narrow page', async () => {
  await page.viewport(360, 800);
  const { element } = await mount(withUnfolded(floating()));
  await expect.element(table()).toBeVisible();
  expect(await axeProblems(element)).toEqual([]);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
});
