import type { Browser, Locator, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Notebook } from '#src/notebook/types.ts';
import { card, cell, freshPage, launch, newNotebook, settled, shownNotebook, title } from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** Cautions that must stand wherever added mass is shown. */
const CAUTIONS = ['structural engineer', 'Wet concrete weighs more', 'creep', 'asbestos', 'Local codes'];

const layer = (page: Page, name: string): Locator =>
  page
    .getByRole('list', { name: 'Layers from the upper room down' })
    .locator('li.layer')
    .filter({ has: page.getByRole('textbox', { name: `Name of ${name}`, exact: true }) });

const field = (where: Locator, name: string): Locator => where.getByLabel(name, { exact: true });

async function type(input: Locator, text: string, shown: string): Promise<void> {
  await input.fill(text);
  await input.press('Enter');
  await expectSoon(input).toHaveValue(shown);
}

/** Opens a menu and takes one of its entries: two clicks. */
async function choose(page: Page, menu: string, item: string): Promise<void> {
  await page.getByRole('button', { name: menu, exact: true }).click();
  await page.getByRole('group', { name: menu, exact: true }).getByRole('button', { name: item }).click();
}

const totalsOf = (page: Page, scenario: string): Locator =>
  page
    .getByRole('region', { name: 'Mass and height' })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: scenario, exact: true }) });

async function openLayers(page: Page): Promise<void> {
  await page.getByText('Layers and their fields').click();
  await expectSoon(page.getByRole('list', { name: 'Layers from the upper room down' })).toBeVisible();
}

/** What a reader could still press or type into, found through every shadow root. */
async function visibleControls(page: Page): Promise<string[]> {
  return await page.evaluate(() => {
    const all = (root: ParentNode): Element[] =>
      [...root.querySelectorAll('*')].flatMap((e) => [e, ...(e.shadowRoot ? all(e.shadowRoot) : [])]);
    return all(document)
      .filter((e) => e.matches('button, input, select, textarea, summary') && e.checkVisibility())
      .filter((e) => e.getBoundingClientRect().height > 0)
      .map((e) => `${e.localName} ${e.getAttribute('aria-label') ?? e.textContent?.trim()}`);
  });
}

test('a designer builds a floor from layers in inches and lb/ft³, adds mass in a fork, and prints it with its cautions', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await newNotebook(page);
  await page.getByRole('radio', { name: 'inch-pound' }).check();
  await title(page).fill('Club room, first draft');
  await title(page).press('Enter');
  await openLayers(page);

  // The slab of a new notebook becomes a deck of plywood, its thickness a plain value.
  await layer(page, 'slab').getByRole('textbox', { name: 'Name of slab' }).fill('deck');
  await layer(page, 'slab').getByRole('textbox', { name: 'Name of slab' }).press('Enter');
  const deck = layer(page, 'deck');
  await choose(page, 'deck thickness: parameter “slab thickness”', 'Fix it at its present value');
  await field(deck, 'material').selectOption({ label: 'plywood' });
  await type(field(deck, 'thickness'), '19 mm', '3/4 in');

  // Above it a floating slab on a mat, below it joists with a ceiling on clips.
  await choose(page, 'Add at deck', 'Add a floating slab on a mat above');
  const slab = layer(page, 'floating slab');
  await type(field(slab, 'thickness'), '38 mm', '1 1/2 in');
  await type(field(slab, 'thickness'), '1 1/2 in', '1 1/2 in');
  await type(field(slab, 'density'), '110 lb/ft3', '110 lb/ft³');
  await choose(page, 'Take a known mat for mat', 'rubber');
  await expectSoon(layer(page, 'mat').locator('.product')).toContainText(/rubber/i);
  await choose(page, 'Add at deck', 'Add a ceiling below, under a cavity');
  const cavity = layer(page, 'cavity');
  await field(cavity, 'joists').selectOption({ label: 'solid timber joists' });
  await type(field(cavity, 'depth'), '9 1/4', '9 1/4 in');
  await type(field(cavity, 'joist spacing'), "1' 4", '16 in');
  await type(field(cavity, 'fill thickness'), '6"', '6 in');
  await field(cavity, 'ceiling support').selectOption({ label: 'resilient channel' });
  await field(cavity, 'ceiling support').selectOption({ label: 'isolation clips' });

  // A board of the notebook's own, with its source, is used in the ceiling.
  await page
    .getByText('Materials of this notebook’s own')
    .or(page.getByText("Materials of this notebook's own"))
    .click();
  await page.getByRole('button', { name: 'Add a sheet material' }).click();
  const own = page.locator('own-materials');
  await own.getByLabel('name', { exact: true }).fill('club board');
  await own.getByLabel('name', { exact: true }).press('Enter');
  await own.getByLabel('where its numbers come from').fill('weighed in the workshop, invented for this test');
  await own.getByLabel('where its numbers come from').press('Enter');
  await type(own.getByLabel('density', { exact: true }), '50 lb/ft3', '50 lb/ft³');
  const ceiling = layer(page, 'ceiling');
  await field(ceiling, 'material').selectOption({ label: 'club board' });
  await expectSoon(ceiling).toContainText('weighed in the workshop');
  await type(field(ceiling, 'thickness'), '5/8 in', '5/8 in');
  await expectSoon(
    page.getByRole('img', {
      name: /Section of As built: 1 1\/2 in cellular concrete topping; .*3\/4 in plywood; 9 1\/4 in solid timber joists every 16 in, with 6 in glass fibre batt, ceiling: isolation clips; 5\/8 in club board\./,
    }),
  ).toBeVisible();

  // Two clicks make the thickness a parameter, two more fix it again.
  await choose(page, 'floating slab thickness, fixed: make it a parameter', 'Make it a parameter with a slider');
  const slider = page.getByRole('slider', { name: 'floating slab thickness' });
  await expectSoon(slider).toHaveAttribute('aria-valuetext', '1 1/2 in');
  await choose(page, 'floating slab thickness: parameter “floating slab thickness”', 'Fix it at its present value');
  // No slider stays that would move nothing.
  await expectSoon(slider).toHaveCount(0);
  await choose(page, 'floating slab thickness, fixed: make it a parameter', 'Make it a parameter with a slider');

  // A fork with twice the slab: the added load is volume times density, and the cautions stand beside it.
  await page.getByRole('button', { name: 'Fork As built' }).click();
  await type(page.getByRole('textbox', { name: 'floating slab thickness, typed' }), '3', '3 in');
  await expectSoon(card(page, 'As built 2')).toContainText('floating slab thickness 1 1/2 → 3 in');
  await settled(page);
  await expectSoon(totalsOf(page, 'As built 2')).toContainText('+13.8 lb/ft²'); // 110 lb/ft³ × 1.5 in = 13.75 lb/ft²
  await expectSoon(totalsOf(page, 'As built 2')).toContainText('+1 1/2 in');
  for (const words of CAUTIONS) await expectSoon(page.locator('stack-cell .caution')).toContainText(words);

  // Numbers to leave with: a new notebook has its ratings from the start.
  const stc = page.locator('ratings-cell').getByRole('row', { name: /STC/ });
  await expectSoon(stc).toContainText(/\d\d/);
  await settled(page);

  // On paper: title, numbers and cautions, and nothing to press.
  await page.emulateMedia({ media: 'print' });
  await expectSoon(page.getByRole('heading', { name: 'Club room, first draft', level: 1 })).toBeVisible();
  await expectSoon(stc).toBeVisible();
  await expectSoon(totalsOf(page, 'As built 2')).toBeVisible();
  await expectSoon(page.getByText('floating slab thickness: 3 in')).toBeVisible();
  await expectSoon(page.getByText(/: 3 in cellular concrete topping; .*; 5\/8 in club board\./)).toBeVisible();
  await expectSoon(page.locator('stack-cell .caution')).toBeVisible();
  await expectSoon(page.getByText('Predictions are laboratory-like')).toBeVisible();
  // The names of the ratings are buttons on screen; on paper they are the heads of their rows.
  expect((await visibleControls(page)).filter((name) => !/How .* came about$/.test(name))).toEqual([]);
  const pdf = (await page.pdf({ format: 'A4', printBackground: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)!.length).toBeGreaterThanOrEqual(2);
  expect(pdf).not.toContain('/Subtype /Image'); // drawings and curves are lines, not pixels

  expect(problems).toEqual([]);
  await context.close();
});

test('what cannot be read is said beside the field, stays there to be mended, and changes nothing', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await newNotebook(page);
  await page.getByRole('radio', { name: 'inch-pound' }).check();
  await openLayers(page);
  const before = await shownNotebook(page);

  const inStack = field(layer(page, 'slab'), 'thickness');
  const slider = page.getByRole('textbox', { name: 'slab thickness, typed' });
  for (const input of [inStack, slider])
    for (const [text, message] of [
      ['abc', /length.*1 1\/2 in/],
      ['-3 in', /must be at least .* in \(.*range.*\), got -3 in/],
      ['1 lb', /lb/],
      ['200 in', /must be at most .* in \(.*range.*\), got 200 in/],
      ['', /length/],
    ] as const) {
      await input.fill(text);
      await input.press('Tab');
      await expectSoon(input).toHaveAttribute('aria-invalid', 'true');
      await expectSoon(input).toHaveValue(text);
      await expectSoon(input).toHaveAccessibleDescription(message);
      expect(await shownNotebook(page)).toBe(before);
    }

  // Nothing is lost by it: the words can be mended, or taken back with Escape.
  await expectSoon(inStack).toHaveValue('');
  await slider.fill('6 in');
  await slider.press('Enter');
  await expectSoon(slider).toHaveValue('6 in');
  await expectSoon(slider).toHaveAttribute('aria-invalid', 'false');
  await expectSoon(inStack).toHaveValue('6 in');
  await inStack.fill('abc');
  await inStack.press('Enter');
  await expectSoon(inStack).toHaveAttribute('aria-invalid', 'true');
  await inStack.press('Escape');
  await expectSoon(inStack).toHaveValue('6 in');
  await expectSoon(inStack).toHaveAttribute('aria-invalid', 'false');

  const { parameters } = JSON.parse(await shownNotebook(page)) as Notebook;
  expect(parameters[0]).toMatchObject({ value: expect.closeTo(0.1524, 12) });
  expect(problems).toEqual([]);
  await context.close();
});

test('layers and sheets are moved, added and removed, and undo takes each step back', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await newNotebook(page);
  await openLayers(page);
  const names = () =>
    page.locator('li.layer .name textarea').evaluateAll((all) => all.map((t) => (t as HTMLTextAreaElement).value));

  await choose(page, 'Add at slab', 'Add a ceiling below, under a cavity');
  await expect.poll(names).toEqual(['slab', 'cavity', 'ceiling']);
  await choose(page, 'More for cavity', 'Make it a mat');
  await expect.poll(names).toEqual(['slab', 'mat', 'ceiling']);
  await page.getByRole('button', { name: 'Move ceiling up' }).click();
  await expect.poll(names).toEqual(['ceiling', 'mat', 'slab']);
  await choose(page, 'Add at slab', 'Add a sheet underneath');
  await expectSoon(page.getByRole('list', { name: 'Sheets of slab' }).getByRole('listitem')).toHaveCount(2);
  await page.getByRole('button', { name: 'Move sheet 2 of slab up' }).click();
  await expectSoon(page.getByRole('list', { name: 'Sheets of slab' }).getByLabel('material').first()).toHaveValue(
    'gypsum-board',
  );
  await choose(page, 'Remove ceiling', 'Remove ceiling');
  await expect.poll(names).toEqual(['slab']);

  for (const [undone, expected] of [
    ['remove ceiling and mat', ['ceiling', 'mat', 'slab']],
    ['move a sheet of slab', ['ceiling', 'mat', 'slab']],
    ['add a sheet to slab', ['ceiling', 'mat', 'slab']],
    ['move ceiling', ['slab', 'mat', 'ceiling']],
    ['mat instead of cavity', ['slab', 'cavity', 'ceiling']],
    ['add a ceiling', ['slab']],
  ] as const) {
    await page.getByRole('button', { name: `Undo: ${undone}` }).click();
    await expect.poll(names).toEqual(expected);
  }
  await settled(page);
  await expectSoon(cell(page, 'Floor').getByRole('img', { name: /120 mm concrete\.$/ })).toBeVisible();
  expect(problems).toEqual([]);
  await context.close();
});

test('a floating slab is added to one scenario only, counts as added load there, and one undo takes it back', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await settled(page);
  const hung = 'Ceiling on resilient channel';
  await card(page, hung).getByRole('radio').check();
  await openLayers(page);
  await settled(page);
  const before = await shownNotebook(page);
  const added = async (scenario: string) =>
    Number.parseFloat((await totalsOf(page, scenario).getByRole('cell').nth(1).textContent())!.replace('nothing', '0'));
  const others = ['Slab on top', 'Both'];
  const [fill_kg_m2, ...theirs] = await Promise.all([hung, ...others].map(added));

  await page.getByRole('button', { name: 'Add at deck', exact: true }).click();
  await expectSoon(page.getByRole('radio', { name: `in “${hung}” only` })).toBeChecked();
  await page.getByRole('button', { name: 'Add a floating slab on a mat above' }).click();
  await settled(page);
  await expect.poll(() => added(hung)).toBeCloseTo(fill_kg_m2! + 0.038 * 1760, 0);
  expect(await Promise.all(others.map(added))).toEqual(theirs);

  await page.getByRole('button', { name: 'Undo: add a floating slab' }).click();
  await expect.poll(() => shownNotebook(page)).toBe(before);
  expect(problems).toEqual([]);
  await context.close();
});
