import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/ratings/ratings-cell.ts';
import type { ResultsView } from '#cells/contract.ts';
import { RATING_ROWS, rowWords } from '#cells/ratings/rating-rows.ts';
import { RATING_ERRORS } from '#src/acoustics/model-residuals.ts';
import { setActive } from '#src/notebook/edits/set-active.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import type { Layer, Notebook } from '#src/notebook/types.ts';
import { northWall } from '../notebook/north-wall.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell, readyResults } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const mountRatings = (resultsOf?: () => ResultsView) =>
  mountCell(document.createElement('ratings-cell'), practiceRoom(), 'ratings', resultsOf);

const words = (element: Element | null | undefined) => element?.textContent?.replace(/\s+/g, ' ').trim();

/** Joists of 2 m in one scenario, which only a parameter can make. */
function deepJoistsIn(scenario: string): Notebook {
  const whole = setActive(practiceRoom(), scenario);
  return setStackField(whole, 'floor', ['layers', 1, 'depth_m'], 2);
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
  expect(row(element, 'ASTC')).toEqual(expected);
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

test.each([
  [['base', 'both'], true],
  [['both'], true],
  [['base'], false],
] as const)('where %j are shown, small figures say what they are taken from: %j', async (shown, said) => {
  const room = { ...practiceRoom(), shown: [...shown], active: shown.at(-1)! };
  const { element } = await mountCell(document.createElement('ratings-cell'), room, 'ratings');
  const root = element.shadowRoot!;
  expect(root.querySelectorAll('.difference').length > 0).toBe(said);
  const reference = room.scenarios[0]!.name;
  expect(words(root.querySelector('.ratings thead'))!.includes(`difference from ${reference}`)).toBe(said);
});

/** As the practice room has it: a limit of the walls, which counts for airborne sound alone. */
const LABELS = RATING_ROWS.filter((r) => r.group !== 'Build-up').map((r) => rowWords(r, r.group === 'Airborne').label);

test.each(LABELS)(
  'how %s came about is told on request, of the active scenario, ending in the number shown',
  async (label) => {
    const { element } = await mountRatings();
    await page.getByRole('button', { name: `How ${label} came about`, exact: true }).click();
    const story = element.shadowRoot!.querySelector('.story')!;
    expect(words(story.querySelector('h3'))).toBe(`${label} of Slab on top`);
    // What it is comes first, and which way is better, for who does not know the rating.
    expect(words(story.querySelector('p'))).toMatch(
      label.startsWith('Ln,w') ? /level.*less is better.*tapping machine/ : /more is quieter/,
    );
    expect(story.querySelectorAll('tbody td').length).toBeGreaterThan(15);
    const [, shown] = row(element, label);
    const last = /\((−?\d+)\)$/.exec(shown!.replace(/ [+−±]\d+$/, ''))?.[1] ?? shown!.split(' ')[0]!;
    expect(words(story)).toContain(label.startsWith('R′w (C') ? shown!.split(' ')[0]! : last);
  },
);

test('says that floor and walls are rated together, and rates the floor alone on request', async () => {
  const { element, notebook } = await mountRatings();
  const note = page.getByText('floor and walls together', { exact: false });
  await expect.element(note).toHaveTextContent('R′w, ASTC. Impact: the floor alone');
  const alone = readyResults(practiceRoom({ flanking: { kind: 'none', R500_dB: 0, slope_dB_per_octave: 0 } }));
  const counted = row(element, 'ASTC')[3];
  await page.getByRole('radio', { name: 'floor alone' }).click();
  await expect.element(page.getByText('is left out here', { exact: false })).toBeVisible();
  const { STC } = alone.of('both', 'floor').prediction!.ratings;
  expect(row(element, 'STC')[3]).toMatch(new RegExp(`^${STC} `));
  expect(row(element, 'STC')[3]).not.toBe(counted);
  expect(notebook().cells.find((c) => c.id === 'ratings')).toMatchObject({ floorAlone: true });
});

test('rows are called what they are: with the walls in them, or of the floor alone', async () => {
  const flanking = { kind: 'by the walls', R500_dB: 0, slope_dB_per_octave: 0, walls: [northWall(0.05)] } as const;
  const { element } = await mountCell(document.createElement('ratings-cell'), practiceRoom({ flanking }), 'ratings');
  const labels = () => [...element.shadowRoot!.querySelectorAll('tbody th[scope="row"]')].map(words).slice(0, 8);
  const alone = ['STC', 'Rw (C; Ctr)', 'Rw + C50–5000', 'Rw + Ctr,50–5000', 'OITC', 'IIC', 'Ln,w (CI)'];
  // ASTM E336-23, ASTM E1007, ISO 16283-1:2014 and -2:2020; OITC has no such name, so it is said in words.
  const withWalls = ['ASTC', 'R′w (C; Ctr)', 'R′w + C50–5000', 'R′w + Ctr,50–5000', 'OITC with walls', 'AIIC'];
  expect(labels()).toEqual([...withWalls, 'L′n,w (CI)', 'L′n,w + CI,50–2500']);
  await page.getByRole('radio', { name: 'floor alone' }).click();
  await expect.poll(labels).toEqual([...alone, 'Ln,w + CI,50–2500']);
});

test('how far such numbers were off is said with them, from the errors that the accuracy table is made of', async () => {
  await mountRatings();
  const { STC, IIC } = RATING_ERRORS;
  const note = page.getByText('Expect a spread', { exact: false });
  await expect.element(note).toHaveTextContent(`STC by ${STC.meanAbsolute} on average and ${STC.worst} at worst`);
  await expect.element(note).toHaveTextContent(`IIC by ${IIC.meanAbsolute} and ${IIC.worst} (${IIC.rows})`);
  await expect.element(note).toHaveTextContent('how far the walls are off comes on top.');
  await page.getByRole('radio', { name: 'floor alone' }).click();
  await expect.element(note).not.toHaveTextContent('walls are off');
});

test('with one scenario no column has an empty heading', async () => {
  const room = practiceRoom({ shown: ['base'], active: 'base' });
  const { element } = await mountCell(document.createElement('ratings-cell'), room, 'ratings');
  const heads = [...element.shadowRoot!.querySelectorAll('.ratings thead th')].map(words);
  expect(heads).toEqual(['As built reference']);
  expect(await axeProblems(element)).toEqual([]);
});

test('without anything around there is no choice, and a building is said to be worse', async () => {
  const flanking = { kind: 'none', R500_dB: 0, slope_dB_per_octave: 0 } as const;
  await mountCell(document.createElement('ratings-cell'), practiceRoom({ flanking }), 'ratings');
  await expect.element(page.getByText('a building is worse', { exact: false })).toBeVisible();
  expect(page.getByRole('radio', { name: 'floor alone' }).elements()).toEqual([]);
});

test('a story that opens below the window is brought into it, takes the focus and gives it back', async () => {
  await page.viewport(800, 500);
  await mountRatings();
  const opener = page.getByRole('button', { name: 'How ASTC came about' });
  await opener.click();
  const story = page.getByRole('region', { name: 'How ASTC came about in Slab on top' });
  const shows = () => {
    const { top, bottom } = story.element().getBoundingClientRect();
    return top >= 0 && bottom <= innerHeight;
  };
  await expect.poll(shows).toBe(true);
  const focused = () => (opener.element().getRootNode() as ShadowRoot).activeElement?.textContent?.trim();
  expect(focused()).toBe('ASTC of Slab on top');
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => story.elements().length).toBe(0);
  expect(focused()).toBe('ASTC');
});

test('a story of whole decibels says that its bands are rounded', async () => {
  const { element } = await mountRatings();
  await page.getByRole('button', { name: 'How ASTC came about' }).click();
  const story = element.shadowRoot!.querySelector('.story')!;
  expect(words(story)).toContain('ASTM E413 was written for whole decibels: R′ of each band is rounded first.');
  expect([...story.querySelectorAll('tbody td')].filter((td) => !/^\s*−?\d+\s*$/.test(td.textContent!))).toEqual([]);
});

test('the deficiencies of the STC contour add up to the sum that the story names', async () => {
  const { element } = await mountRatings();
  await page.getByRole('button', { name: 'How ASTC came about' }).click();
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
  expect(row(element, 'ASTC')).toEqual(['…', '–', '–', '–']);
  await expect.element(page.getByText('Slab on top: thickness_m must be > 0')).toBeVisible();
});

test('axe finds nothing, with and without a story', async () => {
  const { element } = await mountRatings();
  expect(await axeProblems(element)).toEqual([]);
  await page.getByRole('button', { name: 'How IIC came about' }).click();
  expect(await axeProblems(element)).toEqual([]);
});

test('what several scenarios have outside of what was checked is said once, of all of them', async () => {
  const said = async (notebook: Notebook) => {
    const { element } = await mountCell(document.createElement('ratings-cell'), notebook, 'ratings');
    const items = [...element.shadowRoot!.querySelectorAll('.outside > ul > li')];
    element.remove();
    return items.map((item) => ({ words: words(item), samples: item.querySelectorAll('svg').length }));
  };
  const remark = 'joists 2000 mm deep (checked 63.5 to 457 mm)';
  // “Both” is a fork of “Slab on top” and follows it.
  expect(await said(deepJoistsIn('slab'))).toEqual([{ words: `Slab on top, Both: ${remark}`, samples: 2 }]);
  const everywhere = deepJoistsIn('base');
  expect(await said(everywhere)).toEqual([{ words: `Every scenario that is shown: ${remark}`, samples: 0 }]);
  expect(await said({ ...everywhere, shown: ['slab'] })).toEqual([{ words: `Slab on top: ${remark}`, samples: 1 }]);
});

test('a floor outside of what was checked has a quiet remark per scenario with the limits; the others have none', async () => {
  const inside = await mountRatings();
  expect(inside.element.shadowRoot!.querySelector('.outside')).toBeNull();
  inside.element.remove();
  const { element } = await mountCell(document.createElement('ratings-cell'), deepJoistsIn('hung'), 'ratings');
  const note = page.getByRole('note', { name: 'Outside what was checked' });
  expect(words(note.element().querySelector('ul'))).toBe(
    'Ceiling on channel: joists 2000 mm deep (checked 63.5 to 457 mm)',
  );
  await page.getByText('What these limits are').click();
  await expect.element(note).toHaveTextContent('457 mm open joists (f4)');
  expect(row(element, 'ASTC').every((text) => /\d/.test(text!))).toBe(true);
  expect(await axeProblems(element)).toEqual([]);
});

test('where a ceiling has joists of its own, what masses leave out stands with the caution, and why nobody checked it on paper', async () => {
  const said = (element: HTMLElement) => words(element.shadowRoot!.querySelector('.scroll + .note'));
  const plain = await mountRatings();
  expect(said(plain.element)).not.toContain('joists of its own');
  plain.element.remove();
  const room = practiceRoom();
  const held = (layer: Layer): Layer => (layer.kind === 'cavity' ? { ...layer, support: 'separate-joists' } : layer);
  const stacks = room.stacks.map((s) => ({ ...s, layers: s.layers.map(held) }));
  const { element } = await mountCell(document.createElement('ratings-cell'), { ...room, stacks }, 'ratings');
  expect(said(element)).toContain('weighs on the walls, not on the floor above it');
  const paper = element.shadowRoot!.querySelector('.outside .on-paper')!;
  expect(getComputedStyle(paper).display).toBe('none');
  expect(words(paper)).toContain('for airborne sound only; for impact no such way is counted');
});
