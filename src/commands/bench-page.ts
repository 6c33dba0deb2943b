/**
 * How long it takes in the built app from moving a slider to the painted curve: npm run bench:page
 *
 * Four scenarios of two leaves are shown and all of them depend on the slider. A step counts from the input event to the
 * end of the drawing callback of the first chart that shows the new curves. Prints median, 95th percentile and the
 * longest tasks of the page; nothing is judged here.
 */
import os from 'node:os';
import type { Page } from 'playwright';
import { serveBuiltApp } from './built-app.ts';
import { openBrowser } from './open-browser.ts';

const WARM_UP = 20;
const STEPS = 120;

interface Measured {
  readonly step_ms: number[];
  readonly longTasks_ms: number[];
}

/** Runs in the page. Everything it needs is inside. */
async function drag(steps: number): Promise<Measured> {
  const all = (selector: string, root: Document | ShadowRoot = document): HTMLElement[] => [
    ...root.querySelectorAll<HTMLElement>(selector),
    ...[...root.querySelectorAll('*')].flatMap((e) => (e.shadowRoot ? all(selector, e.shadowRoot) : [])),
  ];
  const chart = all('band-chart')[0]!;
  const slider = all('input[type="range"]').find((e) => e.getAttribute('aria-label') === 'first ceiling board') as
    | HTMLInputElement
    | undefined;
  if (!slider) throw new Error('the page must have a slider "first ceiling board", found none');
  const longTasks_ms: number[] = [];
  const observer = new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) longTasks_ms.push(entry.duration);
  });
  observer.observe({ type: 'longtask' });
  const curves = () =>
    [...chart.shadowRoot!.querySelectorAll('.picture > svg:not(.live) path')].map((p) => p.getAttribute('d')).join();
  const step_ms: number[] = [];
  const low = Number(slider.min) + 0.25 * (Number(slider.max) - Number(slider.min));
  const span = 0.5 * (Number(slider.max) - Number(slider.min));
  for (let i = 0; i < steps; i++) {
    const before = curves();
    const drawn = new Promise<number>((done, fail) => {
      const timer = setTimeout(() => fail(new Error(`no new curve within 5 s of step ${i}`)), 5000);
      const watch = new MutationObserver(() => {
        // Runs right after the drawing callback, in the same task.
        const now = performance.now();
        if (chart.shadowRoot!.querySelector('[aria-busy="true"]') || curves() === before) return;
        watch.disconnect();
        clearTimeout(timer);
        done(now);
      });
      watch.observe(chart.shadowRoot!, { subtree: true, childList: true, attributes: true });
    });
    // Not in step with the frames: events of a hand come at any time.
    await new Promise((r) => setTimeout(r, 40 + ((i * 7) % 17)));
    slider.value = String(low + span * ((i * 0.37) % 1));
    const began = performance.now();
    slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    step_ms.push((await drawn) - began);
  }
  observer.disconnect();
  return { step_ms, longTasks_ms };
}

async function measure(page: Page, url: string): Promise<Measured> {
  await page.goto(url);
  await page.getByRole('radio', { name: 'Existing floor' }).first().check();
  await page.locator('curves-cell').first().scrollIntoViewIfNeeded();
  await page.locator('band-chart').first().waitFor();
  await page.waitForTimeout(1500);
  await page.evaluate(drag, WARM_UP);
  return await page.evaluate(drag, STEPS);
}

function quantile(sorted: readonly number[], q: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))]!;
}

const { server, url } = await serveBuiltApp();
const browser = await openBrowser();
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const { step_ms, longTasks_ms } = await measure(page, url);
  const sorted = [...step_ms].sort((a, b) => a - b);
  const [median, p95] = [0.5, 0.95].map((q) => quantile(sorted, q).toFixed(1));
  console.log(`${os.cpus()[0]?.model}, ${os.cpus().length} cores; ${browser.version()}; ${new Date().toISOString()}`);
  console.log(`slider to painted curve, 4 scenarios of two leaves, ${STEPS} steps:`);
  console.log(`  median ${median} ms, 95th percentile ${p95} ms, longest ${sorted.at(-1)!.toFixed(1)} ms`);
  console.log(`  tasks over 50 ms: ${longTasks_ms.length}${longTasks_ms.map((t) => ` ${t.toFixed(0)}`).join()}`);
} finally {
  await browser.close();
  await server.close();
}
