import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/parameters/parameters-cell.ts';
import { FieldReveal, NotebookEdit } from '#cells/contract.ts';
import { setActive } from '#src/notebook/edits/set-active.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setUnits } from '#src/notebook/edits/set-units.ts';
import { valuesOf } from '#src/notebook/resolve.ts';
import type { Notebook, Scenario } from '#src/notebook/types.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const mountParameters = (notebook = practiceRoom()) =>
  mountCell(document.createElement('parameters-cell'), notebook, 'knobs');
const slabIn = (notebook: Notebook, scenario: string) => valuesOf(notebook, scenario).slab;
const slider = () => page.getByRole('slider', { name: 'slab thickness' });
const entry = () => page.getByRole('textbox', { name: 'slab thickness, typed' });

test('the slider stands where the active scenario has it and says so with its unit', async () => {
  await mountParameters();
  await expect.element(slider()).toHaveAttribute('aria-valuetext', '38 mm');
  await expect.element(slider()).toHaveValue('38');
});

test('arrow keys move the slider by the step, in the active scenario only', async () => {
  const { notebook } = await mountParameters();
  (slider().element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowRight}{ArrowRight}');
  expect(slabIn(notebook(), 'slab')).toBe(0.04);
  expect(slabIn(notebook(), 'base')).toBe(0);
});

test('an edit goes to the scenario that is worked in by then, even if the cell has not heard of it yet', async () => {
  const { element } = await mountParameters();
  const edits: NotebookEdit[] = [];
  element.addEventListener(NotebookEdit.type, (event) => edits.push(event as NotebookEdit), { capture: true });
  await userEvent.fill(entry(), '50 mm');
  await userEvent.keyboard('{Enter}');
  const edited = edits[0]!.edit(practiceRoom({ active: 'both' }));
  expect(slabIn(edited, 'both')).toBe(0.05);
  expect(slabIn(edited, 'slab')).toBe(0.038);
});

test('in inch-pound units the slider steps through fractions of an inch', async () => {
  const { notebook } = await mountParameters(practiceRoom({ units: 'inch-pound' }));
  (slider().element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowRight}');
  await expect.element(slider()).toHaveAttribute('aria-valuetext', '1 9/16 in');
  expect(slabIn(notebook(), 'slab')).toBeCloseTo(0.0254 * 1.5625, 12);
});

test.each([
  ['1 1/2 in', 0.0381],
  ['50', 0.05],
  ['5 cm', 0.05],
])('%s typed becomes the value', async (text, expected) => {
  const { notebook } = await mountParameters();
  await userEvent.fill(entry(), text);
  await userEvent.keyboard('{Enter}');
  expect(slabIn(notebook(), 'slab')).toBeCloseTo(expected, 12);
});

test.each([
  ['thick', 'Expected a length'],
  ['120 mm', 'slab thickness must be at most 100 mm (its range, which “Arrange parameters” changes), got 120 mm.'],
  ['5 kg', 'Expected a unit of length'],
])('%s is refused beside the field, and stays there', async (text, message) => {
  const { edits } = await mountParameters();
  await userEvent.fill(entry(), text);
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('alert')).toHaveTextContent(message);
  await expect.element(entry()).toHaveValue(text);
  await expect.element(entry()).toHaveAttribute('aria-invalid', 'true');
  expect(edits).toEqual([]);
});

test('Escape takes back what was typed, together with its error', async () => {
  await mountParameters();
  await userEvent.fill(entry(), 'thick');
  await userEvent.keyboard('{Enter}');
  await userEvent.click(entry());
  await userEvent.keyboard('{Escape}');
  await expect.element(entry()).toHaveValue('38 mm');
  expect(page.getByRole('alert').elements()).toEqual([]);
});

test('Enter and Escape that belong to the composing of letters neither take nor drop what is typed', async () => {
  const { edits } = await mountParameters();
  await userEvent.fill(entry(), '50 mm');
  for (const key of ['Enter', 'Escape'])
    entry()
      .element()
      .dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, isComposing: true }));
  await expect.element(entry()).toHaveValue('50 mm');
  expect(edits).toEqual([]);
  await userEvent.keyboard('{Enter}');
  expect(edits).toHaveLength(1);
});

test('a field that was only visited keeps digits that it does not show', async () => {
  const room = practiceRoom();
  const scenarios = room.scenarios.map((s) => (s.id === 'slab' ? { ...s, changes: { slab: 0.03812345 } } : s));
  const { notebook, edits } = await mountParameters({ ...room, scenarios });
  await userEvent.click(entry());
  await userEvent.keyboard('{Enter}{Tab}');
  expect(edits).toEqual([]);
  expect(slabIn(notebook(), 'slab')).toBe(0.03812345);
});

test('a limit may be typed as it is shown, rounded to a sixteenth of an inch', async () => {
  const { notebook } = await mountParameters(practiceRoom({ units: 'inch-pound' }));
  await userEvent.fill(entry(), '3 15/16 in');
  await userEvent.keyboard('{Enter}');
  expect(page.getByRole('alert').elements()).toEqual([]);
  expect(slabIn(notebook(), 'slab')).toBe(0.1);
});

test('a change of units takes back what could not be read, with its reason: the number would mean another size', async () => {
  const { element, notebook } = await mountParameters();
  await userEvent.fill(entry(), '5000');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('alert')).toBeVisible();
  element.notebook = setUnits(notebook(), 'inch-pound');
  await expect.element(entry()).toHaveValue('1 1/2 in');
  await expect.element(page.getByRole('alert')).not.toBeInTheDocument();
});

test('what is typed for one scenario does not stay for another one', async () => {
  const { element, notebook } = await mountParameters();
  await userEvent.fill(entry(), 'abc');
  await userEvent.keyboard('{Enter}');
  element.notebook = setActive(notebook(), 'hung');
  await expect.element(entry()).toHaveValue('0 mm');
});

test('what is not 0 does not read 0, and 0 typed over it is taken', async () => {
  const { notebook } = await mountParameters(setParameter(practiceRoom(), 'slab', 0.00001));
  await expect.element(entry()).toHaveValue('0.01 mm');
  await userEvent.fill(entry(), '0 mm');
  await userEvent.keyboard('{Enter}');
  expect(slabIn(notebook(), 'slab')).toBe(0);
});

test('a text that is typed counts, even if it is the one that was shown for a value with more digits', async () => {
  const { notebook } = await mountParameters(setParameter(practiceRoom(), 'slab', 0.03804));
  await expect.element(entry()).toHaveValue('38 mm');
  await userEvent.fill(entry(), '38 mm');
  await userEvent.keyboard('{Enter}');
  expect(slabIn(notebook(), 'slab')).toBe(0.038);
});

test('limits that were only visited stay what they are', async () => {
  const { edits, notebook } = await mountParameters(practiceRoom({ units: 'inch-pound' }));
  await page.getByRole('button', { name: 'Arrange parameters' }).click();
  const limit = page.getByRole('textbox', { name: 'slab thickness, to' });
  await userEvent.fill(limit, '4 in');
  await userEvent.fill(limit, '3 15/16 in');
  await userEvent.keyboard('{Enter}{Tab}');
  expect(edits).toEqual([]);
  expect(notebook().parameters[0]).toMatchObject({ max: 0.1 });
});

test('the figures beside the sliders count what the ratings count, and say what that is', async () => {
  const flanking = { kind: 'own', R500_dB: 45, slope_dB_per_octave: 3 } as const;
  const rated = (floorAlone: boolean) => {
    const start = practiceRoom({ flanking });
    const cells = start.cells.map((c) => (c.kind === 'ratings' ? { ...c, floorAlone } : c));
    return { ...start, cells };
  };
  const answer = async (floorAlone: boolean) => {
    const { element } = await mountParameters(rated(floorAlone));
    const strip = element.shadowRoot!.querySelector('floor-answer')!;
    await strip.updateComplete;
    const stc = [...strip.shadowRoot!.querySelectorAll('[aria-label$="STC"] li')].map((li) =>
      Number(li.textContent!.split(':')[1]),
    );
    const curve = strip.shadowRoot!.querySelector('svg.curves')!.innerHTML;
    const about = strip.shadowRoot!.querySelector('.about')!.textContent;
    element.remove();
    const names = [...strip.shadowRoot!.querySelectorAll('.name')].map((n) => n.textContent).filter(Boolean);
    return { stc, curve, about, names };
  };
  const [together, alone] = [await answer(false), await answer(true)];
  const load = 'mass is load, which a structural engineer must check';
  expect(together.about).toBe(`ASTC of floor and walls together, IIC of the floor alone; ${load}`);
  expect(alone.about).toBe(`floor alone; ${load}`);
  expect(together.names).toEqual(['ASTC', 'IIC', 'kg/m²']);
  expect(alone.names).toEqual(['STC', 'IIC', 'kg/m²']);
  expect(alone.stc[3]).toBeGreaterThan(together.stc[3]!);
  expect(alone.curve).not.toBe(together.curve);
});

test.each([
  ['SI', 'kg/m²', (kg_m2: number) => kg_m2],
  ['inch-pound', 'lb/ft²', (kg_m2: number) => (kg_m2 / 0.45359237) * 0.3048 ** 2],
] as const)(
  'what the gain costs in weight stands beside it, with the caution about load (%s)',
  async (units, unit, inUnit) => {
    const { element } = await mountParameters({ ...practiceRoom(), units });
    const strip = element.shadowRoot!.querySelector('floor-answer')!;
    await strip.updateComplete;
    const masses = [...strip.shadowRoot!.querySelectorAll(`[aria-label="Mass per area, ${unit}"] li`)].map((li) =>
      Number(li.textContent!.split(':')[1]),
    );
    expect(masses).toHaveLength(4);
    // 38 mm of 1760 kg/m³ more than the floor without it.
    expect(masses[1]! - masses[0]!).toBeCloseTo(inUnit(0.038 * 1760), 0);
    expect(strip.shadowRoot!.querySelector('.about')!.textContent).toMatch(/load.*structural engineer/);
  },
);

/** Scenarios `n1`, `n2` … with nothing changed. */
function furtherFloors(length: number): readonly Scenario[] {
  return Array.from({ length }, (_, i) => {
    const number = i + 1;
    return { id: `n${number}`, name: `Further floor ${number}`, mark: 10 + i, parent: 'base', changes: {} };
  });
}

test.each([
  [360, 'both'],
  [360, 'n7'],
  [900, 'base'],
  [900, 'n7'],
])(
  'at %d px with eleven scenarios the numbers of the one that is worked in (%s) stay in sight',
  async (width, active) => {
    await page.viewport(width, 800);
    const room = practiceRoom();
    const scenarios = [...room.scenarios, ...furtherFloors(7)];
    const { element } = await mountParameters({ ...room, scenarios, shown: scenarios.map((s) => s.id), active });
    const strip = element.shadowRoot!.querySelector('floor-answer')!;
    await strip.updateComplete;
    const window = strip.getBoundingClientRect();
    const columns = [...strip.shadowRoot!.querySelectorAll('li')];
    expect(columns).toHaveLength(33);
    const working = columns.filter((li) => li.classList.contains('working'));
    expect(working).toHaveLength(3);
    for (const number of working) {
      const { left, right, width: wide } = number.getBoundingClientRect();
      expect(wide).toBeGreaterThan(15);
      expect(left).toBeGreaterThanOrEqual(window.left);
      expect(right).toBeLessThanOrEqual(window.right + 0.5);
    }
    // The others go past it, by keyboard too, and the edge fades where there is more.
    const scroll = strip.shadowRoot!.querySelector<HTMLElement>('.scroll')!;
    expect(scroll.tabIndex).toBe(0);
    expect(scroll.scrollWidth).toBeGreaterThan(scroll.clientWidth);
    await expect.poll(() => scroll.dataset.more).toBe('right');
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    expect(await axeProblems(element)).toEqual([]);
  },
);

test('where seven scenarios have room beside each other, the last one, worked in, covers none of them', async () => {
  await page.viewport(1300, 800);
  const room = practiceRoom();
  const scenarios = [...room.scenarios, ...furtherFloors(3)];
  const shown = scenarios.map((s) => s.id);
  const { element } = await mountParameters({ ...room, scenarios, shown, active: 'n3' });
  const strip = element.shadowRoot!.querySelector('floor-answer')!;
  await strip.updateComplete;
  const [before, last] = [...strip.shadowRoot!.querySelectorAll('li')].slice(5, 7);
  expect(last!.className).toContain('working');
  expect(last!.getBoundingClientRect().left).toBeGreaterThanOrEqual(before!.getBoundingClientRect().right);
});

test('a choice is taken by clicking it', async () => {
  const { notebook } = await mountParameters();
  await page.getByRole('group', { name: 'ceiling support', exact: true }).getByText('isolation clips').first().click();
  expect(valuesOf(notebook(), 'slab').support).toBe('clips');
});

test('what differs from the parent is marked, and one reset gives the parent’s value back', async () => {
  const { element, notebook } = await mountParameters();
  const own = [...element.shadowRoot!.querySelectorAll('.values .own')].map((e) => e.textContent?.replace(/\s+/g, ' '));
  expect(own).toHaveLength(5);
  expect(own[0]).toContain('Slab on top: 38 mm changed from As built');
  await page.getByRole('button', { name: 'Reset slab thickness' }).click();
  expect(slabIn(notebook(), 'slab')).toBe(0);
  expect(page.getByRole('button', { name: 'Reset slab thickness' }).elements()).toEqual([]);
});

test('the link beside a parameter asks for the field where it is used', async () => {
  const { element } = await mountParameters();
  const asked: FieldReveal[] = [];
  element.addEventListener(FieldReveal.type, (event) => asked.push(event));
  await page.getByRole('button', { name: 'Show where ceiling support is used', exact: false }).click();
  expect(asked.map(({ stack, path }) => ({ stack, path }))).toEqual([
    { stack: 'floor', path: ['layers', 1, 'support'] },
  ]);
});

test('parameters can be hidden from the cell, renamed, and given another range', async () => {
  const { notebook } = await mountParameters();
  await page.getByRole('button', { name: 'Arrange parameters' }).click();
  await page.getByRole('checkbox', { name: 'Show slab density in this cell' }).click();
  expect(notebook().cells[1]).toMatchObject({ parameters: ['slab', 'support', 'fill'] });
  await userEvent.fill(page.getByRole('textbox', { name: 'slab thickness, to' }), '60');
  await userEvent.keyboard('{Enter}');
  expect(notebook().parameters[0]).toMatchObject({ max: 0.06 });
  await userEvent.fill(page.getByRole('textbox', { name: 'Name of slab thickness' }), 'topping');
  await userEvent.keyboard('{Enter}');
  expect(notebook().parameters[0]).toMatchObject({ label: 'topping' });
});

test('a range that would shut out a value in use is refused, and the text stays', async () => {
  const { notebook } = await mountParameters();
  await page.getByRole('button', { name: 'Arrange parameters' }).click();
  await userEvent.fill(page.getByRole('textbox', { name: 'slab thickness, to' }), '20');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('alert')).toBeVisible();
  await expect.element(page.getByRole('textbox', { name: 'slab thickness, to' })).toHaveValue('20');
  expect(notebook().parameters[0]).toMatchObject({ max: 0.1 });
});

test('a notebook without parameters says how to get one', async () => {
  await mountParameters(practiceRoom({ parameters: [] }));
  await expect.element(page.getByText('This notebook has no parameters yet.', { exact: false })).toBeVisible();
});

test('axe finds nothing with an error shown and the arrangement open', async () => {
  const { element } = await mountParameters();
  await userEvent.fill(entry(), 'thick');
  await userEvent.keyboard('{Enter}');
  await page.getByRole('button', { name: 'Arrange parameters' }).click();
  expect(await axeProblems(element)).toEqual([]);
});
