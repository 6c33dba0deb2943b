import type { Browser, Locator } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { studyNumbers } from '#src/acoustics/number-study.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { practiceRoom } from '../browser/practice-room.ts';
import { freshPage, launch, openNotebook, tabTo } from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const SLAB = 'layers/0/sheets/0/thickness_m';

/** What the engine says of 10 % more slab, rounded as shown. */
function engineSays(notebook: Notebook): readonly number[] {
  const construction = resolveStack(notebook, 'both', 'floor');
  const { numbers } = studyNumbers(construction, studiedNumbers(construction));
  return numbers.find((n) => n.path === SLAB)!.dR_dB.map((slope) => Number((slope * Math.log(1.1)).toFixed(1)) + 0);
}

async function told(row: Locator): Promise<readonly number[]> {
  const texts = await row.locator('td').allTextContents();
  return texts.map((text) => Number(text.replace('\u2212', '-')));
}

test('what would change a floor is unfolded by keyboard, tells the numbers of the engine, and follows an edit', async () => {
  const room = practiceRoom({ active: 'both', shown: ['both'], reference: 'both' });
  const notebook = { ...room, cells: room.cells.filter((c) => ['parameters', 'paths'].includes(c.kind)) };
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto('/');
  await openNotebook(page, notebook);
  const cell = page.locator('paths-cell');
  await expectSoon(cell.getByText('What would change it')).toBeVisible();
  expect(asked.filter((path) => /study|what-would-change/.test(path))).toEqual([]);

  await tabTo(page, cell.locator('summary'));
  await page.keyboard.press('Enter');
  const row = cell.getByRole('row', { name: 'cellular concrete topping, thickness deck: 38 mm' });
  await expectSoon(row).toBeVisible();
  expect(await told(row)).toEqual(engineSays(notebook));
  await page.getByRole('slider', { name: 'slab thickness' }).focus();
  await page.keyboard.press('ArrowRight');
  const moved = cell.getByRole('row', { name: 'cellular concrete topping, thickness deck: 39 mm' });
  await expectSoon(moved).toBeVisible();
  expect(await told(moved)).toEqual(engineSays(setParameter(notebook, 'slab', 0.039, 'both')));
  expect(problems).toEqual([]);
  await context.close();
});
