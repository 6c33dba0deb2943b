import { expect, test } from 'vitest';
import '#cells/parameters/parameters-cell.ts';
import '#cells/paths/paths-cell.ts';
import '#cells/stack/stack-cell.ts';
import type { CellElement } from '#cells/cell-registry.ts';
import type { Result, ResultsView } from '#cells/contract.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { deep } from './deep.ts';
import { mountCell, readyResults } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

/** Every prediction of how the floors were, while what they are now is computed. */
function awaitedResults(notebook: Notebook): ResultsView {
  const ready = readyResults(notebook);
  return { of: (...which) => ({ ...ready.of(...which), state: 'computing' }) as Result };
}

/** Of the texts that wait for new figures: what they say and how strongly they are drawn in the end. */
async function faded(
  element: CellElement & { readonly updateComplete: Promise<boolean> },
  cellId: string,
  resultsOf: (notebook: Notebook) => ResultsView,
) {
  const mounted = await mountCell(element, practiceRoom(), cellId, resultsOf);
  await expect.poll(() => deep('.awaited', element.shadowRoot!).length).toBeGreaterThan(0);
  const found = deep('.awaited', element.shadowRoot!);
  for (const animation of found.flatMap((e) => e.getAnimations())) animation.finish();
  const seen = found.map((e) => ({ text: e.textContent!.trim(), opacity: getComputedStyle(e).opacity }));
  const words = deep('.about, .note', element.shadowRoot!).map((e) => e.textContent!.trim());
  mounted.element.remove();
  return { seen, words };
}

test.each([
  ['parameters-cell', 'knobs'],
  ['stack-cell', 'section'],
  ['paths-cell', 'paths'],
] as const)('%s: figures of a floor that is computed anew stay, but fade; settled ones stand full', async (tag, id) => {
  const { seen: awaited } = await faded(document.createElement(tag), id, awaitedResults);
  const { seen: settled } = await faded(document.createElement(tag), id, readyResults);
  expect(awaited.map((s) => s.text)).toEqual(settled.map((s) => s.text));
  expect(new Set(awaited.map((s) => s.opacity))).toEqual(new Set(['0.55']));
  expect(new Set(settled.map((s) => s.opacity))).toEqual(new Set(['1']));
});

test('masses and heights of a floor that was never computed are on their way, not unknown', async () => {
  const results: ResultsView = { of: () => ({ state: 'computing' }) };
  const { seen } = await faded(document.createElement('stack-cell'), 'section', () => results);
  const [first] = seen;
  expect(first!.text).toContain('…');
  expect(first!.text).not.toContain('–');
});

test('beside the sliders it is said in words that the figures are computed', async () => {
  const { words: awaited } = await faded(document.createElement('parameters-cell'), 'knobs', awaitedResults);
  const { words: settled } = await faded(document.createElement('parameters-cell'), 'knobs', readyResults);
  expect(awaited.join(' ')).toContain('computing …');
  expect(settled.join(' ')).not.toContain('computing …');
});
