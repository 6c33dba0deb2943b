import type { Browser, Locator } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { card, freshPage, launch, settled } from './page.ts';

let browser: Browser;
let opened: Awaited<ReturnType<typeof freshPage>>;
beforeAll(async () => {
  browser = await launch();
  opened = await freshPage(browser, inject('baseURL'), {
    viewport: { width: 360, height: 740 },
    isMobile: true,
    hasTouch: true,
  });
  await opened.page.goto('/');
  await settled(opened.page);
});
afterAll(() => browser.close());

const scrollTo = (place: Locator, left: number) => place.evaluate((e, x) => e.scrollTo({ left: x }), left);
const leftOf = (place: Locator) => place.evaluate((e) => e.getBoundingClientRect().left);

test('the first view has the whole card of the scenario that is worked in, and a hint of those beside it', async () => {
  const { page } = opened;
  const { left, right } = await card(page, 'Slab on top').evaluate((e) => e.getBoundingClientRect());
  expect(left).toBeGreaterThanOrEqual(0);
  expect(right).toBeLessThanOrEqual(360);
  const strip = page.locator('scenario-rail ol');
  await expectSoon(strip).toHaveAttribute('data-more', 'left right');
  const mask = () => strip.evaluate((e) => getComputedStyle(e).maskImage);
  expect(await mask()).toContain('gradient');
  // Colours that were chosen to be seen do not fade.
  await page.emulateMedia({ forcedColors: 'active' });
  expect(await mask()).toBe('none');
  await page.emulateMedia({ forcedColors: 'none' });
});

test('on a narrow page every scenario is named at once, and the ratings say how many there are', async () => {
  const { page } = opened;
  const names = page.locator('scenario-rail .names');
  await expectSoon(names).toBeInViewport({ ratio: 1 });
  for (const name of ['Existing floor', 'Slab on top', 'Ceiling on resilient channel', 'Both'])
    await expectSoon(names).toContainText(name);
  const hint = page.getByText('4 scenarios, two at a time');
  await hint.scrollIntoViewIfNeeded();
  await expectSoon(hint).toBeVisible();
  await page.evaluate(() => window.scrollTo(0, 0));
});

test('on a narrow page a tap on a name works in that scenario and brings its card into sight', async () => {
  const { page } = opened;
  const names = page.locator('scenario-rail .names');
  for (const name of ['Both', 'Slab on top']) {
    await names.getByText(name, { exact: true }).click();
    await expectSoon(card(page, name).getByRole('radio')).toBeChecked();
    await expectSoon(card(page, name)).toBeInViewport({ ratio: 0.9 });
    expect((await names.getByText(name, { exact: true }).boundingBox())!.height).toBeGreaterThanOrEqual(24);
  }
  await settled(page);
});

test.each(['Mass and height', 'Ratings of the shown scenarios'])(
  'the table “%s” fades where it goes on, and the names of its rows stay in sight',
  async (name) => {
    const place = opened.page.getByRole('region', { name });
    await place.scrollIntoViewIfNeeded();
    await expectSoon(place).toHaveAttribute('data-more', 'right');
    const mask = () => place.evaluate((e) => getComputedStyle(e).maskImage);
    expect(await mask()).toContain('gradient');
    const rowName = place.getByRole('rowheader').last();
    const before = await leftOf(rowName);
    await scrollTo(place, 10_000);
    await expectSoon(place).toHaveAttribute('data-more', 'left');
    expect(await leftOf(rowName)).toBeCloseTo(before, 0);
    expect(await mask()).toBe('none');
    await scrollTo(place, 0);
  },
);

test('a table that fits gives no hint', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'), { viewport: { width: 1280, height: 900 } });
  await page.goto('/');
  await settled(page);
  const place = page.getByRole('region', { name: 'Mass and height' });
  await place.scrollIntoViewIfNeeded();
  await page.waitForTimeout(100);
  expect(await place.getAttribute('data-more')).toBeNull();
  await expectSoon(page.locator('scenario-rail .names')).toBeHidden();
  await context.close();
});

test('fields that are parameters have their name in one line, and no list of choices is cut off', async () => {
  const { page } = opened;
  await page.getByText('Layers and their fields').click();
  const label = page.locator('stack-field[linked] label').filter({ hasText: 'fill thickness' }).first();
  const { height, line } = await label.evaluate((e) => ({
    height: e.getBoundingClientRect().height,
    line: Number.parseFloat(getComputedStyle(e).lineHeight),
  }));
  expect(height).toBeLessThan(1.5 * line);
  await page.getByText("Materials of this notebook's own").click();
  await page.getByRole('button', { name: 'Add a sheet material' }).click();
  const select = page.getByLabel('how it is built in').last();
  await select.scrollIntoViewIfNeeded();
  const { room, text } = await select.evaluate((e) => {
    const probe = document.createElement('span');
    probe.textContent = (e as HTMLSelectElement).selectedOptions[0]!.textContent;
    probe.style.font = getComputedStyle(e).font;
    probe.style.position = 'absolute';
    document.body.append(probe);
    const { width } = probe.getBoundingClientRect();
    probe.remove();
    return { room: e.clientWidth, text: width };
  });
  // And the arrow beside it.
  expect(room).toBeGreaterThan(text + 30);
});
