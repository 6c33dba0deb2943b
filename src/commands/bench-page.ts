/**
 * How long it takes in the built app from moving a slider to the painted curve: npm run bench:page
 *
 * Four scenarios of two leaves are shown and all of them depend on the slider, whose every position is new: nothing
 * comes from the cache. A step counts from the input event to the end of the drawing callback of the first chart once
 * it shows all four new curves; beside it stands when the frame with all that was painted.
 * Prints medians, 95th percentiles and the long tasks of the page; nothing is judged here.
 */
import os from 'node:os';
import type { Page } from 'playwright';
import { serveBuiltApp } from './built-app.ts';
import { openBrowser } from './open-browser.ts';

const SLIDER = 'second ceiling board';
const WARM_UP = 20;
const STEPS = 120;

interface Measured {
  /** Until the chart was drawn. */
  readonly drawn_ms: number[];
  /** Until the frame with it was painted. */
  readonly painted_ms: number[];
  readonly longTasks_ms: number[];
}

interface Drag {
  readonly slider: string;
  readonly from: number;
  readonly steps: number;
}

/** Runs in the page. Everything it needs is inside. Moves the slider by one position a step. */
async function drag({ slider: name, from, steps }: Drag): Promise<Measured> {
  const all = (selector: string, root: Document | ShadowRoot = document): HTMLElement[] => [
    ...root.querySelectorAll<HTMLElement>(selector),
    ...[...root.querySelectorAll('*')].flatMap((e) => (e.shadowRoot ? all(selector, e.shadowRoot) : [])),
  ];
  const chart = all('band-chart')[0]!;
  const sliders = all('input[type="range"]') as HTMLInputElement[];
  const slider = sliders.find((e) => e.getAttribute('aria-label') === name);
  if (!slider || Number(slider.max) < from + steps)
    throw new Error(`the page must have a slider "${name}" of ${from + steps} positions, got ${slider?.max ?? 'none'}`);
  const longTasks_ms: number[] = [];
  const observer = new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) longTasks_ms.push(entry.duration);
  });
  observer.observe({ type: 'longtask' });
  const curves = () =>
    [...chart.shadowRoot!.querySelectorAll('.picture > svg:not(.live) path')].map((p) => p.getAttribute('d')).join();
  /** Resolves in the first task after the next frame was painted. */
  const painted = () =>
    new Promise<void>((done) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => done();
      requestAnimationFrame(() => port2.postMessage(null));
    });
  const drawn_ms: number[] = [];
  const painted_ms: number[] = [];
  for (let i = 1; i <= steps; i++) {
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
    slider.value = String(from + i);
    const began = performance.now();
    slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    drawn_ms.push((await drawn) - began);
    await painted();
    painted_ms.push(performance.now() - began);
  }
  observer.disconnect();
  return { drawn_ms, painted_ms, longTasks_ms };
}

async function measure(page: Page, url: string): Promise<Measured> {
  await page.goto(url);
  await page.getByRole('radio', { name: 'Existing floor' }).first().check();
  await page.locator('curves-cell').first().scrollIntoViewIfNeeded();
  await page.locator('band-chart').first().waitFor();
  await page.waitForTimeout(1500);
  await page.evaluate(drag, { slider: SLIDER, from: 0, steps: WARM_UP });
  return await page.evaluate(drag, { slider: SLIDER, from: WARM_UP, steps: STEPS });
}

function summary(values_ms: readonly number[]): string {
  const sorted = values_ms.toSorted((a, b) => a - b);
  const at = (q: number) => sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))]!.toFixed(1);
  return `median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms, longest ${at(1)} ms`;
}

const { server, url } = await serveBuiltApp();
const browser = await openBrowser();
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const { drawn_ms, painted_ms, longTasks_ms } = await measure(page, url);
  const load = os.loadavg()[0]!.toFixed(2);
  console.log(
    `${os.cpus()[0]?.model}, ${os.cpus().length} cores, load ${load}; ${browser.version()}; ${new Date().toISOString()}`,
  );
  console.log(`slider to painted curve, 4 scenarios of two leaves, all computed anew, ${STEPS} steps:`);
  console.log(`  chart drawn: ${summary(drawn_ms)}`);
  console.log(`  frame painted: ${summary(painted_ms)}`);
  console.log(`  tasks over 50 ms: ${longTasks_ms.length}${longTasks_ms.map((t) => ` ${t.toFixed(0)}`).join()}`);
} finally {
  await browser.close();
  await server.close();
}
