import type { Browser } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { FIRST_LOAD_BUDGET_bytes, firstLoad, totalSize_bytes } from '#src/commands/first-load.ts';
import { freshPage, launch } from './page.ts';

const scripts = firstLoad(inject('builtFolder'));
let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

describe('what a browser loads before the first curve', () => {
  test('stays within the budget', () => {
    expect(totalSize_bytes(scripts)).toBeLessThanOrEqual(FIRST_LOAD_BUDGET_bytes);
  });

  test('is enough: the curves of the demo stand there though no other script can be had', async () => {
    const { context, page } = await freshPage(browser, inject('baseURL'));
    const refused: string[] = [];
    await page.route('**/*.js', (route) => {
      const { pathname } = new URL(route.request().url());
      if (scripts.some(({ path }) => pathname === `/${path}`)) return route.continue();
      refused.push(pathname);
      return route.abort();
    });
    await page.goto('/');
    const curves = page.locator('curves-cell').first();
    await curves.scrollIntoViewIfNeeded();
    await expectSoon(curves.locator('figure svg[role="img"] path[marker-mid]')).toHaveCount(4);
    expect(refused).not.toEqual([]);
    await context.close();
  });

  test.each(['apply-edit', 'new-notebook', 'page-notices', 'results-announcer'])(
    'leaves %s for a moment later, and then loads it',
    async (script) => {
      const { context, page, problems } = await freshPage(browser, inject('baseURL'));
      const response = page.waitForResponse((r) => new URL(r.url()).pathname.startsWith(`/assets/${script}-`));
      await page.goto('/');
      expect((await response).ok()).toBe(true);
      expect(scripts.some(({ path }) => path.includes(script))).toBe(false);
      expect(problems).toEqual([]);
      await context.close();
    },
  );

  test('counts no script twice and none that is not asked for', async () => {
    const { context, page } = await freshPage(browser, inject('baseURL'));
    const asked = new Set<string>();
    // Of workers too: the page hears of their requests like of its own.
    page.on('request', (request) => asked.add(new URL(request.url()).pathname));
    await page.goto('/');
    const curves = page.locator('curves-cell').first();
    await curves.scrollIntoViewIfNeeded();
    await expectSoon(curves.locator('figure svg[role="img"] path[marker-mid]')).toHaveCount(4);
    expect(scripts.map(({ path }) => path).filter((path) => !asked.has(`/${path}`))).toEqual([]);
    expect(new Set(scripts.map(({ path }) => path)).size).toBe(scripts.length);
    await context.close();
  });
});
