import axe, { type AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { practiceRoom } from '../browser/practice-room.ts';
import { freshPage, launch, openFile, openNotebook, settled } from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** Tall enough for the whole page: what is off screen is not laid out, and nobody could judge its contrast. */
const TALL = 14_000;
const SCHEMES = ['light', 'dark'] as const;

/** What WCAG 2.2 AA and good practice object to, short enough to read in a failed test. What lies over others hides them. */
async function axeProblems(page: Page, { overlaid = false } = {}): Promise<string[]> {
  // Colours fade over when the scheme changes: they are judged where they end.
  await page.evaluate(() => {
    for (const animation of document.getAnimations()) animation.finish();
  });
  const { violations } = await page.evaluate(
    (options) => (window as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run(options),
    { resultTypes: ['violations'], rules: { 'target-size': { enabled: !overlaid } } },
  );
  return violations.flatMap((v) =>
    v.nodes.map((n) => `${v.id}: ${n.target.join(' ')} ${n.html.slice(0, 160)} — ${n.failureSummary ?? ''}`),
  );
}

const overflow = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** One cell of every kind, with everything in it that can be opened, open. */
async function openEverything(page: Page): Promise<void> {
  await page.getByText('Layers and their fields').click();
  await page.getByText('More about the support').click();
  for (const summary of await page.locator('stack-cell details.own > summary, field-part summary').all())
    await summary.click();
  await page.getByRole('button', { name: 'Add a sheet material' }).click();
  await page.getByRole('button', { name: 'Add a fibre' }).click();
  await page.getByRole('button', { name: 'Show as masses on springs' }).click();
  await page.getByRole('button', { name: 'Arrange parameters' }).click();
  await page.getByRole('button', { name: 'How ASTC came about' }).click();
  const closed = page.getByRole('button', { name: 'Show the numbers' });
  for (let left = await closed.count(); left > 0; left--) await closed.first().click();
  for (const overlay of await page.getByRole('group', { name: 'Lay over' }).getByRole('checkbox').all())
    await overlay.check();
  await page.getByRole('button', { name: 'More for Both', exact: true }).click();
  await page.getByRole('button', { name: 'Add a cell at the end' }).click();
  const typed = page.getByRole('textbox', { name: 'slab thickness, typed' });
  await typed.fill('abc');
  await typed.press('Enter');
  await page.getByRole('button', { name: 'Edit the text' }).click();
  await settled(page);
}

/** The narrow page is a phone: without a pointer that hovers every control is in sight. */
const DEVICES = [
  ['360 px', { viewport: { width: 360, height: TALL }, isMobile: true, hasTouch: true }],
  ['1600 px', { viewport: { width: 1600, height: TALL } }],
] as const;

describe.each(DEVICES)('at %s', (_, device) => {
  let opened: Awaited<ReturnType<typeof freshPage>>;
  beforeAll(async () => {
    opened = await freshPage(browser, inject('baseURL'), { ...device, reducedMotion: 'reduce' });
    await opened.page.goto('/');
    await expectSoon(opened.page.locator('paths-cell')).toBeVisible();
    await settled(opened.page);
    await opened.page.evaluate(axe.source);
  });
  afterAll(() => opened.context.close());

  test('axe finds nothing on the page of the example, in light and dark', async () => {
    for (const colorScheme of SCHEMES) {
      await opened.page.emulateMedia({ colorScheme });
      expect(await axeProblems(opened.page), colorScheme).toEqual([]);
    }
    expect(await overflow(opened.page)).toBeLessThanOrEqual(0);
  });

  test('axe finds nothing with every kind of cell being edited, in light and dark and forced colours', async () => {
    const { page, problems } = opened;
    await openNotebook(page, practiceRoom());
    await openEverything(page);
    for (const colorScheme of SCHEMES) {
      await page.emulateMedia({ colorScheme });
      expect(await axeProblems(page), colorScheme).toEqual([]);
    }
    await page.emulateMedia({ forcedColors: 'active' });
    expect(await axeProblems(page), 'forced colours').toEqual([]);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(problems).toEqual([]);
  });
});

test('axe finds nothing in the shelf, a menu and what the page tells', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await openNotebook(page, practiceRoom());
  await page.evaluate(axe.source);
  await openFile(page, '{"format":"slab-and-spring","version":1,"title":3}');
  await expectSoon(page.getByRole('alert').filter({ hasText: 'was not opened' })).toBeVisible();
  await page.getByText('Layers and their fields').click();
  await page.getByRole('button', { name: 'Add at deck' }).click();
  await expectSoon(page.getByRole('button', { name: 'Add a sheet on top' })).toBeVisible();
  expect(await axeProblems(page, { overlaid: true })).toEqual([]);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await expectSoon(page.getByRole('dialog', { name: 'Notebooks' })).toBeVisible();
  expect(await axeProblems(page, { overlaid: true })).toEqual([]);
  expect(problems).toEqual([]);
  await context.close();
});

/** 1280 px at 200 % are 640 px of the page with two dots each; 1280 px at 400 % are 320 (WCAG 2.2, 1.4.10). */
test.each([
  [200, 640],
  [400, 320],
])('at %d %% zoom of a window of 1280 px nothing scrolls sideways, with everything open', async (zoom, width) => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'), {
    viewport: { width, height: 900 },
    deviceScaleFactor: zoom / 100,
  });
  await page.goto('/');
  await settled(page);
  expect(await overflow(page)).toBeLessThanOrEqual(0);
  await openNotebook(page, practiceRoom());
  await openEverything(page);
  expect(await overflow(page)).toBeLessThanOrEqual(0);
  expect(problems).toEqual([]);
  await context.close();
});

/** A cell paints nothing outside of itself: 2 px of outline, 2 px away, must lie within. */
test.each([360, 1280])('at %d px no cell cuts off the outline of a button that has the focus', async (width) => {
  const { context, page } = await freshPage(browser, inject('baseURL'), { viewport: { width, height: 900 } });
  await page.goto('/');
  await openNotebook(page, practiceRoom());
  const { seen, cut } = await page.locator('cell-frame').evaluateAll((frames) => {
    const buttonsIn = (root: ParentNode): HTMLElement[] =>
      [...root.querySelectorAll<HTMLElement>('*')].flatMap((element) => {
        if (element.matches('.scroll')) return [];
        return [
          ...(element.matches('button') && element.checkVisibility() ? [element] : []),
          ...(element.shadowRoot ? buttonsIn(element.shadowRoot) : []),
        ];
      });
    const cut: string[] = [];
    let seen = 0;
    for (const frame of frames) {
      const body = frame.shadowRoot!.querySelector('.body')!;
      const { left, right } = body.getBoundingClientRect();
      for (const button of buttonsIn(body)) {
        const box = button.getBoundingClientRect();
        if (button.closest('.scroll')) continue;
        seen += 1;
        if (box.left - 4 < left || box.right + 4 > right) cut.push(button.textContent!.trim());
      }
    }
    return { seen, cut };
  });
  expect(seen).toBeGreaterThan(15);
  expect(cut).toEqual([]);
  await context.close();
});

test('in forced colours the chosen scenario and the focus stay visible', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'), { forcedColors: 'active' });
  await page.goto('/');
  await settled(page);
  const fork = page.getByRole('button', { name: /^Fork/ }).first();
  await fork.focus();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  await expectSoon(fork).toBeFocused();
  const outline = await fork.evaluate((b) => getComputedStyle(b).outlineColor);
  const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(outline).not.toBe(paper);
  const bar = (active: boolean) =>
    page
      .locator(`scenario-rail li${active ? '.active' : ':not(.active)'}`)
      .first()
      .evaluate((card) => getComputedStyle(card, '::before').content);
  expect(await bar(true)).not.toBe(await bar(false));
  await context.close();
});
