import type { Browser, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { freshPage, launch, settled } from './page.ts';

let browser: Browser;
let opened: Awaited<ReturnType<typeof freshPage>>;
beforeAll(async () => {
  browser = await launch();
  // In the dark, and tall enough that every cell is there.
  opened = await freshPage(browser, inject('baseURL'), {
    viewport: { width: 1600, height: 9000 },
    colorScheme: 'dark',
  });
  await opened.page.goto('/');
  await expectSoon(opened.page.locator('paths-cell')).toBeVisible();
  await settled(opened.page);
  await opened.page.emulateMedia({ media: 'print' });
});
afterAll(() => browser.close());

test('nothing on paper has a ground of its own but paper', async () => {
  const grounds = await opened.page.evaluate(() => {
    const found = new Set<string>();
    const visit = (root: ParentNode) => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot) visit(element.shadowRoot);
        const { backgroundColor } = getComputedStyle(element);
        if (element.checkVisibility() && backgroundColor !== 'rgba(0, 0, 0, 0)')
          found.add(`${element.localName}: ${backgroundColor}`);
      }
    };
    visit(document);
    return [...found];
  });
  expect(grounds).not.toEqual([]);
  expect(grounds.filter((g) => !g.endsWith('rgb(255, 255, 255)'))).toEqual([]);
});

test('a page may end within a cell, but neither in a picture nor under a heading', async () => {
  const breaks = (selector: string) =>
    opened.page
      .locator(selector)
      .evaluateAll((all) =>
        all.map((e) => ({ within: getComputedStyle(e).breakInside, after: getComputedStyle(e).breakAfter })),
      );
  for (const { within } of await breaks('cell-frame')) expect(within).toBe('auto');
  for (const { after } of await breaks('cell-frame header')) expect(after).toBe('avoid');
  for (const { within } of await breaks('band-chart .picture, stack-cell figure')) expect(within).toBe('avoid');
});

test('sections and curves are laid out for the width of a sheet, not shrunk to it: the scale bar stays true', async () => {
  const { page } = opened;
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await settled(page);
  const { right, drawings, bar_m } = await sections(page);
  expect(drawings).toHaveLength(4);
  for (const { shrunk } of drawings) expect(shrunk).toBeCloseTo(1, 2);
  expect(bar_m).toBeCloseTo(0.2, 4);
  expect(right).toBeGreaterThan(500);
  expect(right).toBeLessThanOrEqual(680);
  for (const width of await page.locator('band-chart .picture > svg[role="img"]').evaluateAll(widths))
    expect(width).toBe('680');
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await settled(page);
  expect((await sections(page)).right).toBeGreaterThan(right);
});

const widths = (all: Element[]) => all.map((e) => e.getAttribute('width'));

/** How wide the drawings together are, how each is drawn, and the length of the bar at the scale of the first, m. */
const sections = (page: Page) =>
  page
    .locator('stack-cell')
    .first()
    .evaluate((cell) => {
      const elements = [...cell.shadowRoot!.querySelectorAll('section-drawing')];
      const pictures = elements.map((e) => e.shadowRoot!.querySelector('svg')!);
      const wide = elements.map((_, i) => Number(pictures[i]!.getAttribute('width')));
      const inARow = getComputedStyle(cell.shadowRoot!.querySelector('.drawings')!).gridTemplateColumns.split(
        ' ',
      ).length;
      const bar = cell.shadowRoot!.querySelector<SVGPathElement>('.scale path')!;
      return {
        right: wide[0]! * inARow + 16 * (inARow - 1),
        drawings: elements.map(({ scale }, i) => ({
          scale,
          shrunk: pictures[i]!.getBoundingClientRect().width / wide[i]!,
        })),
        bar_m: bar.getBBox().width / elements[0]!.scale,
      };
    });
