import { afterEach, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/curves/curves-cell.ts';
import type { Result, ResultsView } from '#cells/contract.ts';
import { predict } from '#src/acoustics/predict.ts';
import { predictionFrom } from '#src/acoustics/prediction-from.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { CurvesCell, Notebook } from '#src/notebook/types.ts';
import { madeUpPrediction } from '../charts/made-up-prediction.ts';
import { percussionNotebook } from '../charts/percussion-notebook.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell, readyResults } from './mounted-cell.ts';

const results = (): ResultsView => ({
  of: (id): Result => ({ state: 'ready', prediction: madeUpPrediction(35 + 5 * Number(id.slice(1))) }),
});

const mount = (notebook: Notebook = percussionNotebook(), resultsOf: () => ResultsView = results) =>
  mountCell(document.createElement('curves-cell'), notebook, 'c-curves', resultsOf);

const cellOf = (notebook: Notebook) => notebook.cells.find((c) => c.kind === 'curves') as CurvesCell;
const chartOf = (element: HTMLElement) => element.shadowRoot!.querySelector('band-chart');

async function drawn(element: HTMLElement) {
  await expect.poll(() => chartOf(element)?.picture).toBeTruthy();
  return chartOf(element)!;
}

afterEach(() => vi.useRealTimers());

test('a line per shown scenario, all in the key', async () => {
  const { element } = await mount(percussionNotebook(4));
  const chart = await drawn(element);
  const names = [...chart.shadowRoot!.querySelectorAll('.key th[scope="row"]')].map((n) => n.textContent!.trim());
  expect(names).toHaveLength(4);
  expect(names[0]).toContain('Existing floor');
});

test('what the curves show is chosen by mouse and by keyboard', async () => {
  const { element, notebook } = await mount();
  await page.getByText('Impact', { exact: true }).click();
  expect(cellOf(notebook()).quantity).toBe('impact');
  await element.updateComplete;
  page.getByRole('radio', { name: 'Impact', exact: true }).element().focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(cellOf(notebook()).quantity).toBe('difference');
});

test('what lies over the curves is switched on and off, and each has its line in the key', async () => {
  const { element, notebook } = await mount();
  await page.getByRole('checkbox', { name: 'Rating contour' }).click();
  await page.getByRole('checkbox', { name: 'Resonances' }).click();
  expect(cellOf(notebook()).overlays).toEqual(['contour', 'resonances']);
  const chart = await drawn(element);
  await expect.poll(() => chart.shadowRoot!.textContent).toContain('R′w');
  expect(chart.shadowRoot!.textContent).toContain('deck and ceiling bounce on the air');
  await page.getByRole('checkbox', { name: 'Rating contour' }).click();
  expect(cellOf(notebook()).overlays).toEqual(['resonances']);
});

test('overlays that do not fit what is shown cannot be chosen', async () => {
  await mount(withQuantity('difference'));
  expect(page.getByRole('checkbox', { name: 'Mass law' }).elements()).toHaveLength(0);
  expect(page.getByRole('checkbox', { name: 'Resonances' }).elements()).toHaveLength(1);
});

test('a textbook model is chosen by keyboard; one the floor does not fit says why beside its choice', async () => {
  const { element, notebook } = await mount(percussionNotebook(2), () => readyResults(percussionNotebook(2)));
  await drawn(element);
  page.getByRole('button', { name: 'Textbook models …' }).element().focus();
  await userEvent.keyboard('{Enter}');
  const doubleLeaf = page.getByRole('checkbox', { name: 'Textbook double leaf' });
  await expect.element(doubleLeaf).toBeInTheDocument();
  await userEvent.keyboard('{Tab}{Tab}{Tab}');
  expect(element.shadowRoot!.activeElement?.shadowRoot?.activeElement).toBe(doubleLeaf.element());
  await expect.element(doubleLeaf).toHaveAccessibleDescription(/Sharp 1978/);
  await expect
    .element(page.getByRole('checkbox', { name: 'Bare slab by its mass' }))
    .toHaveAccessibleDescription('Not for “Slab on top”: it is made for a slab alone, and this floor has 2 leaves.');
  await userEvent.keyboard(' ');
  expect(cellOf(notebook()).overlays).toEqual(['double-leaf']);
  const chart = chartOf(element)!;
  await expect.poll(() => chart.shadowRoot!.textContent).toContain('double leaf (Sharp): mass law below f0');
  expect(chart.picture!.textContent).toContain('double leaf');
});

test('which models there are depends on what the curves show; over gains there are none', async () => {
  const { element } = await mount(withQuantity('impact'));
  await page.getByRole('button', { name: 'Textbook models …' }).click();
  await expect.element(page.getByRole('checkbox', { name: 'Floating floor after Cremer' })).toBeInTheDocument();
  expect(page.getByRole('checkbox', { name: 'Textbook double leaf' }).elements()).toHaveLength(0);
  await page.getByText('Airborne gain').click();
  await element.updateComplete;
  expect(page.getByRole('button', { name: 'Textbook models …' }).elements()).toHaveLength(0);
  expect(element.shadowRoot!.querySelector('textbook-choices')).toBeNull();
});

test('from 20 Hz: the cell keeps the choice, shades where modes are few, and its table has the low bands', async () => {
  const asked: unknown[] = [];
  const notebook = percussionNotebook(1);
  const low = predict(resolveStack(notebook, 's1', 'floor'), { lowestBand_Hz: 20 });
  const { element, notebook: now } = await mount(notebook, () => ({
    of: (_scenario, _stack, choice) => {
      asked.push(choice?.lowestBand_Hz);
      return { state: 'ready', prediction: predictionFrom(low, choice?.lowestBand_Hz ?? 50) };
    },
  }));
  const chart = await drawn(element);
  expect(chart.frame!.bands_Hz[0]).toBe(50);
  page.getByRole('checkbox', { name: 'from 20 Hz' }).element().focus();
  await userEvent.keyboard(' ');
  expect(cellOf(now()).lowestBand_Hz).toBe(20);
  await expect.poll(() => chart.shadowRoot!.textContent).toMatch(/fewer than five modes a band in a room of 25 m³/);
  expect(chart.frame!.bands_Hz[0]).toBe(20);
  expect(asked.at(-1)).toBe(20);
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  expect(element.shadowRoot!.querySelectorAll('table.bands tbody tr')).toHaveLength(25);
  await page.getByRole('checkbox', { name: 'from 20 Hz' }).click();
  expect(cellOf(now()).lowestBand_Hz).toBe(50);
  await expect.poll(() => chart.frame!.bands_Hz[0]).toBe(50);
  expect(chart.shadowRoot!.textContent).not.toContain('modes a band');
});

test('the table tells the numbers of the curves', async () => {
  const { element } = await mount();
  await drawn(element);
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  const rows = [...element.shadowRoot!.querySelectorAll('table.bands tbody tr')];
  expect(rows).toHaveLength(21);
  const at500 = rows.find((r) => r.querySelector('th')!.textContent === '500')!;
  const values = [...at500.querySelectorAll('td')].map((c) => c.textContent);
  expect(values).toEqual([40, 45, 50].map((level) => madeUpPrediction(level).R_dB[10]!.toFixed(1)));
});

test('files are named after the notebook and hold what is shown', async () => {
  const { element } = await mount();
  await drawn(element);
  const saved: { name: string; blob: Promise<Blob> }[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push({ name: this.download, blob: fetch(this.href).then((r) => r.blob()) });
  });
  for (const format of ['CSV', 'SVG', 'PNG']) await page.getByRole('button', { name: `Save ${format}` }).click();
  await expect.poll(() => saved.length).toBe(3);
  expect(saved.map((s) => s.name)).toEqual([
    'Percussion-above-the-reading-room-What-comes-through.csv',
    'Percussion-above-the-reading-room-What-comes-through.svg',
    'Percussion-above-the-reading-room-What-comes-through.png',
  ]);
  const csv = await (await saved[0]!.blob).text();
  expect(csv.split('\r\n')[0]!.replace('\ufeff', '')).toBe(
    'band_Hz,Existing floor (dB),Slab on top (dB),Ceiling on resilient channel (dB)',
  );
  expect((await saved[2]!.blob).type).toBe('image/png');
});

function withQuantity(quantity: CurvesCell['quantity'], changes: Partial<Notebook> = {}): Notebook {
  const notebook = percussionNotebook(3, changes);
  return { ...notebook, cells: notebook.cells.map((c) => (c.kind === 'curves' ? { ...c, quantity } : c)) };
}

test('a failure stands below the picture with its scenario, and the other curves stay', async () => {
  const failing: ResultsView = {
    of: (id) =>
      id === 's2'
        ? { state: 'failed', message: 'the worker stopped' }
        : { state: 'ready', prediction: madeUpPrediction() },
  };
  const { element } = await mount(percussionNotebook(), () => failing);
  await drawn(element);
  expect(element.shadowRoot!.querySelector('.error')!.textContent).toBe('Slab on top: the worker stopped');
});

test('a cell whose stack is gone asks for another', async () => {
  const notebook = percussionNotebook(1);
  const lost = {
    ...notebook,
    cells: notebook.cells.map((c) => (c.kind === 'curves' ? { ...c, stack: 'gone' } : c)),
  };
  const mounted = await mount(lost, () => ({ of: () => ({ state: 'failed', message: 'not computed' }) }));
  await page.getByRole('combobox', { name: 'Stack' }).selectOptions('floor');
  expect(cellOf(mounted.notebook()).stack).toBe('floor');
});

test.each([360, 1600])('at %d px nothing is wider than the page, with eight long-named scenarios', async (width) => {
  await page.viewport(width, 800);
  const { element } = await mount(percussionNotebook(8));
  await drawn(element);
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  await element.updateComplete;
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});

test.each([
  [
    'curves with everything laid over them',
    percussionNotebook(8),
    ['contour', 'mass-law', 'resonances', 'critical', 'paths', 'uncertainty', 'limp-panel', 'double-leaf', 'bare-slab'],
  ],
  ['differences', withQuantity('difference'), ['resonances']],
  ['nothing shown', percussionNotebook(3, { shown: [] }), []],
] as const)('axe finds nothing wrong with %s', async (_, notebook, overlays) => {
  const cells = notebook.cells.map((c) => (c.kind === 'curves' ? { ...c, overlays } : c));
  const { element } = await mount({ ...notebook, cells });
  await element.updateComplete;
  if (notebook.shown.length) {
    await drawn(element);
    await page.getByRole('button', { name: 'Show the numbers' }).click();
    for (const models of page.getByRole('button', { name: 'Textbook models …' }).elements()) {
      await userEvent.click(models);
      await expect.element(page.getByRole('checkbox', { name: 'Textbook double leaf' })).toBeInTheDocument();
    }
  }
  expect(await axeProblems(element)).toEqual([]);
});
