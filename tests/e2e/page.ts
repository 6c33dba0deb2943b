import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright';
import { browserArgs, findBrowser } from '#src/commands/find-browser.mjs';

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
  const page = await context.newPage();
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(String(error)));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) problems.push(message.text());
  });
  return { context, page, problems };
}
