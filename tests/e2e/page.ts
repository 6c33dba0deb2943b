import { readFile } from 'node:fs/promises';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Locator,
  type Page,
} from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { expect } from 'vitest';
import { browserArgs, findBrowser } from '#src/commands/find-browser.mjs';
import type { Notebook } from '#src/notebook/types.ts';

export async function launch(): Promise<Browser> {
  const executablePath = findBrowser();
  return await chromium.launch({ ...(executablePath ? { executablePath } : {}), args: browserArgs() });
}

/** A fresh profile with one page; `problems` collects what the console and uncaught errors say. */
export async function freshPage(
  browser: Browser,
  baseURL: string,
  options: BrowserContextOptions = {},
): Promise<{ context: BrowserContext; page: Page; problems: string[] }> {
  const context = await browser.newContext({ baseURL, viewport: { width: 1280, height: 900 }, ...options });
  // Before the test itself times out, so that what was waited for is named.
  context.setDefaultTimeout(8000);
  const page = await context.newPage();
  return { context, page, problems: problemsOf(page) };
}

/** What the console and uncaught errors of a page say from now on. */
export function problemsOf(page: Page): string[] {
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(String(error)));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) problems.push(message.text());
  });
  return problems;
}

/** Nothing is computed or loaded any more, and no cell waits for those above it to be laid out. */
export async function settled(page: Page): Promise<void> {
  await expectSoon(page.locator('cell-frame[pending]')).toHaveCount(0);
  await expectSoon(page.locator('[aria-busy="true"]')).toHaveCount(0);
}

export const title = (page: Page): Locator => page.getByRole('textbox', { name: 'Title of the notebook' });

/** A cell by its title, with its frame. */
export const cell = (page: Page, name: string | RegExp): Locator =>
  page.locator('cell-frame').filter({ has: page.getByRole('region', { name, exact: typeof name === 'string' }) });

/** The card of a scenario. */
export const card = (page: Page, name: string): Locator =>
  page
    .getByRole('radiogroup', { name: 'Scenario to work in' })
    .getByRole('listitem')
    .filter({ has: page.getByRole('radio', { name, exact: true }) });

/** Chooses a file of this content with “Open a file”. */
export async function openFile(page: Page, content: string, name = 'lesson.slabspring.json'): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a file' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
}

/** Opens a notebook from a file and waits until it stands there, computed. */
export async function openNotebook(page: Page, notebook: Notebook): Promise<void> {
  await openFile(page, JSON.stringify(notebook));
  await expectSoon(title(page)).toHaveValue(notebook.title);
  await settled(page);
}

/** The notebook that the page shows, as text. Saving a file often would not do: browsers allow ten in a burst. */
export const shownNotebook = (page: Page): Promise<string> =>
  page
    .locator('cell-column')
    .evaluate((column: HTMLElement & { notebook: unknown }) => JSON.stringify(column.notebook));

/** What “Save a file” hands out. */
export async function savedFile(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/-\d{4}-\d\d-\d\d\.slabspring\.json$/);
  return await readFile(await download.path(), 'utf8');
}

/** Saving is deferred a little after a change; opening the shelf does it at once. */
export async function storedNow(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await expectSoon(page.getByRole('dialog', { name: 'Notebooks' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expectSoon(page.getByRole('dialog', { name: 'Notebooks' })).toBeHidden();
}

/** A new, empty notebook from the shelf. */
export async function newNotebook(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await page.getByRole('button', { name: 'New notebook' }).click();
  await expectSoon(title(page)).toHaveValue('New notebook');
  await settled(page);
}

/**
 * Moves the mouse onto an element, at this share of its width, and gives its box. Waits until the page has come to rest there
 * and the element itself would be hit: just after scrolling, something else still may.
 */
export async function grasped(
  element: Locator,
  share: number,
): Promise<NonNullable<Awaited<ReturnType<Locator['boundingBox']>>>> {
  const { width, height } = (await element.boundingBox())!;
  await element.hover({ position: { x: width * share, y: height / 2 } });
  return (await element.boundingBox())!;
}

/** Goes on with Tab until the target has the focus, and sees to it that people can see that. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  const isFocused = () => target.evaluate((e) => e.matches(':focus'));
  for (let i = 0; !(await isFocused()); i++) {
    if (i > 250) throw new Error(`Tab never came to ${target}`);
    await page.keyboard.press('Tab');
  }
  await expect
    .poll(() => target.evaluate(showsFocus), { message: `visible focus of ${target}`, timeout: 5000 })
    .toBe(true);
}

/** An outline around the element or its label, neither of them faded out or off the screen. */
function showsFocus(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  const outlined = [element, element.closest('label')].some((e) => {
    const style = e && getComputedStyle(e);
    return style && style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 1;
  });
  return outlined && element.checkVisibility({ opacityProperty: true }) && bottom > 0 && top < innerHeight;
}
