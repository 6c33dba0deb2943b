import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Browser, Locator, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { freshPage, grasped, launch, openFile, savedFile, settled, storedNow, title } from './page.ts';

const DEMO = 'demo-notebooks/practice-room-above-library.slabspring.json';
const root = fileURLToPath(new URL('../..', import.meta.url));

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const region = (page: Page, name: string) => page.getByRole('region', { name, exact: false }).first();

/** The numbers under the curves as the page shows them: a row per band, a column per scenario. */
async function curveNumbers(page: Page): Promise<string[][]> {
  const cell = page.locator('curves-cell').first();
  await cell.scrollIntoViewIfNeeded();
  const show = cell.getByRole('button', { name: 'Show the numbers' });
  if (await show.isVisible()) await show.click();
  const rows = cell.locator('table.bands').getByRole('row');
  await expectSoon(rows).toHaveCount(22);
  return await rows.evaluateAll((list) =>
    list.map((row) => [...row.querySelectorAll('th,td')].map((c) => (c.textContent ?? '').trim())),
  );
}

/** What is out of sight is not drawn: the curves are scrolled to first. */
async function curveInWords(page: Page): Promise<string | null> {
  const cell = page.locator('curves-cell').first();
  await cell.scrollIntoViewIfNeeded();
  return await cell.getByRole('img').getAttribute('aria-label');
}

const ratingRow = (page: Page, name: RegExp): Locator =>
  page.locator('ratings-cell').first().getByRole('row', { name });

test('a learner drags, forks, hangs the ceiling on clips, compares, saves, and opens the file elsewhere unchanged', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');

  // The demo stands there, computed.
  await expectSoon(title(page)).toHaveValue('A practice room above a library');
  await expectSoon(ratingRow(page, /STC/)).toContainText(/\d\d/);
  await settled(page);
  // Its walls are counted, and nothing on the page says otherwise.
  await expectSoon(page.getByRole('complementary', { name: 'What the numbers are' })).toContainText('ordinary walls');
  await expectSoon(page.getByText('laboratory-like')).toHaveCount(0);

  // Dragging the slab's thickness moves curve, rating, drawing and sentence.
  await page.getByRole('radio', { name: 'Slab on top' }).first().check();
  const liveSentence = page.getByRole('listitem').filter({ hasText: 'working on now reaches' });
  const before = {
    rating: await ratingRow(page, /STC/).textContent(),
    sentence: await liveSentence.textContent(),
    curve: await curveInWords(page),
  };
  const slider = page.getByRole('slider', { name: 'slab thickness' });
  await slider.scrollIntoViewIfNeeded();
  const box = await grasped(slider, 0.38);
  await page.mouse.down();
  for (let i = 1; i <= 10; i++) await page.mouse.move(box.x + box.width * (0.38 + 0.05 * i), box.y + box.height / 2);
  await page.mouse.up();
  // What stands beside the slider follows together with the results, a moment later.
  const thickness = `${await slider.inputValue()} mm`;
  expect(Number.parseFloat(thickness)).toBeGreaterThan(60);
  await expectSoon(page.getByRole('textbox', { name: 'slab thickness, typed' })).toHaveValue(thickness);
  await settled(page);
  await expectSoon(ratingRow(page, /STC/)).not.toHaveText(before.rating!);
  await expectSoon(liveSentence).not.toHaveText(before.sentence!);
  await expect.poll(() => curveInWords(page)).not.toBe(before.curve);
  await expectSoon(
    page.getByRole('img', { name: new RegExp(`Section of Slab on top: ${thickness.replace('.', '\\.')}`) }),
  ).toBeVisible();

  // A fork with the ceiling on clips stands beside it.
  await page.getByRole('button', { name: 'Fork Both' }).click();
  const fork = page.getByRole('radiogroup', { name: 'Scenario to work in' }).getByRole('listitem').last();
  await expectSoon(fork.getByRole('radio')).toBeChecked();
  const working = page.locator('parameters-cell').getByText('Working in');
  await working.scrollIntoViewIfNeeded();
  await expectSoon(working).toContainText('Both 2');
  await page.getByRole('radio', { name: 'isolation clips' }).check();
  await expectSoon(fork).toContainText('resilient channel → isolation clips');
  await settled(page);
  const header = page.locator('ratings-cell').first().getByRole('columnheader');
  await expectSoon(header).toHaveCount(6); // a corner and five scenarios
  const difference = page.locator('curves-cell').nth(1);
  await expectSoon(difference.getByRole('row', { name: /dB/ })).toHaveCount(4);

  // The file carries everything to a fresh profile.
  const numbers = await curveNumbers(page);
  const ratings = await ratingRow(page, /STC/).textContent();
  const file = await savedFile(page);
  const elsewhere = await freshPage(browser, inject('baseURL'));
  await elsewhere.page.goto('/');
  await expectSoon(elsewhere.page.locator('ratings-cell').first()).toBeAttached();
  await openFile(elsewhere.page, file);
  await expectSoon(
    elsewhere.page.getByRole('radiogroup', { name: 'Scenario to work in' }).getByRole('listitem'),
  ).toHaveCount(5);
  await settled(elsewhere.page);
  await expectSoon(ratingRow(elsewhere.page, /STC/)).toHaveText(ratings!);
  expect(await curveNumbers(elsewhere.page)).toEqual(numbers);
  await expectSoon(elsewhere.page.getByRole('status').filter({ hasText: 'copy' })).toHaveCount(0);

  expect(problems).toEqual([]);
  expect(elsewhere.problems).toEqual([]);
  await context.close();
  await elsewhere.context.close();
});

test('the batch command computes the same numbers as the page', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await settled(page);
  const [header, ...rows] = await curveNumbers(page);
  const output = execFileSync(process.execPath, ['src/commands/run.mjs', 'predict', DEMO, '--json'], {
    cwd: root,
    encoding: 'utf8',
  });
  const { scenarios } = JSON.parse(output) as {
    scenarios: { name: string; stacks: { bands_Hz: number[]; R_dB: number[] }[] }[];
  };
  expect(scenarios.length).toBe(4);
  for (const { name, stacks } of scenarios) {
    const column = header!.findIndex((h) => h.startsWith(name));
    expect(column, name).toBeGreaterThan(0);
    expect(rows.map((r) => Number.parseFloat(r[column]!))).toEqual(
      stacks[0]!.R_dB.map((R) => Number.parseFloat(R.toFixed(1))),
    );
  }
  expect(problems).toEqual([]);
  await context.close();
});

test('what was changed is there after a reload, and undo reaches back across it', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await settled(page);
  await page.getByRole('radio', { name: 'Slab on top' }).first().check();
  const typed = page.getByRole('textbox', { name: 'slab thickness, typed' });
  await typed.fill('2 1/2 in');
  await typed.press('Enter');
  await expectSoon(typed).toHaveValue('63.5 mm');
  await expectSoon(region(page, 'What you may change')).toContainText('63.5 mm');
  await expectSoon(page.getByText(/Kept in this browser/)).toBeVisible();
  await storedNow(page);
  await page.reload();
  await expectSoon(typed).toHaveValue('63.5 mm');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expectSoon(typed).toHaveValue('38 mm');
  expect(problems).toEqual([]);
  await context.close();
});
