import { expect, test } from 'vitest';
import { page } from 'vitest/browser';
import '#cells/ratings/ratings-cell.ts';
import type { ResultsView } from '#cells/contract.ts';
import { RATING_ROWS } from '#cells/ratings/rating-rows.ts';
import { setActive } from '#src/notebook/edits/set-active.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell, readyResults } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const mountRatings = (resultsOf?: () => ResultsView) =>
  mountCell(document.createElement('ratings-cell'), practiceRoom(), 'ratings', resultsOf);

const words = (element: Element | null | undefined) => element?.textContent?.replace(/\s+/g, ' ').trim();

/** Joists of 5 m in one scenario, which only a parameter can make. */
function deepJoistsIn(scenario: string): Notebook {
  const whole = setActive(practiceRoom(), scenario);
  return setStackField(whole, 'floor', ['layers', 1, 'depth_m'], 5);
}

/** What stands in a row: its head, then a column per shown scenario. */
function row(cell: HTMLElement, label: string): (string | undefined)[] {
  const rows = [...cell.shadowRoot!.querySelectorAll('tr')];
  const found = rows.find((r) => words(r.querySelector('th[scope="row"]')) === label)!;
  return [...found.querySelectorAll('td')].map(words);
}

test('each shown scenario has a column with its number and the difference to the reference', async () => {
  const { element } = await mountRatings();
  const results = readyResults(practiceRoom());
  const stc = (scenario: string) => results.of(scenario, 'floor').prediction!.ratings.STC;
  const expected = ['base', 'slab', 'hung', 'both'].map((id) =>
    id === 'base' ? String(stc(id)) : `${stc(id)} ${stc(id) > stc('base') ? '+' : ''}${stc(id) - stc('base')}`,
  );
  expect(row(element, 'STC')).toEqual(expected);
});

test('a lower impact level counts as better, a lower IIC as worse', async () => {
  const { element } = await mountRatings();
  const tones = (label: string) => {
    const rows = [...element.shadowRoot!.querySelectorAll('tr')];
    const found = rows.find((r) => words(r.querySelector('th[scope="row"]')) === label)!;
    return [...found.querySelectorAll('.difference')].map((d) => [
      Number(d.textContent!.replace('−', '-')),
      d.classList[1],
    ]);
  };
  for (const [difference, tone] of tones('Ln,w (CI)'))
    expect(tone).toBe(difference === 0 ? 'neutral' : Number(difference) < 0 ? 'better' : 'worse');
  for (const [difference, tone] of tones('IIC'))
    expect(tone).toBe(difference === 0 ? 'neutral' : Number(difference) > 0 ? 'better' : 'worse');
  expect(tones('Ln,w (CI)').some(([difference]) => Number(difference) < 0)).toBe(true);
});

test.each(RATING_ROWS.filter((r) => r.group !== 'Build-up').map((r) => r.label))(
  'how %s came about is told on request, of the active scenario, ending in the number shown',
  async (label) => {
    const { element } = await mountRatings();
    await page.getByRole('button', { name: `How ${label} came about`, exact: true }).click();
    const story = element.shadowRoot!.querySelector('.story')!;
    expect(words(story.querySelector('h3'))).toBe(`${label} of Slab on top`);
    expect(story.querySelectorAll('tbody td').length).toBeGreaterThan(15);
    const [, shown] = row(element, label);
    const last = /\((−?\d+)\)$/.exec(shown!.replace(/ [+−±]\d+$/, ''))?.[1] ?? shown!.split(' ')[0]!;
    expect(words(story)).toContain(label.startsWith('Rw (C') ? shown!.split(' ')[0]! : last);
  },
);

test('the deficiencies of the STC contour add up to the sum that the story names', async () => {
  const { element } = await mountRatings();
  await page.getByRole('button', { name: 'How STC came about' }).click();
  const cells = [...element.shadowRoot!.querySelectorAll('.story tbody tr:last-child td')];
  const sum = cells.reduce((total, cell) => total + Number(cell.textContent), 0);
  expect(words(element.shadowRoot!.querySelector('.story'))).toMatch(
    new RegExp(`all together they are ${sum.toFixed(1).replace(/\.0$/, '')} dB`),
  );
});

test('computing without a number shows an ellipsis, a failure its reason', async () => {
  const { element } = await mountRatings(() => ({
    of: (scenario) =>
      scenario === 'base' ? { state: 'computing' } : { state: 'failed', message: 'thickness_m must be > 0' },
  }));
  expect(row(element, 'STC')).toEqual(['…', '–', '–', '–']);
  await expect.element(page.getByText('Slab on top: thickness_m must be > 0')).toBeVisible();
});

test('axe finds nothing, with and without a story', async () => {
  const { element } = await mountRatings();
  expect(await axeProblems(element)).toEqual([]);
  await page.getByRole('button', { name: 'How IIC came about' }).click();
  expect(await axeProblems(element)).toEqual([]);
});

test('a floor outside of what was checked has a quiet remark per scenario with the limits; the others have none', async () => {
  const inside = await mountRatings();
  expect(inside.element.shadowRoot!.querySelector('.outside')).toBeNull();
  inside.element.remove();
  const { element } = await mountCell(document.createElement('ratings-cell'), deepJoistsIn('hung'), 'ratings');
  const note = page.getByRole('note', { name: 'Outside what was checked' });
  expect(words(note.element().querySelector('ul'))).toBe(
    'Ceiling on channel: joists 5000 mm deep (checked 63.5 to 457 mm)',
  );
  await page.getByText('What these limits are').click();
  await expect.element(note).toHaveTextContent('457 mm open joists (f4)');
  expect(row(element, 'STC').every((text) => /\d/.test(text!))).toBe(true);
  expect(await axeProblems(element)).toEqual([]);
});
