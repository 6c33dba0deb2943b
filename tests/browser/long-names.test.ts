import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import '#cells/parameters/parameters-cell.ts';
import '#cells/paths/paths-cell.ts';
import '#cells/ratings/ratings-cell.ts';
import '#src/app/scenario-actions.ts';
import '#src/app/scenario-rail.ts';
import type { CellElement } from '#cells/cell-registry.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { mountCell } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

/** One name that stays in its line, others that take two and more. */
function longNamed(): Notebook {
  const room = practiceRoom();
  const names = [
    'As built',
    'Slab on top, forty millimetres of cellular concrete',
    'Ceiling on resilient channel, with glass fibre in every bay of the joists',
    'Both measures together, in the order in which the builders proposed them to the library',
  ];
  return { ...room, scenarios: room.scenarios.map((scenario, i) => ({ ...scenario, name: names[i]! })) };
}

const mount = (tag: 'ratings-cell' | 'parameters-cell' | 'paths-cell', cell: string) =>
  mountCell(document.createElement(tag) as CellElement & HTMLElementTagNameMap[typeof tag], longNamed(), cell);

const middle = ({ top, bottom }: { top: number; bottom: number }) => (top + bottom) / 2;
const samples = (root: ParentNode) => [...root.querySelectorAll('.line-sample')].map((s) => s.getBoundingClientRect());
const inRow = (boxes: readonly DOMRect[]) => boxes.every(({ top }) => Math.abs(top - boxes[0]!.top) <= 1);

/** The first line of the text in an element. */
function firstLine(element: Element): DOMRect {
  const range = document.createRange();
  range.selectNodeContents(element);
  return range.getClientRects()[0]!;
}

test('line samples in the head of the ratings stand in one line', async () => {
  await page.viewport(800, 900);
  const { element } = await mount('ratings-cell', 'ratings');
  const heads = samples(element.shadowRoot!.querySelector('thead')!);
  expect(heads).toHaveLength(4);
  expect(inRow(heads)).toBe(true);
});

test('line samples in the head of the parameters stand in one line', async () => {
  await page.viewport(1000, 900);
  const { element } = await mount('parameters-cell', 'knobs');
  const heads = [...element.shadowRoot!.querySelectorAll('.heads .scenario')].flatMap(samples);
  expect(heads).toHaveLength(4);
  expect(inRow(heads)).toBe(true);
});

test('at 360 px a value stays in one line beside what it was changed from', async () => {
  await page.viewport(360, 900);
  const { element } = await mount('parameters-cell', 'knobs');
  const values = [...element.shadowRoot!.querySelectorAll('.values .value')];
  expect(values.length).toBeGreaterThan(8);
  for (const value of values)
    expect(value.getClientRects().length && value.getBoundingClientRect().height).toBeLessThan(24);
});

test('the radio button and the sample of a scenario stand beside the first line of its name', async () => {
  await page.viewport(360, 900);
  const { element } = await mount('paths-cell', 'paths');
  for (const label of element.shadowRoot!.querySelectorAll('.scenario-choice label')) {
    const line = middle(firstLine(label.querySelector('span')!));
    for (const beside of ['input', '.line-sample'])
      expect(Math.abs(middle(label.querySelector(beside)!.getBoundingClientRect()) - line)).toBeLessThan(3);
  }
});

test('on the card of a scenario everything stands beside the first line of its name', async () => {
  await page.viewport(1280, 900);
  const rail = document.createElement('scenario-rail');
  Object.assign(rail, { notebook: longNamed() });
  rail.style.width = '17rem';
  document.body.append(rail);
  await rail.updateComplete;
  for (const top of rail.shadowRoot!.querySelectorAll('.top')) {
    const line = middle(firstLine(top.querySelector('.name')!));
    for (const beside of ['input', '.line-sample', 'button'])
      expect(Math.abs(middle(top.querySelector(beside)!.getBoundingClientRect()) - line)).toBeLessThan(3);
  }
});

test('what else can be done with a scenario stays within its card, however long a word in its name', async () => {
  const room = practiceRoom();
  const name = 'Trittschallverbesserungsmassuntersuchungsergebniszusammenstellung';
  const notebook = { ...room, scenarios: room.scenarios.map((s) => (s.id === 'both' ? { ...s, name } : s)) };
  const actions = document.createElement('scenario-actions');
  Object.assign(actions, { notebook, scenario: notebook.scenarios.find((s) => s.id === 'both')! });
  const card = document.createElement('div');
  card.style.width = '14rem';
  card.append(actions);
  document.body.append(card);
  await actions.updateComplete;
  const { right } = card.getBoundingClientRect();
  const parts = [...actions.shadowRoot!.querySelectorAll('.more *')];
  expect(parts.length).toBeGreaterThan(10);
  for (const part of parts) expect(part.getBoundingClientRect().right).toBeLessThanOrEqual(right + 1);
});
