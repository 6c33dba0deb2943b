import type { Browser, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { freshPage, launch, settled, title } from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

interface Shifts {
  shifted: number;
}

/** Adds up how far what is seen is pushed about, as browsers judge it (Layout Instability, layout shift scores). */
async function countShifts(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const here = window as unknown as Shifts;
    here.shifted = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { value: number })[]) here.shifted += entry.value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
}

const shifted = (page: Page) => page.evaluate(() => (window as unknown as Shifts).shifted);
const height = (page: Page) => page.evaluate(() => document.documentElement.scrollHeight);
const laidOut = (page: Page) => expectSoon(page.locator('cell-frame[pending]')).toHaveCount(0);

test.each([360, 1280])('at %d px nothing that is seen jumps while the demo opens', async (width) => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'), {
    viewport: { width, height: 800 },
  });
  await countShifts(page);
  await page.goto('/');
  await expectSoon(title(page)).toHaveValue('A practice room above a library');
  await laidOut(page);
  await settled(page);
  expect(await shifted(page)).toBeLessThan(0.1);
  expect(problems).toEqual([]);
  await context.close();
});

test('once the demo stands there, the page stays as high as it is while one scrolls through it', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await laidOut(page);
  await settled(page);
  // All but what is in sight is known by its height from now on.
  await expect.poll(() => page.locator('cell-frame[measured]').count()).toBeGreaterThan(9);
  const before = await height(page);
  for (const frame of await page.locator('cell-frame').all()) await frame.scrollIntoViewIfNeeded();
  await settled(page);
  expect(Math.abs((await height(page)) - before)).toBeLessThan(0.02 * before);
  await context.close();
});

test('where a cell cannot be loaded, those below it show all the same', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'));
  await page.route('**/commentary-cell-*.js', (route) => route.abort());
  await page.goto('/');
  await expectSoon(page.getByText('This cell could not be loaded').first()).toBeVisible();
  await expectSoon(page.getByRole('slider', { name: 'slab thickness' })).toBeVisible();
  await context.close();
});

test('where a cell is long in coming, those below it show after a while', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'));
  await page.route('**/commentary-cell-*.js', () => {});
  await page.goto('/');
  await expectSoon(page.getByRole('slider', { name: 'slab thickness' })).toBeVisible();
  await context.close();
});
