import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/paths/paths-cell.ts';
import type { ResultsView } from '#cells/contract.ts';
import type { Notebook, PathsCell } from '#src/notebook/types.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell, readyResults } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const mount = (notebook: Notebook = practiceRoom(), resultsOf?: () => ResultsView) =>
  mountCell(document.createElement('paths-cell'), notebook, 'paths', resultsOf);

async function chartOf(element: HTMLElement) {
  await expect.poll(() => element.shadowRoot!.querySelector('share-chart')?.frame).toBeTruthy();
  return element.shadowRoot!.querySelector('share-chart')!;
}

const sentences = (element: HTMLElement) =>
  [...element.shadowRoot!.querySelectorAll('ol li')].map((li) => li.textContent!.trim().replaceAll('\u00a0', ' '));

test('a numbered sentence for every region of the picture', async () => {
  const { element } = await mount();
  const chart = await chartOf(element);
  const numbers = [...chart.shadowRoot!.querySelectorAll('.region')].map((n) => n.textContent);
  expect(numbers).toEqual(sentences(element).map((_, i) => String(i + 1)));
  expect(sentences(element).length).toBeGreaterThan(0);
});

test('the sentences name the numbers that the engine found', async () => {
  const notebook = practiceRoom({ active: 'hung', shown: ['hung'] });
  const { element } = await mount(notebook);
  const { prediction } = readyResults(notebook).of('hung', 'floor');
  const ruling = prediction!.mechanisms.find((m) => m.mechanism === 'mass-spring-mass')!;
  expect(sentences(element).join(' ')).toContain(`f0 = ${Math.round(ruling.frequency_Hz!)} Hz`);
});

test('another scenario is chosen by mouse and by keyboard, without a change of the notebook', async () => {
  const { element, edits } = await mount();
  const before = sentences(element);
  await page.getByRole('radio', { name: 'As built' }).click();
  await element.updateComplete;
  const after = sentences(element);
  expect(after).not.toEqual(before);
  await userEvent.keyboard('{ArrowDown}');
  await element.updateComplete;
  expect(sentences(element)).not.toEqual(after);
  expect(edits).toEqual([]);
});

test('airborne or impact is part of the notebook', async () => {
  const { notebook } = await mount();
  await page.getByText('Impact', { exact: true }).click();
  expect((notebook().cells.find((c) => c.id === 'paths') as PathsCell).sound).toBe('impact');
});

test('a sentence under the pointer lights its region up', async () => {
  const { element } = await mount();
  const chart = await chartOf(element);
  await userEvent.hover(page.getByRole('listitem').first());
  await expect.poll(() => chart.shadowRoot!.querySelector('.lit-region')).toBeTruthy();
});

test('the band that is read by keyboard lights up its sentence', async () => {
  const { element } = await mount();
  const chart = await chartOf(element);
  chart.shadowRoot!.querySelector<HTMLElement>('.reach')!.focus();
  await userEvent.keyboard('{End}');
  await element.updateComplete;
  const items = [...element.shadowRoot!.querySelectorAll('ol li')];
  expect(items.map((li) => li.classList.contains('lit'))).toEqual(items.map((_, i) => i === items.length - 1));
});

test('the table tells the shares', async () => {
  const { element } = await mount();
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  await element.updateComplete;
  expect(element.shadowRoot!.querySelectorAll('table.bands tbody tr')).toHaveLength(21);
});

test.each([
  ['ready', practiceRoom(), undefined],
  ['computing', practiceRoom(), () => ({ of: () => ({ state: 'computing' as const }) })],
  ['failed', practiceRoom(), () => ({ of: () => ({ state: 'failed' as const, message: 'the worker stopped' }) })],
  ['with nothing shown', practiceRoom({ shown: [] }), undefined],
])('axe finds nothing wrong with a paths cell that is %s', async (_, notebook, resultsOf) => {
  const { element } = await mount(notebook, resultsOf);
  if (!resultsOf && notebook.shown.length) await chartOf(element);
  expect(await axeProblems(element)).toEqual([]);
});

test.each([360, 1600])('at %d px nothing is wider than the page', async (width) => {
  await page.viewport(width, 800);
  const { element } = await mount();
  await chartOf(element);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});
