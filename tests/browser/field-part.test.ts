import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/ratings/ratings-cell.ts';
import { predict } from '#src/acoustics/predict.ts';
import { fieldValues } from '#src/acoustics/ratings/field-values.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, RatingsCell } from '#src/notebook/types.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const mount = (notebook = practiceRoom()) => mountCell(document.createElement('ratings-cell'), notebook, 'ratings');
const ratings = (notebook: Notebook) => notebook.cells.find((c) => c.id === 'ratings') as RatingsCell;
const withRoom = (changes: Partial<RatingsCell>, notebook = practiceRoom()) => ({
  ...notebook,
  cells: notebook.cells.map((c) => (c.id === 'ratings' ? ({ ...c, ...changes } as RatingsCell) : c)),
});
const unfold = () => userEvent.click(page.getByText('As it would be measured in the building'));
const volume = () => page.getByRole('textbox', { name: 'volume of the room below' });
const time = () => page.getByRole('textbox', { name: 'reverberation time' });
const table = () => page.getByRole('region', { name: 'Values as measured in the building' });

test('is folded away until it is asked for, and asks for the room first', async () => {
  const { edits } = await mount();
  expect(volume().elements()).toEqual([]);
  await unfold();
  await expect.element(volume()).toHaveValue('');
  expect(table().elements()).toEqual([]);
  expect(edits).toEqual([]);
});

test('a volume typed is kept in the cell, and the values are those of the standards’ formulas', async () => {
  const { notebook } = await mount();
  await unfold();
  await userEvent.fill(volume(), '60');
  await userEvent.keyboard('{Enter}');
  expect(ratings(notebook())).toMatchObject({ receivingVolume_m3: 60 });
  await userEvent.fill(time(), '0.8 s');
  await userEvent.keyboard('{Enter}');
  expect(ratings(notebook())).toMatchObject({ receivingVolume_m3: 60, reverberationTime_s: 0.8 });
  expect(notebookProblems(notebook())).toEqual([]);

  const expected = notebook().shown.map((id) =>
    fieldValues(predict(resolveStack(notebook(), id, 'floor')), {
      partitionArea_m2: 10,
      receivingVolume_m3: 60,
      reverberationTime_s: 0.8,
    }),
  );
  const cells = (name: string) => [...row(name).querySelectorAll('td.number')].map((c) => Number(c.textContent));
  await expect.element(table()).toBeVisible();
  expect(cells('ASTC')).toEqual(expected.map((e) => e.ASTC));
  expect(cells('DnT,w')).toEqual(expected.map((e) => e.DnTw));
  expect(cells('L′nT,w')).toEqual(expected.map((e) => e.LnTw));
});

function row(name: string): Element {
  return [...table().element().querySelectorAll('tbody tr')].find((r) => r.querySelector('th')?.textContent === name)!;
}

test('a field that is emptied goes out of the cell', async () => {
  const { notebook } = await mount(withRoom({ receivingVolume_m3: 60, reverberationTime_s: 2 }));
  await userEvent.clear(time());
  await userEvent.keyboard('{Enter}');
  expect(ratings(notebook())).not.toHaveProperty('reverberationTime_s');
  expect(ratings(notebook())).toMatchObject({ receivingVolume_m3: 60 });
});

test('a cell that has a room comes open, in the notebook’s units', async () => {
  await mount(withRoom({ receivingVolume_m3: 60 }, practiceRoom({ units: 'inch-pound' })));
  await expect.element(volume()).toHaveValue('2119 ft³');
  await expect.element(table()).toBeVisible();
});

test('says what the standard does not allow, and what goes around', async () => {
  const flanking = { kind: 'none', R500_dB: 0, slope_dB_per_octave: 0 } as const;
  await mount(withRoom({ receivingVolume_m3: 12 }, practiceRoom({ flanking })));
  await expect.element(page.getByText('need a receiving room of at least 25 m³', { exact: false })).toBeVisible();
  await expect.element(page.getByText('no building is like that', { exact: false })).toBeVisible();
});

test('a volume that is none is refused beside its field', async () => {
  const { edits } = await mount();
  await unfold();
  await userEvent.fill(volume(), 'big');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('alert')).toHaveTextContent('Expected a volume');
  await userEvent.fill(volume(), '0.1');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('alert')).toHaveTextContent('must be at least 1 m³');
  expect(edits).toEqual([]);
});

test('axe finds nothing in it, and it fits a narrow page', async () => {
  await page.viewport(360, 800);
  const { element } = await mount(withRoom({ receivingVolume_m3: 12 }));
  await expect.element(table()).toBeVisible();
  expect(await axeProblems(element)).toEqual([]);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
});
