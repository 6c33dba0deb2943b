import { type Browser, type CDPSession, devices } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { freshPage, launch, settled } from './page.ts';

let browser: Browser;
let opened: Awaited<ReturnType<typeof freshPage>>;
let finger: CDPSession;
beforeAll(async () => {
  browser = await launch();
  const { isMobile, hasTouch } = devices['Pixel 5'];
  opened = await freshPage(browser, inject('baseURL'), { viewport: { width: 360, height: 740 }, isMobile, hasTouch });
  await opened.page.goto('/');
  await settled(opened.page);
  finger = await opened.context.newCDPSession(opened.page);
});
afterAll(() => browser.close());

/** A page that was pushed goes on for a while. */
async function atRest() {
  const { page } = opened;
  const scrolled = () => page.evaluate(() => scrollY);
  for (let last = Number.NaN, now = await scrolled(); now !== last; now = await scrolled()) {
    last = now;
    await page.waitForTimeout(150);
  }
  await settled(page);
}

/** Puts a finger on the slider at this share of its width, moves it by so much in steps, px, and lifts it. */
async function touch(share: number, { right = 0, down = 0 }) {
  const { page } = opened;
  const slider = page.getByRole('slider', { name: 'slab thickness' });
  await atRest();
  await slider.evaluate((element) => scrollBy(0, element.getBoundingClientRect().top - 350));
  await atRest();
  const state = async () => ({
    value: await slider.getAttribute('aria-valuetext'),
    thumb: await slider.inputValue(),
    scrolled: await page.evaluate(() => scrollY),
  });
  const before = await state();
  const box = (await slider.boundingBox())!;
  const [x, y] = [box.x + box.width * share, box.y + box.height / 2];
  await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  for (let i = 1; i <= 12 && (right || down); i++)
    await finger.send('Input.dispatchTouchEvent', {
      type: 'touchMove',
      touchPoints: [{ x: x + (right * i) / 12, y: y + (down * i) / 12 }],
    });
  await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await atRest();
  return { before, after: await state() };
}

test.each([-160, 160])('a finger that scrolls the page over a slider (%d px) changes nothing', async (down) => {
  const { before, after } = await touch(0.8, { down });
  expect(Math.abs(after.scrolled - before.scrolled)).toBeGreaterThan(80);
  expect({ ...after, scrolled: 0 }).toEqual({ ...before, scrolled: 0 });
  expect(await opened.page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
});

test('a finger moves a slider along, and sets it with a tap', async () => {
  const moved = await touch(0.4, { right: 60 });
  expect(Number.parseFloat(moved.after.value!)).toBeGreaterThan(55);
  expect(Math.abs(moved.after.scrolled - moved.before.scrolled)).toBeLessThan(5);
  const tapped = await touch(0.1, {});
  expect(Number.parseFloat(tapped.after.value!)).toBeLessThan(20);
  expect(opened.problems).toEqual([]);
});
