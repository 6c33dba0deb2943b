import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/curves/curves-cell.ts';
import type { ResultsView } from '#cells/contract.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import type { CurvesCell, MeasuredBands, Notebook } from '#src/notebook/types.ts';
import { BANDS_HZ, madeUpPrediction } from '../charts/made-up-prediction.ts';
import { percussionNotebook } from '../charts/percussion-notebook.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell } from './mounted-cell.ts';

/** 30 dB airborne and 60 dB impact in every band, whatever the scenario. */
const FLAT = madeUpPrediction(40, { R_dB: BANDS_HZ.map(() => 30), Ln_dB: BANDS_HZ.map(() => 60) });
const results = (): ResultsView => ({ of: () => ({ state: 'ready', prediction: FLAT }) });

/** Invented data. */
const STORED: MeasuredBands = {
  id: 'stored',
  name: 'before the club moved in',
  source: 'invented for tests',
  quantity: 'airborne',
  bands_Hz: [100, 125, 160],
  values_dB: [28, 29, 33],
};

function notebookWith(measured?: readonly MeasuredBands[]): Notebook {
  const notebook = percussionNotebook(2);
  const cells = notebook.cells.map((c) => (c.kind === 'curves' && measured ? { ...c, measured } : c));
  return { ...notebook, cells };
}

const measuredOf = (notebook: Notebook) => (notebook.cells.find((c) => c.kind === 'curves') as CurvesCell).measured;

const mount = (notebook = notebookWith()) =>
  mountCell(document.createElement('curves-cell'), notebook, 'c-curves', results);

type Cell = Awaited<ReturnType<typeof mount>>['element'];

const keyOf = (element: Cell) =>
  element.shadowRoot!.querySelector('band-chart')?.shadowRoot?.querySelector('.key')?.textContent ?? '';
const source = () => page.getByRole('textbox', { name: 'where the numbers come from' });
const opener = () => page.getByRole('button', { name: 'Measured bands …', exact: true });
const choose = () => page.getByRole('button', { name: 'Choose a CSV of measured bands …' });

async function open(element: Cell) {
  await opener().click();
  await expect.element(choose()).toBeVisible();
  return element.shadowRoot!.querySelector('measured-editor')!.shadowRoot!;
}

async function give(editor: ShadowRoot, text: string, name = 'club floor.csv') {
  const files = new DataTransfer();
  files.items.add(new File([text], name, { type: 'text/csv' }));
  const input = editor.querySelector<HTMLInputElement>('input[type="file"]')!;
  input.files = files.files;
  input.dispatchEvent(new Event('change'));
}

test('a file is read, says where it comes from, and lies over the curves with its values in key and table', async () => {
  const { element, notebook, edits } = await mount();
  const editor = await open(element);
  await give(editor, 'f (Hz);TL (dB)\n400;26,5\n500;31,5\n630;32');
  await expect.poll(() => editor.activeElement?.id).toBe('new-source');
  await userEvent.keyboard('invented for tests{Enter}');
  const [measured] = measuredOf(notebook())!;
  expect(measured).toMatchObject({
    name: 'club floor',
    source: 'invented for tests',
    quantity: 'airborne',
    bands_Hz: [400, 500, 630],
    values_dB: [26.5, 31.5, 32],
  });
  expect(edits).toEqual(['measured bands over the curves']);
  expect(notebookProblems(notebook())).toEqual([]);
  expect(editor.activeElement).toBe(choose().element());

  await expect.poll(() => keyOf(element)).toMatch(/club floor, measured\s+invented for tests[\s\S]*31\.5 dB/);
  // Errors 3.5, −1.5 and −2: mean 0, rms √(18.5/3) = 2.48.
  await expect.element(page.getByText('mean 0.0 dB, rms 2.5 dB over 3 bands, 400 to 630 Hz.')).toBeVisible();
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  await expect.element(page.getByRole('columnheader', { name: 'club floor, measured' })).toBeVisible();
  const at400 = [...element.shadowRoot!.querySelectorAll('table.bands tbody tr')].find(
    (row) => row.querySelector('th')!.textContent === '400',
  );
  expect(at400!.lastElementChild!.textContent).toBe('26.5');
});

test('what was read is drawn at once, and kept only with its source', async () => {
  const { element, notebook } = await mount();
  const editor = await open(element);
  await give(editor, 'f,R\n400,26.5\n500,31.5', 'club floor.csv');
  await expect.poll(() => keyOf(element)).toMatch(/club floor, measured\s+source not said yet[\s\S]*31\.5 dB/);
  await expect.element(page.getByText('drawn over the curves already', { exact: false })).toBeVisible();
  expect(measuredOf(notebook())).toBeUndefined();
  await page.getByRole('button', { name: 'Leave out' }).click();
  await expect.poll(() => keyOf(element)).not.toContain('club floor');
});

test('what lies over other curves says why it is not drawn', async () => {
  const { element } = await mount();
  await give(await open(element), 'f,Ln\n400,66\n500,64');
  await expect.element(page.getByText('impact bands lie over the impact curves', { exact: false })).toBeVisible();
});

test('why a file is refused is brought into the window', async () => {
  await page.viewport(800, 300);
  const { element } = await mount();
  await expect.poll(() => keyOf(element)).not.toBe('');
  await give(await open(element), 'f;R\n100;2O');
  const alert = page.getByRole('alert');
  await expect
    .poll(() => {
      const { top, bottom } = alert.element().getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight;
    })
    .toBe(true);
});

test('without a source nothing is laid over, and what was read stays', async () => {
  const { element, notebook } = await mount();
  const editor = await open(element);
  await give(editor, 'f,R\n100,20\n125,21');
  await page.getByRole('button', { name: 'Lay over the curves' }).click();
  await expect.element(source()).toHaveAttribute('aria-invalid', 'true');
  await expect.element(page.getByText('Say where the numbers come from', { exact: false })).toBeVisible();
  expect(await axeProblems(element)).toEqual([]);
  expect(measuredOf(notebook())).toBeUndefined();

  // Hiding the editor, and looking at a difference meanwhile, lose nothing.
  await opener().click();
  await opener().click();
  await page.getByText('Airborne gain', { exact: true }).click();
  await expect.poll(() => choose().elements()).toHaveLength(0);
  await page.getByText('Airborne', { exact: true }).click();
  await userEvent.fill(source(), 'own measurement, invented');
  await page.getByRole('button', { name: 'Lay over the curves' }).click();
  expect(measuredOf(notebook())!.map((m) => m.values_dB)).toEqual([[20, 21]]);
});

test('every problem of a bad file stands there with line and column, and nothing changes', async () => {
  const { element, notebook } = await mount(notebookWith([STORED]));
  const editor = await open(element);
  await give(editor, 'f;R\n100;2O\n130;21\n160;22;23', 'typed by hand.csv');
  await expect.element(page.getByRole('alert')).toBeVisible();
  const alert = page.getByRole('alert').element();
  expect(alert.textContent).toContain('“typed by hand.csv” is not laid over the curves');
  expect([...alert.querySelectorAll('li')].map((item) => item.textContent)).toEqual([
    'Expected a level from -50 to 200 dB, or nothing, got "2O" (line 2, column 2).',
    'Expected a mid-band frequency of IEC 61260-1 in Hz, such as 125, got "130" (line 3, column 1).',
    'Expected 2 cells as in the heading, got 3 (line 4).',
  ]);
  expect(await axeProblems(element)).toEqual([]);
  expect(measuredOf(notebook())).toEqual([STORED]);

  await give(editor, 'f;R\n100;20', 'mended.csv');
  await expect.element(page.getByText('Read from “mended.csv”:', { exact: false })).toBeVisible();
  expect(page.getByRole('alert').elements()).toHaveLength(0);
});

test('a second file waits until the first is laid over or left out, and what was typed stays', async () => {
  const { element, notebook } = await mount();
  const editor = await open(element);
  await give(editor, 'f;R\n100;20', 'first.csv');
  await userEvent.fill(source(), 'half typed');
  await give(editor, 'f;R\n100;30', 'second.csv');
  await expect.element(page.getByText('“first.csv” is still waiting below', { exact: false })).toBeVisible();
  await expect.element(source()).toHaveValue('half typed');
  await page.getByRole('button', { name: 'Lay over the curves' }).click();
  expect(page.getByRole('alert').elements()).toHaveLength(0);
  expect(measuredOf(notebook())).toMatchObject([{ name: 'first', values_dB: [20] }]);
});

function dragged(kind: 'dragenter' | 'dragover' | 'drop', file: File): DragEvent {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(file);
  return new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true, composed: true });
}

test('a file dropped on the cell is read; a notebook, and any file over a difference, is left to the page', async () => {
  const { element, notebook } = await mount();
  await expect.poll(() => keyOf(element)).not.toBe('');
  const chart = () => element.shadowRoot!.querySelector('band-chart')!;
  const bands = new File(['f;R\n100;20'], 'dropped.csv', { type: 'text/csv' });
  const stranger = new File(['{}'], 'floor.slabspring.json', { type: 'application/json' });
  const taken = (event: DragEvent) => !chart().dispatchEvent(event);

  chart().dispatchEvent(dragged('dragenter', bands));
  await expect.poll(() => taken(dragged('dragover', bands))).toBe(true);
  expect(taken(dragged('dragover', stranger))).toBe(false);
  expect(taken(dragged('drop', stranger))).toBe(false);
  expect(taken(dragged('dragover', bands))).toBe(true);
  await expect.poll(() => chart().className).toBe('dropping');
  expect(taken(dragged('drop', bands))).toBe(true);
  await expect.element(page.getByText('Read from “dropped.csv”:', { exact: false })).toBeVisible();
  expect(chart().className).toBe('');
  await userEvent.fill(source(), 'invented');
  await page.getByRole('button', { name: 'Lay over the curves' }).click();
  expect(measuredOf(notebook())).toMatchObject([{ name: 'dropped', values_dB: [20] }]);

  await page.getByText('Airborne gain', { exact: true }).click();
  expect(taken(dragged('drop', bands))).toBe(false);
});

test('the ratings of measured bands stand beside those of the prediction', async () => {
  const bands_Hz = BANDS_HZ.filter((f) => f >= 100 && f <= 3150);
  const { element } = await mount(notebookWith([{ ...STORED, bands_Hz, values_dB: bands_Hz.map(() => 40) }]));
  await expect.element(page.getByRole('region', { name: 'Ratings, predicted and measured' })).toBeVisible();
  const cells = [...element.shadowRoot!.querySelectorAll('.measured-ratings tbody tr')].map((row) =>
    [...row.children].map((c) => c.textContent),
  );
  // The same shape 10 dB higher has a rating 10 higher; OITC begins at 80 Hz.
  expect(cells[1]![0]).toBe('before the club moved in, measured');
  expect(Number(cells[1]![3]) - Number(cells[0]![3])).toBe(10);
  expect(cells[1]![2]).toBe('–');
  await expect.element(page.getByText('OITC needs 80, 4000 Hz.', { exact: false })).toBeVisible();
  expect(await axeProblems(element)).toEqual([]);
});

test('an octave has its value at each of its one-third octaves in the key', async () => {
  const { element } = await mount(notebookWith([{ ...STORED, bands_Hz: [250, 500], values_dB: [37, 49] }]));
  await expect.poll(() => keyOf(element)).toMatch(/measured[\s\S]*49\.0 dB/);
  const picture = element
    .shadowRoot!.querySelector('band-chart')!
    .shadowRoot!.querySelector<SVGElement>('[role="slider"], [tabindex="0"]')!;
  picture.focus();
  await userEvent.keyboard('{ArrowLeft}');
  await expect.poll(() => keyOf(element)).toMatch(/at 400 Hz[\s\S]*measured[\s\S]*49\.0 dB/);
  await userEvent.keyboard('{ArrowLeft}');
  await expect.poll(() => keyOf(element)).toMatch(/at 315 Hz[\s\S]*measured[\s\S]*37\.0 dB/);
});

test('each column of R or Ln becomes a set of its own; of the others a note says that they are left out', async () => {
  const { element, notebook } = await mount();
  const editor = await open(element);
  await give(editor, 'f\tR existing\tLn\tdelta L\tremark\n125\t≥ 30\t70\t3\tx\n250\t\t68\t5\ty', 'two.tsv');
  await expect.element(page.getByText('counts as 30 dB', { exact: false })).toBeVisible();
  await expect.element(page.getByText('column "delta L" is left out', { exact: false })).toBeVisible();
  await expect.element(page.getByText('column 5 "remark" is left out', { exact: false })).toBeVisible();
  await userEvent.fill(source(), 'invented');
  await page.getByRole('button', { name: 'Lay over the curves' }).click();
  expect(measuredOf(notebook())).toMatchObject([
    { name: 'two', quantity: 'airborne', bands_Hz: [125], values_dB: [30] },
    { name: 'two', quantity: 'impact', bands_Hz: [125, 250], values_dB: [70, 68] },
  ]);
  await expect.element(page.getByText('lies over the impact curves', { exact: false })).toBeVisible();
});

test('what is laid over is renamed and removed, but never left without a source', async () => {
  const { element, notebook, edits } = await mount(notebookWith([STORED]));
  await expect.poll(() => keyOf(element)).toContain('before the club moved in, measured');
  const editor = await open(element);
  const name = page.getByRole('textbox', { name: 'name', exact: true });
  await userEvent.fill(name, 'as built');
  await userEvent.keyboard('{Tab}');
  await userEvent.clear(source());
  await userEvent.keyboard('{Tab}');
  await expect.element(source()).toHaveValue('invented for tests');
  expect(measuredOf(notebook())).toEqual([{ ...STORED, name: 'as built' }]);
  await page.getByRole('button', { name: 'Remove as built' }).click();
  expect(measuredOf(notebook())).toBeUndefined();
  expect(edits).toEqual(['name of before the club moved in', 'remove as built']);
  expect(editor.activeElement).toBe(choose().element());
  await expect.poll(() => keyOf(element)).not.toContain('measured');
});

test('differences have no measured bands', async () => {
  const { element } = await mount(notebookWith([STORED]));
  await expect.poll(() => keyOf(element)).toContain('measured');
  await page.getByText('Airborne gain', { exact: true }).click();
  await expect.poll(() => keyOf(element)).not.toContain('measured');
  expect(opener().elements()).toHaveLength(0);
  await expect.element(page.getByText('not over gains', { exact: false })).toBeVisible();
});

test.each([360, 1600])('at %d px nothing is wider than the page', async (width) => {
  await page.viewport(width, 900);
  const long = 'x'.repeat(120);
  const { element } = await mount(notebookWith([{ ...STORED, name: long, source: long }]));
  await give(await open(element), `f;R\n100;${long}`, `${long}.csv`);
  await expect.element(page.getByRole('alert')).toBeVisible();
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  await give(element.shadowRoot!.querySelector('measured-editor')!.shadowRoot!, 'f;R\n100;20', `${long}.csv`);
  await expect.element(page.getByRole('button', { name: 'Lay over the curves' })).toBeVisible();
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});
