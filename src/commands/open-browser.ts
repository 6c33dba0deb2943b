import { type Browser, chromium } from 'playwright';
import { browserArgs, findBrowser } from './find-browser.mjs';

/** The browser of the tests, headless; `extra` are further launch flags. */
export async function openBrowser(extra: readonly string[] = []): Promise<Browser> {
  const executablePath = findBrowser();
  return await chromium.launch({ ...(executablePath ? { executablePath } : {}), args: [...browserArgs(), ...extra] });
}
