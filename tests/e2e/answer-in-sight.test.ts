import type { Browser, Locator, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { freshPage, grasped, launch, settled } from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const answer = (page: Page): Locator => page.locator('floor-answer');
const slider = (page: Page): Locator => page.getByRole('slider', { name: 'slab thickness' });

/** The demo, with its first slider in the upper part of the window. */
async function atTheSlider(page: Page): Promise<void> {
  await page.goto('/');
  await expectSoon(answer(page)).toBeAttached();
  await settled(page);
  await slider(page).evaluate((element) => scrollBy(0, element.getBoundingClientRect().top - 150));
}

/** Pulls the slider to the right, step by step, and keeps holding it. */
async function pull(page: Page, step: (i: number) => Promise<void>): Promise<void> {
  const box = await grasped(slider(page), 0.05);
  const y = box.y + box.height / 2;
  await page.mouse.down();
  for (let i = 0; i < 8; i++) {
    await page.mouse.move(box.x + box.width * (0.05 + 0.12 * i), y);
    await step(i);
  }
}

describe.each([
  ['360 px', { width: 360, height: 640 }],
  ['800 px', { width: 800, height: 700 }],
  ['1600 px', { width: 1600, height: 700 }],
])('at %s', (_, viewport) => {
  test('ratings and curves are in sight while the slab is dragged, and stay where they are', async () => {
    const { context, page, problems } = await freshPage(browser, inject('baseURL'), { viewport });
    await atTheSlider(page);
    const place = () =>
      answer(page).evaluate((element) =>
        [...element.shadowRoot!.querySelectorAll('.answer > *, li')].map((part) => {
          const { right, top } = part.getBoundingClientRect();
          return [right, top];
        }),
      );
    const stc = answer(page)
      .getByRole('list', { name: /STC in the shown scenarios/ })
      .getByRole('listitem');
    const curve = () => answer(page).locator('svg.curves path').nth(1).getAttribute('d');
    const [stcBefore, curveBefore] = [await stc.nth(1).textContent(), await curve()];
    const seen: unknown[] = [];
    await pull(page, async () => {
      await settled(page);
      const { top, bottom } = await answer(page).evaluate((element) => element.getBoundingClientRect());
      expect(top).toBeGreaterThan(150);
      expect(bottom).toBeLessThanOrEqual(viewport.height);
      seen.push(await place());
    });
    expect(await stc.nth(1).textContent()).not.toBe(stcBefore);
    expect(await curve()).not.toBe(curveBefore);
    for (const places of seen) expect(places).toEqual(seen[0]);
    await page.mouse.up();
    expect(problems).toEqual([]);
    await context.close();
  });
});

test('the small numbers change in the same frame as the cell of ratings and the curves', async () => {
  // Tall enough for all of them: what is out of sight waits.
  const { context, page } = await freshPage(browser, inject('baseURL'), { viewport: { width: 1280, height: 6000 } });
  await page.goto('/');
  await settled(page);
  await page.evaluate(() => {
    const frames: unknown[] = [];
    Object.assign(window, { frames });
    const inside = (selector: string) => {
      const found: Element[] = [];
      const visit = (root: ParentNode) => {
        for (const element of root.querySelectorAll('*')) {
          if (element.matches(selector)) found.push(element);
          if (element.shadowRoot) visit(element.shadowRoot);
        }
      };
      visit(document);
      return found;
    };
    const small = inside('floor-answer')[0]!.shadowRoot!;
    const ratings = inside('ratings-cell')[0]!.shadowRoot!;
    const chart = inside('band-chart')[0]!.shadowRoot!;
    const look = () => {
      frames.push({
        small: [...small.querySelectorAll('li')].slice(0, 4).map((e) => /\d+\s*$/.exec(e.textContent!)![0].trim()),
        ratings: [...ratings.querySelectorAll('tbody tr:nth-child(2)')]
          .slice(0, 1)
          .flatMap((row) => [...row.querySelectorAll('.value')].map((e) => e.textContent!.trim())),
        picture: small.querySelectorAll('svg.curves path')[1]!.getAttribute('d'),
        chart: chart.querySelectorAll('figure svg[role="img"] path[marker-mid]')[1]!.getAttribute('d'),
      });
      // After whatever else this frame does.
      requestAnimationFrame(() => setTimeout(look));
    };
    look();
  });
  await pull(page, () => page.waitForTimeout(60));
  await page.mouse.up();
  await settled(page);
  type Frame = { small: string[]; ratings: string[]; picture: string; chart: string };
  const frames = await page.evaluate(() => (window as unknown as { frames: Frame[] }).frames);
  for (const { small, ratings } of frames) expect(small).toEqual(ratings);
  const pictures = new Map(frames.map(({ picture, chart }) => [picture, chart]));
  expect(pictures.size).toBeGreaterThan(4);
  // One small picture per large one, and the other way round.
  expect(new Set(frames.map(({ picture, chart }) => `${picture}|${chart}`)).size).toBe(pictures.size);
  await context.close();
});

test('no step of a drag is read out, only where it ends', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'));
  await atTheSlider(page);
  /** What stands wherever a change would be read out. */
  const spoken = () =>
    page.evaluate(() => {
      const texts: string[] = [];
      const collect = (root: ParentNode) => {
        for (const element of root.querySelectorAll('*')) {
          const text = element.textContent!.trim();
          if (element.matches('[aria-live], [role="status"], [role="alert"], output') && text) texts.push(text);
          if (element.shadowRoot) collect(element.shadowRoot);
        }
      };
      collect(document);
      return texts;
    });
  const stc = answer(page)
    .getByRole('list', { name: /STC in the shown scenarios/ })
    .getByRole('listitem')
    .nth(1);
  const [before, stcBefore] = [await spoken(), await stc.textContent()];
  await pull(page, async () => {
    await page.waitForTimeout(200);
    expect(await spoken()).toEqual(before);
  });
  expect(await stc.textContent()).not.toBe(stcBefore);
  await page.mouse.up();
  await expect.poll(spoken, { timeout: 5000 }).not.toEqual(before);
  expect((await spoken()).join()).toMatch(/STC \d+, IIC \d+/);
  await context.close();
});
