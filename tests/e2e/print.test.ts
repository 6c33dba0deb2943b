import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Layer, Notebook } from '#src/notebook/types.ts';
import { freshPage, launch, openNotebook, settled, shownNotebook } from './page.ts';

let browser: Browser;
let opened: Awaited<ReturnType<typeof freshPage>>;
beforeAll(async () => {
  browser = await launch();
  // In the dark, and tall enough that every cell is there.
  opened = await freshPage(browser, inject('baseURL'), {
    viewport: { width: 1600, height: 9000 },
    colorScheme: 'dark',
  });
  await opened.page.goto('/');
  await expectSoon(opened.page.locator('paths-cell')).toBeVisible();
  await settled(opened.page);
  await opened.page.emulateMedia({ media: 'print' });
});
afterAll(() => browser.close());

test('nothing on paper has a ground of its own but paper', async () => {
  const grounds = await opened.page.evaluate(() => {
    const found = new Set<string>();
    const visit = (root: ParentNode) => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot) visit(element.shadowRoot);
        const { backgroundColor } = getComputedStyle(element);
        if (element.checkVisibility() && backgroundColor !== 'rgba(0, 0, 0, 0)')
          found.add(`${element.localName}: ${backgroundColor}`);
      }
    };
    visit(document);
    return [...found];
  });
  expect(grounds).not.toEqual([]);
  expect(grounds.filter((g) => !g.endsWith('rgb(255, 255, 255)'))).toEqual([]);
});

test('a page may end within a cell, but neither in a picture, the ratings or a list nor under a heading', async () => {
  const breaks = async (selector: string) => {
    const found = await opened.page
      .locator(selector)
      .evaluateAll((all) =>
        all.map((e) => ({ within: getComputedStyle(e).breakInside, after: getComputedStyle(e).breakAfter })),
      );
    expect(found.length).toBeGreaterThan(0);
    return found;
  };
  for (const { within } of await breaks('cell-frame')) expect(within).toBe('auto');
  for (const { after } of await breaks('cell-frame header')) expect(after).toBe('avoid');
  for (const { within } of await breaks('band-chart .picture, stack-cell figure')) expect(within).toBe('avoid');
  const lists = ['commentary-cell ul', 'commentary-cell ol', 'commentary-cell details', 'paths-cell ol'];
  for (const whole of ['table.ratings', 'table.frequencies', ...lists])
    for (const { within } of await breaks(whole)) expect(within).toBe('avoid');
  // The key of a chart leaves neither its head nor one row alone, a list not the words before it.
  const keyRows = ['.key thead tr', '.key tbody tr:first-child'];
  for (const ahead of ['ratings-cell .counted', ...keyRows, 'commentary-cell p:has(+ :is(ul, ol))'])
    for (const { after } of await breaks(ahead)) expect(after).toBe('avoid');
});

test('no head of a table stays in sight on paper: its ground would cover the hairlines', async () => {
  const heads = await opened.page.locator('th').evaluateAll((all) =>
    all.map((th) => {
      const { position, backgroundColor } = getComputedStyle(th);
      return `${position} on ${backgroundColor}`;
    }),
  );
  expect(heads.length).toBeGreaterThan(20);
  expect([...new Set(heads)]).toEqual(['static on rgba(0, 0, 0, 0)']);
});

test('paths on paper say whose they are and of which sound', async () => {
  const paths = opened.page.locator('paths-cell');
  await expectSoon(paths.getByRole('radio')).toHaveCount(0);
  await expectSoon(paths.getByText('Slab on top, airborne sound')).toBeVisible();
});

test('sections and curves are laid out for the width of a sheet, not shrunk to it: the scale bar stays true', async () => {
  const { page } = opened;
  // A script's print() waits for nothing, so that what is measured here is what comes on paper.
  const { right, drawings, bar_m, charts } = await laidOut(page, 'beforeprint');
  expect(drawings).toHaveLength(4);
  for (const { shrunk } of drawings) expect(shrunk).toBeCloseTo(1, 2);
  expect(bar_m).toBeCloseTo(0.2, 4);
  expect(right).toBeGreaterThan(500);
  expect(right).toBeLessThanOrEqual(680);
  expect(charts.length).toBeGreaterThan(0);
  for (const width of charts) expect(width).toBe('680');
  const after = await laidOut(page, 'afterprint');
  expect(after.right).toBeGreaterThan(right);
  expect(Number(after.charts[0])).toBeGreaterThan(680);
});

test('the page’s own button prints sections laid out for a sheet', async () => {
  const { page } = opened;
  await page.emulateMedia({ media: 'screen' });
  const section = page.locator('section-drawing svg[role="img"]').first();
  const before = Number(await section.getAttribute('width'));
  await section.evaluate((picture) => {
    addEventListener('beforeprint', () => Object.assign(window, { printed: picture.getAttribute('width') }));
  });
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  const printed = await page.waitForFunction(() => (window as { printed?: string }).printed);
  expect(Number(await printed.jsonValue())).toBeLessThan(before);
});

/**
 * Tells the page of printing and measures at once: how wide the first cell's drawings together are, how each is drawn, the
 * length of the bar at the scale of the first, m, and how wide the charts are.
 */
const laidOut = (page: Page, event: 'beforeprint' | 'afterprint') =>
  page.evaluate((type) => {
    dispatchEvent(new Event(type));
    const found: Element[] = [];
    const collect = (root: ParentNode) => {
      for (const element of root.querySelectorAll('*')) {
        found.push(element);
        if (element.shadowRoot) collect(element.shadowRoot);
      }
    };
    collect(document);
    const cell = found.find((e) => e.localName === 'stack-cell')!.shadowRoot!;
    const elements = [...cell.querySelectorAll('section-drawing')];
    const pictures = elements.map((e) => e.shadowRoot!.querySelector('svg')!);
    const wide = pictures.map((picture) => Number(picture.getAttribute('width')));
    const inARow = getComputedStyle(cell.querySelector('.drawings')!).gridTemplateColumns.split(' ').length;
    const bar = cell.querySelector<SVGPathElement>('.scale path')!;
    return {
      right: wide[0]! * inARow + 16 * (inARow - 1),
      drawings: pictures.map((picture, i) => ({ shrunk: picture.getBoundingClientRect().width / wide[i]! })),
      bar_m: bar.getBBox().width / elements[0]!.scale,
      charts: found
        .filter((e) => e.localName === 'band-chart')
        .map((e) => e.shadowRoot!.querySelector('.picture > svg[role="img"]')!.getAttribute('width')),
    };
  }, event);

test('paper tells when it was printed, what computed it, and every number of the floor; the screen does not', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await settled(page);
  await page.emulateMedia({ media: 'print' });
  await page.waitForFunction(() => customElements.get('printed-record'));
  const record = page.locator('printed-record');
  await expectSoon(record.getByRole('table')).toHaveCount(0);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  const row = (name: string) => record.getByRole('row', { name });
  await expectSoon(row('length')).toContainText('6 m in each');
  await expectSoon(row('sheet 1: density').first()).toContainText('1760 kg/m³');
  await expectSoon(row('stiffness of one support')).toContainText('kN/m (usual)');
  await expectSoon(row('gypsum board').last()).toContainText('density 700 kg/m³');
  await expectSoon(record.getByText('58 dB at 500 Hz')).toBeVisible();
  const { version } = JSON.parse(await readFile('package.json', 'utf8')) as { version: string };
  const stamp = page.locator('printed-stamp');
  await expectSoon(stamp).toContainText(`Slab & Spring ${version}`);
  await expectSoon(stamp).toContainText(`${new Date().getFullYear()} at `);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expectSoon(record.getByRole('table')).toHaveCount(0);
  await expectSoon(stamp).toHaveText('');
  await context.close();
});

test('paper is not wasted: scenarios stand two abreast, differences beside their numbers, and pictures leave room', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await settled(page);
  const chart = page.locator('band-chart .picture > svg[role="img"]').first();
  const onScreen = Number(await chart.getAttribute('height'));
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  expect(Number(await chart.getAttribute('height'))).toBeLessThan(onScreen);
  const tops = await page
    .locator('scenario-rail ol > li')
    .evaluateAll((all) => all.map((li) => li.getBoundingClientRect().top));
  expect(tops[0]).toBe(tops[1]);
  expect(tops[2]).toBe(tops[3]);
  expect(tops[2]).toBeGreaterThan(tops[0]!);
  const number = page
    .locator('ratings-cell td.number')
    .filter({ has: page.locator('.difference') })
    .first();
  const [value, difference] = await number.evaluate((cell) =>
    ['.value', '.difference'].map((part) => cell.querySelector(part)!.getBoundingClientRect().bottom),
  );
  expect(Math.abs(value! - difference!)).toBeLessThan(8);
  await context.close();
});

test('why nobody checked a floor of this kind stands open on paper, where nothing can be unfolded', async () => {
  const { context, page } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await settled(page);
  const demo = JSON.parse(await shownNotebook(page)) as Notebook;
  const held = (layer: Layer): Layer => (layer.kind === 'cavity' ? { ...layer, support: 'separate-joists' } : layer);
  const stacks = demo.stacks.map((s) => ({ ...s, layers: s.layers.map(held) }));
  await openNotebook(page, { ...demo, title: 'A ceiling of its own', stacks });
  const note = page.locator('ratings-cell').getByRole('note', { name: 'Outside what was checked' });
  const why = note.getByText('for impact no such way is counted').and(page.locator(':visible'));
  await note.scrollIntoViewIfNeeded();
  await expectSoon(why).toHaveCount(0);
  await page.emulateMedia({ media: 'print' });
  await expectSoon(why).toHaveCount(1);
  await expectSoon(note.getByText('What these limits are')).toBeHidden();
  await context.close();
});
