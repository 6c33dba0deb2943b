import type { Browser, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Cell, CurvesCell, Notebook, Stack } from '#src/notebook/types.ts';
import { practiceRoom } from '../browser/practice-room.ts';
import { freshPage, launch, openNotebook, savedFile, settled, storedNow, tabTo, title } from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const FLOATING: Stack = {
  id: 'floor',
  name: 'Floating floor',
  length_m: 4,
  width_m: 2.5,
  covering: 'none',
  layers: [
    {
      kind: 'leaf',
      id: 'screed',
      name: 'screed',
      contact: 'loose',
      sheets: [{ material: 'cement-screed', thickness_m: 0.05 }],
    },
    { kind: 'mat', id: 'mat', name: 'mat', thickness_m: 0.02, dynamicStiffness_N_m3: 1e7, lossFactor: 0.2 },
    { kind: 'leaf', id: 'slab', name: 'slab', contact: 'loose', sheets: [{ material: 'concrete', thickness_m: 0.15 }] },
  ],
};

/** Impact curves of a floating floor, and the ratings of the same floor. */
function floatingRoom(): Notebook {
  const { cells } = practiceRoom();
  return practiceRoom({
    stacks: [FLOATING],
    cells: cells.flatMap((c): Cell[] => {
      if (c.kind === 'curves') return [{ ...c, quantity: 'impact' }];
      return c.kind === 'ratings' ? [{ ...c, receivingVolume_m3: 60 }] : [];
    }),
  });
}

const curvesIn = (file: string) => (JSON.parse(file) as Notebook).cells.find((c) => c.kind === 'curves') as CurvesCell;
const box = (page: Page, name: string) => page.getByRole('checkbox', { name });

test('a textbook model and the bands from 20 Hz, chosen by keyboard, survive a reload and stand in the file', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await openNotebook(page, floatingRoom());
  const chart = page.locator('band-chart');
  const ratings = page.locator('ratings-cell').getByRole('row', { name: /^IIC|^Ln,w/ });
  const before = await ratings.allTextContents();

  await box(page, 'from 20 Hz').focus();
  await page.keyboard.press('Space');
  await expectSoon(chart).toContainText('fewer than five modes a band in a room of 60 m³');
  await page.getByRole('button', { name: 'Textbook models …' }).focus();
  await page.keyboard.press('Enter');
  await expectSoon(box(page, 'Floating floor after Cremer')).toBeVisible();
  await tabTo(page, box(page, 'Floating floor after Cremer'));
  await page.keyboard.press('Space');
  await expectSoon(chart).toContainText('floating floor (Cremer): the floor below the mat less 30 lg(f/f0), f0 48 Hz');
  await settled(page);
  expect(await ratings.allTextContents()).toEqual(before);

  const asked = { overlays: ['floating-floor'], lowestBand_Hz: 20 };
  expect(curvesIn(await savedFile(page))).toMatchObject(asked);
  await storedNow(page);
  await page.reload();
  await expectSoon(title(page)).toHaveValue(floatingRoom().title);
  await expectSoon(chart).toContainText('floating floor (Cremer)');
  await expectSoon(chart).toContainText('fewer than five modes');
  await expectSoon(box(page, 'from 20 Hz')).toBeChecked();
  expect(curvesIn(await savedFile(page))).toMatchObject(asked);
  expect(problems).toEqual([]);
  await context.close();
});
