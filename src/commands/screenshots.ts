/**
 * Takes pictures of the built app: npm run screenshots [-- --readme]
 *
 * Three widths, light and dark, and the printed page go to screenshots/ (not committed). With --readme, the one picture
 * that the README shows is renewed too.
 */
import { mkdir } from 'node:fs/promises';
import type { Browser, Page } from 'playwright';
import { serveBuiltApp } from './built-app.ts';
import { openBrowser } from './open-browser.ts';

const FOLDER = 'screenshots';
const README_PICTURE = 'demo-notebooks/workbench.png';
const WIDTHS = [360, 800, 1600];
const SCHEMES = ['light', 'dark'] as const;

async function computedPage(browser: Browser, url: string, width: number, colorScheme: 'light' | 'dark') {
  const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' });
  const page = await context.newPage();
  await page.goto(url);
  await untilComputed(page);
  return page;
}

/** Every cell is there and none is still busy. Cells load when they are needed, so the page is scrolled through first. */
async function untilComputed(page: Page) {
  await page.locator('curves-cell svg').first().waitFor();
  await page.evaluate(async () => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await new Promise((done) => setTimeout(done, 80));
    }
    scrollTo(0, 0);
  });
  await page.waitForFunction(() => !document.querySelector('[aria-busy="true"]'));
  await page.waitForTimeout(300);
}

const { server, url } = await serveBuiltApp();
const browser = await openBrowser();
try {
  await mkdir(FOLDER, { recursive: true });
  for (const width of WIDTHS)
    for (const scheme of SCHEMES) {
      const page = await computedPage(browser, url, width, scheme);
      await page.screenshot({ path: `${FOLDER}/${width}-${scheme}.png`, fullPage: true });
      console.log(`${FOLDER}/${width}-${scheme}.png`);
      await page.context().close();
    }
  const page = await computedPage(browser, url, 1100, 'light');
  await page.pdf({ path: `${FOLDER}/print.pdf`, format: 'A4', printBackground: true });
  console.log(`${FOLDER}/print.pdf`);
  if (process.argv.includes('--readme')) {
    const wide = await computedPage(browser, url, 1440, 'light');
    await wide.setViewportSize({ width: 1440, height: 1770 });
    await wide
      .locator('parameters-cell')
      .first()
      .evaluate((cell) => {
        scrollTo(0, cell.getBoundingClientRect().top + scrollY - 90);
      });
    await wide.waitForTimeout(600);
    await wide.screenshot({ path: README_PICTURE });
    console.log(README_PICTURE);
  }
} finally {
  await browser.close();
  await server.close();
}
