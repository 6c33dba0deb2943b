import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/stack/stack-cell.ts';
import type { SupportKind } from '#src/acoustics/construction.ts';
import { MATERIAL_SOURCES } from '#src/acoustics/material-sources.ts';
import { MAT_PRODUCTS } from '#src/acoustics/materials.ts';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setStackField } from '#src/notebook/edits/set-stack-field.ts';
import { setUnits } from '#src/notebook/edits/set-units.ts';
import type { FieldPath } from '#src/notebook/field-path.ts';
import { fillsOf } from '#src/notebook/fill-places.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { CavityLayer, Layer, LeafLayer, MatLayer, Notebook } from '#src/notebook/types.ts';
import { percussionNotebook } from '../charts/percussion-notebook.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell, readyResults } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const mount = (notebook: Notebook = practiceRoom()) => {
  const id = notebook.cells.find((c) => c.kind === 'stack')!.id;
  return mountCell(document.createElement('stack-cell'), notebook, id);
};

/** Nothing to choose: what is removed is removed. */
function oneScenario(): Notebook {
  const whole = practiceRoom({ active: 'base', shown: ['base'], reference: 'base' });
  return { ...whole, scenarios: whole.scenarios.slice(0, 1) };
}

async function mountOpen(notebook: Notebook = practiceRoom({ active: 'base' })) {
  const mounted = await mount(notebook);
  await page.getByText('Layers and their fields').click();
  await expect.poll(() => mounted.element.shadowRoot!.querySelector('layer-list')).toBeTruthy();
  const list = mounted.element.shadowRoot!.querySelector('layer-list')!;
  await list.updateComplete;
  return { ...mounted, list };
}

type Mounted = Awaited<ReturnType<typeof mountOpen>>;

async function field({ list }: Mounted, path: FieldPath) {
  const found = [...list.shadowRoot!.querySelectorAll('stack-field')].find((f) => f.path.join('/') === path.join('/'))!;
  await found.updateComplete;
  return found;
}

async function type(mounted: Mounted, path: FieldPath, text: string) {
  const input = (await field(mounted, path)).shadowRoot!.querySelector('input')!;
  await userEvent.fill(input, text);
  await userEvent.keyboard('{Enter}');
  await mounted.element.updateComplete;
  return field(mounted, path);
}

/** The ceiling is held in one way in every scenario. */
function withKinds(notebook: Notebook, support: SupportKind): Notebook {
  const held = (layer: Layer) => (layer.kind === 'cavity' ? { ...layer, support } : layer);
  return { ...notebook, stacks: notebook.stacks.map((s) => ({ ...s, layers: s.layers.map(held) })) };
}

const drawings = (element: HTMLElement) => [...element.shadowRoot!.querySelectorAll('section-drawing')];
const DEPTH = ['layers', 1, 'depth_m'] as const;
const PLYWOOD = ['layers', 0, 'sheets', 1, 'thickness_m'] as const;

test('the lowest f0 of the table is found in the list of resonances, called so and told in words', async () => {
  const { element } = await mount(practiceRoom({ active: 'base' }));
  const root = element.shadowRoot!;
  const first = root.querySelector('.totals tbody tr td:last-child')!.textContent!.trim();
  expect(first).toMatch(/^\d+ Hz$/);
  const rows = [...root.querySelectorAll('.frequencies tr')].map((row) => row.textContent!.replace(/\s+/g, ' ').trim());
  expect(rows.find((row) => row.startsWith('f0'))).toMatch(new RegExp(`^f0 ${first} .*bounce`));
  expect(rows.find((row) => row.startsWith('fc'))).toMatch(/bending waves as fast as sound/);
});

describe('the drawing', () => {
  test('shows every shown scenario at one common scale', async () => {
    const { element } = await mount();
    await expect.poll(() => drawings(element).length).toBe(4);
    expect(new Set(drawings(element).map((d) => d.scale)).size).toBe(1);
    expect(new Set(drawings(element).map((d) => d.section!.width_m)).size).toBe(1);
  });

  test('is to scale: a sheet is as many pixels high as its thickness asks for', async () => {
    const { element } = await mount(practiceRoom({ shown: ['slab'] }));
    await expect.poll(() => drawings(element).length).toBe(1);
    const [drawing] = drawings(element);
    const slab = drawing!.shadowRoot!.querySelector('[data-layer="0"][data-sheet="0"]')!;
    expect(slab.getBoundingClientRect().height).toBeCloseTo(0.038 * drawing!.scale, 1);
  });

  test('is one image with a sentence that names the layers', async () => {
    const { element } = await mount(practiceRoom({ shown: ['both'] }));
    await expect.poll(() => drawings(element).length).toBe(1);
    await drawings(element)[0]!.updateComplete;
    const label = drawings(element)[0]!.shadowRoot!.querySelector('svg')!.getAttribute('aria-label');
    expect(label).toBe(
      'Section of Both: 38 mm cellular concrete topping on 19 mm plywood; 235 mm solid timber joists every 406 mm, with 150 mm glass fibre batt, ceiling: resilient channel; 15.9 mm gypsum board.',
    );
  });

  test('of a floor of which nothing is left says so, and the others stay', async () => {
    const base = practiceRoom({ shown: ['base', 'slab'] });
    const [floor] = base.stacks;
    const slabOnly = {
      ...floor!,
      layers: [{ ...(floor!.layers[0] as LeafLayer), sheets: [(floor!.layers[0] as LeafLayer).sheets[0]!] }],
    };
    const { element } = await mountCell(
      document.createElement('stack-cell'),
      { ...base, stacks: [slabOnly] },
      'section',
      () => ({ of: () => ({ state: 'failed', message: 'nothing left' }) }),
    );
    await expect.poll(() => drawings(element).length).toBe(1);
    expect(element.shadowRoot!.querySelector('figure .error')!.textContent).toContain('Nothing is left of this floor');
  });

  test('follows an edit', async () => {
    const mounted = await mountOpen();
    const height = () => drawings(mounted.element)[0]!.section!.height_m;
    const before = height();
    await type(mounted, DEPTH, '300 mm');
    expect(height() - before).toBeCloseTo(0.065, 9);
  });
});

describe('masses', () => {
  test('are told with what they add to the reference, and with the caution beside them', async () => {
    const { element } = await mount();
    const rows = [...element.shadowRoot!.querySelectorAll('.totals tbody tr')].map((r) =>
      [...r.querySelectorAll('td')].map((c) => c.textContent!.trim()),
    );
    const { of } = readyResults(practiceRoom());
    const mass = (id: string) => of(id, 'floor').prediction!.surfaceMass_kg_m2;
    expect(rows[0]![1]).toBe('reference');
    expect(rows[1]![1]).toBe(`+${(mass('slab') - mass('base')).toFixed(1)} kg/m²`);
    const caution = element.shadowRoot!.querySelector('.caution')!.textContent!;
    for (const word of ['structural engineer', 'Wet concrete', 'creep', 'Local codes']) expect(caution).toContain(word);
  });

  test('say what they count, and on a narrow page that the table scrolls', async () => {
    await page.viewport(360, 800);
    const { element } = await mount();
    expect(element.shadowRoot!.querySelector('.caution')!.textContent).toMatch(
      /“Mass” counts leaves, covering, fill and the floor's joists\./,
    );
    const note = page.getByText('The table scrolls sideways.');
    await expect.element(note).toBeVisible();
    await page.viewport(1000, 800);
    await expect.element(note).not.toBeVisible();
  });

  test('leave out the joists that a ceiling has of its own, which is said beside the caution of that floor alone', async () => {
    const own = 'A ceiling on joists of its own weighs on the walls, not on the floor above it';
    const said = (element: HTMLElement) => element.shadowRoot!.querySelector('.caution')!.textContent!;
    const without = await mount();
    expect(said(without.element)).not.toContain('joists of its own');
    without.element.remove();
    const { element } = await mount(withKinds(practiceRoom(), 'separate-joists'));
    expect(said(element)).toContain(own);
    expect(said(element)).toMatch(/its joists are not counted in these masses: [^.]+ a structural engineer decides\./);
  });

  test('come in pounds per square foot where the notebook is in inches', async () => {
    const { element } = await mount(practiceRoom({ units: 'inch-pound' }));
    expect(element.shadowRoot!.querySelector('.totals')!.textContent).toContain('lb/ft²');
  });
});

describe('a field', () => {
  test('takes a quantity with its unit', async () => {
    const mounted = await mountOpen();
    await type(mounted, PLYWOOD, '3/4 in');
    const { layers } = resolveStack(mounted.notebook(), 'base', 'floor');
    expect(layers[0]!.kind === 'leaf' && layers[0]!.sheets[1]!.thickness_m).toBeCloseTo(0.01905, 9);
  });

  test('keeps what was typed and says what is wrong with it', async () => {
    const mounted = await mountOpen();
    const wrong = await type(mounted, PLYWOOD, 'thick');
    expect(mounted.edits).toEqual([]);
    expect(wrong.shadowRoot!.querySelector('input')!.value).toBe('thick');
    expect(wrong.shadowRoot!.querySelector('[role="alert"]')!.textContent).toMatch(/Expected a length.*thick/);
    expect(wrong.shadowRoot!.querySelector('input')!.getAttribute('aria-invalid')).toBe('true');
  });

  test('keeps what is being typed while the pointer passes over other layers', async () => {
    const mounted = await mountOpen();
    const input = (await field(mounted, PLYWOOD)).shadowRoot!.querySelector('input')!;
    await userEvent.fill(input, '22 m');
    for (const row of mounted.list.shadowRoot!.querySelectorAll('.layer'))
      row.dispatchEvent(new PointerEvent('pointerenter'));
    await mounted.element.updateComplete;
    await mounted.list.updateComplete;
    expect(input.value).toBe('22 m');
  });

  test('says the limit that was passed in the units shown, and why it is one', async () => {
    const mounted = await mountOpen();
    const refusal = async (path: FieldPath, text: string) =>
      (await type(mounted, path, text)).shadowRoot!.querySelector('[role="alert"]')!.textContent;
    expect(await refusal(PLYWOOD, '5 m')).toBe(
      'deck sheet 2 thickness must be at most 1 m (what is thicker bends as a plate at low frequencies only), got 5 m.',
    );
    expect(await refusal(DEPTH, '2.1 m')).toBe(
      'joists depth must be at most 2 m (what is higher is a room with modes of its own), got 2.1 m.',
    );
    mounted.element.notebook = setUnits(mounted.notebook(), 'inch-pound');
    await mounted.element.updateComplete;
    expect(await refusal(DEPTH, '7 ft')).toBe(
      'joists depth must be at most 6 ft 6 3/4 in (what is higher is a room with modes of its own), got 7 ft.',
    );
  });

  test('takes back what could not be read when the units change', async () => {
    const mounted = await mountOpen();
    await type(mounted, PLYWOOD, '5000');
    mounted.element.notebook = setUnits(mounted.notebook(), 'inch-pound');
    await mounted.element.updateComplete;
    const input = () => field(mounted, PLYWOOD).then((f) => f.shadowRoot!.querySelector('input')!);
    await expect.poll(async () => (await input()).value).toBe('3/4 in');
    expect((await input()).getAttribute('aria-invalid')).toBe('false');
  });

  test('is kept by the range of its parameter, and a refusal says that it is that range', async () => {
    const mounted = await mountOpen();
    const refused = await type(mounted, ['layers', 0, 'sheets', 0, 'thickness_m'], '150 mm');
    expect(refused.shadowRoot!.querySelector('.error')!.textContent).toBe(
      'deck sheet 1 thickness must be at most 100 mm (range of the parameter “slab thickness”: widen it with “Arrange parameters”, or fix the value with the word “parameter” above it), got 150 mm.',
    );
  });

  test('is 0 when 0 is typed over 0.01 mm, which does not read 0', async () => {
    const mounted = await mountOpen();
    const shown = await type(mounted, PLYWOOD, '0.01 mm');
    expect(shown.shadowRoot!.querySelector('input')!.value).toBe('0.01 mm');
    await type(mounted, PLYWOOD, '0 mm');
    expect(resolveStack(mounted.notebook(), 'base', 'floor').layers[0]).toMatchObject({
      sheets: [{}, { thickness_m: 0 }],
    });
    await type(mounted, PLYWOOD, '19.04 mm');
    await type(mounted, PLYWOOD, '19 mm');
    expect(resolveStack(mounted.notebook(), 'base', 'floor').layers[0]).toMatchObject({
      sheets: [{}, { thickness_m: 0.019 }],
    });
  });

  test('that is a parameter writes the active scenario only', async () => {
    const mounted = await mountOpen(practiceRoom({ active: 'slab' }));
    await type(mounted, ['layers', 0, 'sheets', 0, 'thickness_m'], '50 mm');
    expect(mounted.notebook().scenarios.find((s) => s.id === 'slab')!.changes.slab).toBe(0.05);
    expect(mounted.notebook().parameters.find((p) => p.key === 'slab')!.value).toBe(0);
  });

  test('left empty where it may be means what is usual', async () => {
    const mounted = await mountOpen();
    const density = ['layers', 2, 'sheets', 0, 'density_kg_m3'] as const;
    await type(mounted, density, '800');
    expect(mounted.edits).toHaveLength(1);
    await type(mounted, density, '');
    const ceiling = mounted.notebook().stacks[0]!.layers[2] as LeafLayer;
    expect(ceiling.sheets[0]).not.toHaveProperty('density_kg_m3');
  });

  test('becomes a parameter in two clicks, and back in two', async () => {
    const mounted = await mountOpen();
    await page.getByRole('button', { name: 'joists depth, fixed: make it a parameter' }).click();
    await page.getByRole('button', { name: 'Make it a parameter with a slider' }).click();
    const made = mounted.notebook().parameters.at(-1)!;
    expect(made).toMatchObject({ label: 'joists depth', value: 0.235 });
    await page.getByRole('button', { name: 'joists depth: parameter “joists depth”' }).click();
    await page.getByRole('button', { name: /^Fix it at its present value/ }).click();
    expect(resolveStack(mounted.notebook(), 'base', 'floor')).toEqual(resolveStack(practiceRoom(), 'base', 'floor'));
  });

  test('is found, opened and focused from elsewhere', async () => {
    const { element } = await mount();
    await element.reveal(['layers', 1, 'supportHeight_m']);
    const list = element.shadowRoot!.querySelector('layer-list')!;
    const focused = list.shadowRoot!.activeElement as HTMLElementTagNameMap['stack-field'];
    expect(focused.path).toEqual(['layers', 1, 'supportHeight_m']);
    expect(focused.shadowRoot!.activeElement!.localName).toBe('input');
  });

  test('is there for what the kind of support uses, and marked where something else is stated already', async () => {
    const mounted = await mountOpen();
    await userEvent.click(page.getByText('More about the support'));
    const shown = () =>
      [...mounted.list.shadowRoot!.querySelectorAll('details stack-field')].map((f) => f.className).sort();
    const support = (kind: string) => {
      mounted.element.notebook = setParameter(mounted.notebook(), 'support', kind);
      return mounted.element.updateComplete.then(() => mounted.list.updateComplete);
    };
    expect(shown()).toEqual(['supportHeight_m', 'supportPointSpacing_m']);
    await support('clips');
    expect(shown()).toEqual([
      'supportHeight_m',
      'supportLineSpacing_m',
      'supportPointSpacing_m',
      'supportStiffness_N_m',
    ]);
    await support('direct');
    await type(mounted, ['layers', 1, 'supportPointSpacing_m'], '300 mm');
    mounted.element.notebook = withKinds(mounted.notebook(), 'separate-joists');
    await mounted.element.updateComplete;
    await mounted.list.updateComplete;
    expect(shown()).toEqual(['supportHeight_m', 'supportPointSpacing_m']);
    const remark = async (name: string) =>
      (await field(mounted, ['layers', 1, name])).shadowRoot!.querySelector('#remark')?.textContent;
    expect(await remark('supportPointSpacing_m')).toBe('Not used by this kind of support.');
    expect(await remark('supportHeight_m')).toBeUndefined();
  });

  test('of a material tells where its numbers come from', async () => {
    const mounted = await mountOpen();
    const material = await field(mounted, ['layers', 0, 'sheets', 1, 'material']);
    expect(material.shadowRoot!.querySelector('#source')!.textContent!.length).toBeGreaterThan(10);
  });
});

describe('layers', () => {
  const names = (notebook: Notebook) => notebook.stacks[0]!.layers.map((l) => l.name);

  test('change places with the buttons, by keyboard too', async () => {
    const { notebook } = await mountOpen();
    page.getByRole('button', { name: 'Move ceiling up' }).element().focus();
    await userEvent.keyboard('{Enter}');
    expect(names(notebook())).toEqual(['ceiling', 'joists', 'deck']);
    // It is on top: the focus stays with it, on the way down.
    await userEvent.keyboard('{Enter}');
    expect(names(notebook())).toEqual(['deck', 'joists', 'ceiling']);
  });

  test('change places by dragging one onto another of its sort', async () => {
    const { list, notebook } = await mountOpen();
    const rows = [...list.shadowRoot!.querySelectorAll<HTMLElement>('.layer')];
    const data = new DataTransfer();
    const drag = (target: HTMLElement, kind: string) =>
      target.dispatchEvent(new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer: data }));
    drag(rows[2]!.querySelector('.grip')!, 'dragstart');
    expect(drag(rows[1]!, 'dragover')).toBe(true);
    expect(drag(rows[0]!, 'dragover')).toBe(false);
    drag(rows[0]!, 'drop');
    expect(names(notebook())).toEqual(['ceiling', 'joists', 'deck']);
  });

  test('are added from the menu: a floating slab, a ceiling', async () => {
    const { notebook } = await mountOpen();
    await page.getByRole('button', { name: 'Add at deck' }).click();
    await page.getByRole('button', { name: 'Add a floating slab on a mat above' }).click();
    expect(notebook().stacks[0]!.layers.map((l) => l.kind)).toEqual(['leaf', 'mat', 'leaf', 'cavity', 'leaf']);
    await page.getByRole('button', { name: 'Add at ceiling' }).click();
    await page.getByRole('button', { name: 'Add a ceiling below, under a cavity' }).click();
    expect(
      notebook()
        .stacks[0]!.layers.map((l) => l.kind)
        .slice(-2),
    ).toEqual(['cavity', 'leaf']);
    expect(() => resolveStack(notebook(), 'base', 'floor')).not.toThrow();
  });

  test('that are new have their material in reach at once, sheets and whole leaves', async () => {
    const { list } = await mountOpen();
    const focused = () => (list.shadowRoot!.activeElement as HTMLElementTagNameMap['stack-field'] | null)?.path;
    const add = async (at: string, what: string) => {
      await page.getByRole('button', { name: `Add at ${at}` }).click();
      await page.getByRole('button', { name: what }).click();
    };
    await add('ceiling', 'Add a sheet underneath');
    await expect.poll(focused).toEqual(['layers', 2, 'sheets', 1, 'material']);
    await add('deck', 'Add a sheet on top');
    await expect.poll(focused).toEqual(['layers', 0, 'sheets', 0, 'material']);
    await add('ceiling', 'Add a ceiling below, under a cavity');
    await expect.poll(focused).toEqual(['layers', 4, 'sheets', 0, 'material']);
    const field = list.shadowRoot!.activeElement!.shadowRoot!.activeElement as HTMLSelectElement;
    expect(field.localName).toBe('select');
  });

  test('show without the pointer how something is added to them, and that a field can become a parameter', async () => {
    await mountOpen();
    const hostOf = (button: Element) => (button.getRootNode() as ShadowRoot).host;
    const add = page.getByRole('button', { name: 'Add at deck' });
    expect(hostOf(add.element()).textContent?.trim()).toBe('Add');
    const fixed = page.getByRole('button', { name: 'joists depth, fixed: make it a parameter' });
    const shown = fixed.element().checkVisibility({ opacityProperty: true });
    expect(shown).toBe(true);
    const word = hostOf(fixed.element()).querySelector('.word')!;
    expect(getComputedStyle(word).textDecorationLine).toBe('underline');
  });

  test('a second and a third fill are added on the first, drawn, and removed again', async () => {
    const start = oneScenario();
    const room = setParameter(start, 'fill', 'glass-fibre');
    const mounted = await mountOpen(room);
    const { element, notebook } = mounted;
    const cavity = () => notebook().stacks[0]!.layers[1]!;
    for (const which of ['second', 'third']) {
      await page.getByRole('button', { name: 'Add at joists' }).click();
      await page.getByRole('button', { name: `Add a ${which} fill on top of the fill` }).click();
    }
    const { list } = mounted;
    const focused = () => (list.shadowRoot!.activeElement as HTMLElementTagNameMap['stack-field'] | null)?.path;
    await expect.poll(focused).toEqual(['layers', 1, 'fillsAbove', 1, 'fill']);
    await userEvent.selectOptions(page.getByRole('combobox', { name: 'third fill' }), 'glass fibre batt');
    await type(mounted, ['layers', 1, 'fillsAbove', 1, 'fillThickness_m'], '2 in');
    expect(cavity()).toMatchObject({
      fillsAbove: [
        { fill: 'mineral-wool', fillThickness_m: 0.05 },
        { fill: 'glass-fibre', fillThickness_m: 0.0508 },
      ],
    });
    // 150 mm, 50 mm and two inches under 235 mm.
    await expect.element(page.getByText('Only 35 mm of it fits in.')).toBeVisible();
    const boxes = drawings(element)[0]!.section!.shapes.filter((s) => s.part === 'fill');
    expect(boxes.map((s) => s.shape === 'box' && Number(s.height_m.toFixed(6)))).toEqual([0.15, 0.05, 0.035]);
    expect(drawings(element)[0]!.label).toContain(
      'with 150 mm glass fibre batt and 50 mm mineral wool batt and 35 mm glass fibre batt',
    );
    expect(await axeProblems(element)).toEqual([]);

    await page.getByRole('button', { name: 'Remove second fill of joists' }).click();
    expect(cavity()).toMatchObject({ fillsAbove: [{ fill: 'glass-fibre', fillThickness_m: 0.0508 }] });
    await page.getByRole('button', { name: 'Remove second fill of joists' }).click();
    expect(notebook()).toEqual(room);
  });

  test('fills stand from the upper one down and change places by keyboard; the focus goes with the one that moves', async () => {
    const mounted = await mountOpen(oneScenario());
    const { list, notebook, element } = mounted;
    for (const which of ['second', 'third']) {
      await page.getByRole('button', { name: 'Add at joists' }).click();
      await page.getByRole('button', { name: `Add a ${which} fill on top of the fill` }).click();
    }
    await type(mounted, ['layers', 1, 'fillThickness_m'], '20 mm');
    await type(mounted, ['layers', 1, 'fillsAbove', 0, 'fillThickness_m'], '30 mm');
    await type(mounted, ['layers', 1, 'fillsAbove', 1, 'fillThickness_m'], '40 mm');
    const fromBelow = () => fillsOf(notebook().stacks[0]!.layers[1] as CavityLayer).map((f) => f.fillThickness_m);
    const before = fromBelow();
    const rows = page.getByRole('list', { name: 'Fills of joists from the upper one down' });
    const actions = () => [...rows.element().querySelectorAll('[role=group]')].map((g) => g.getAttribute('aria-label'));
    expect(actions()).toEqual(['third', 'second', 'first'].map((which) => `Actions for ${which} fill of joists`));
    await expect.element(page.getByRole('button', { name: 'Move third fill of joists up' })).toBeDisabled();
    await expect.element(page.getByRole('button', { name: 'Move first fill of joists down' })).toBeDisabled();

    page.getByRole('button', { name: 'Move first fill of joists up' }).element().focus();
    const focused = () => list.shadowRoot!.activeElement?.getAttribute('aria-label');
    await userEvent.keyboard('{Enter}');
    expect(fromBelow()).toEqual([before[1], before[0], before[2]]);
    expect(focused()).toBe('Move second fill of joists up');
    await userEvent.keyboard('{Enter}');
    expect(fromBelow()).toEqual([before[1], before[2], before[0]]);
    expect(focused()).toBe('Move third fill of joists down');
    expect(mounted.edits.slice(-2)).toEqual(['move a fill of joists', 'move a fill of joists']);
    expect(await axeProblems(element)).toEqual([]);

    await page.getByRole('button', { name: 'Remove first fill of joists' }).click();
    expect(fromBelow()).toEqual([before[2], before[0]]);
  });

  test('a fill added in a fork is in that fork only, unless every scenario is meant', async () => {
    const start = practiceRoom({ active: 'hung' });
    const { notebook } = await mountOpen(start);
    await page.getByRole('button', { name: 'Add at joists' }).click();
    await page.getByRole('button', { name: 'Add a second fill on top of the fill' }).click();
    const fills = () =>
      notebook().scenarios.map(({ id }) => {
        const cavity = resolveStack(notebook(), id, 'floor').layers[1]!;
        return cavity.kind === 'cavity' && cavity.fill.length;
      });
    expect(fills()).toEqual([0, 0, 2, 1]);
    // No other scenario has it: there is nothing to choose.
    await page.getByRole('button', { name: 'Remove second fill of joists' }).click();
    expect(notebook()).toEqual(start);

    await page.getByRole('button', { name: 'Add at joists' }).click();
    await page.getByRole('radio', { name: 'in every scenario' }).click();
    await page.getByRole('button', { name: 'Add a second fill on top of the fill' }).click();
    expect(fills()).toEqual([1, 1, 2, 2]);
    await page.getByRole('button', { name: 'Remove second fill of joists' }).click();
    const menu = page.getByRole('group', { name: 'Remove second fill of joists' });
    await menu.getByRole('radio', { name: 'in “Ceiling on channel” only' }).click();
    await menu.getByRole('button', { name: 'Remove second fill of joists' }).click();
    expect(fills()).toEqual([1, 1, 1, 2]);
  });

  test('are removed with what belongs to them, which is said before it goes', async () => {
    const { notebook } = await mountOpen(oneScenario());
    await page.getByRole('button', { name: 'Remove ceiling', exact: true }).click();
    const menu = page.getByRole('group', { name: 'Remove ceiling', exact: true });
    await expect.element(menu).toHaveTextContent('“joists” goes with it: the joists, the fill between them');
    await expect.element(menu).toHaveTextContent('the floor is computed without any');
    expect(names(notebook())).toEqual(['deck', 'joists', 'ceiling']);
    await menu.getByRole('button', { name: 'Remove ceiling' }).click();
    expect(names(notebook())).toEqual(['deck']);
  });

  test('say that joists go where the cavity itself is removed or made a mat', async () => {
    const { edits } = await mountOpen(oneScenario());
    await page.getByRole('button', { name: 'Remove joists', exact: true }).click();
    await expect
      .element(page.getByRole('group', { name: 'Remove joists', exact: true }))
      .toHaveTextContent('“deck” and “ceiling” then lie on each other, and the joists are gone.');
    await userEvent.keyboard('{Escape}');
    await page.getByRole('button', { name: 'More for joists' }).click();
    await expect.element(page.getByRole('button', { name: 'Make it a mat: its joists go' })).toBeVisible();
    expect(edits).toEqual([]);
  });

  test('get sheets, which move and go', async () => {
    const { notebook, list } = await mountOpen();
    await page.getByRole('button', { name: 'Add at ceiling' }).click();
    await page.getByRole('button', { name: 'Add a sheet underneath' }).click();
    const sheets = () => (notebook().stacks[0]!.layers[2] as LeafLayer).sheets.map((s) => s.thickness_m);
    expect(sheets()).toEqual([0.0159, 0.0127]);
    await page.getByRole('button', { name: 'Move sheet 2 of ceiling up' }).click();
    expect(sheets()).toEqual([0.0127, 0.0159]);
    expect(list.shadowRoot!.activeElement).toBe(
      page.getByRole('button', { name: 'Move sheet 1 of ceiling down' }).element(),
    );
    await page.getByRole('button', { name: 'Remove sheet 1 of ceiling' }).click();
    await page
      .getByRole('group', { name: 'Remove sheet 1 of ceiling' })
      .getByRole('button', { name: 'Remove sheet 1 of ceiling' })
      .click();
    expect(sheets()).toEqual([0.0159]);
  });

  test('begin with sizes that are round in the units that are shown', async () => {
    const { list } = await mountOpen({ ...oneScenario(), units: 'inch-pound' });
    await page.getByRole('button', { name: 'Add at deck' }).click();
    await page.getByRole('button', { name: 'Add a floating slab on a mat above' }).click();
    await page.getByRole('button', { name: 'Add at ceiling' }).click();
    await page.getByRole('button', { name: 'Add a ceiling below, under a cavity' }).click();
    await list.updateComplete;
    const shown = (path: FieldPath) => {
      const found = [...list.shadowRoot!.querySelectorAll('stack-field')].find((f) => f.path.join() === path.join())!;
      return found.shadowRoot!.querySelector('input')?.value;
    };
    expect(shown(['layers', 0, 'sheets', 0, 'thickness_m'])).toBe('1 1/2 in');
    expect(shown(['layers', 1, 'thickness_m'])).toBe('3/8 in');
    const cavity = ['depth_m', 'joistWidth_m', 'joistSpacing_m', 'fillThickness_m'];
    expect(cavity.map((name) => shown(['layers', 5, name]))).toEqual(['4 in', '1 1/2 in', '16 in', '2 in']);
  });

  test('a cavity becomes a mat and back', async () => {
    const { notebook } = await mountOpen();
    await page.getByRole('button', { name: 'More for joists' }).click();
    await page.getByRole('button', { name: 'Make it a mat' }).click();
    expect(notebook().stacks[0]!.layers[1]!.kind).toBe('mat');
  });

  test('light up in the drawing while their row has the pointer, and the other way round', async () => {
    const { element, list } = await mountOpen();
    list.shadowRoot!.querySelector('.layer')!.dispatchEvent(new PointerEvent('pointerenter'));
    await element.updateComplete;
    await drawings(element)[0]!.updateComplete;
    expect(drawings(element)[0]!.shadowRoot!.querySelectorAll('.lit').length).toBeGreaterThan(0);
    drawings(element)[0]!
      .shadowRoot!.querySelector('[data-layer="2"]')!
      .dispatchEvent(new PointerEvent('pointerover', { bubbles: true }));
    await element.updateComplete;
    await list.updateComplete;
    expect(list.shadowRoot!.querySelector('.layer [class~="lit"], .layer.lit')!.closest('[data-layer]')).toBe(
      list.shadowRoot!.querySelector('[data-layer="2"]'),
    );
  });
});

test('a floor outside of what was checked says so below its masses, in the units that are shown', async () => {
  const films = setStackField(
    practiceRoom({ active: 'hung', units: 'inch-pound' }),
    'floor',
    ['layers', 1, 'joistSpacing_m'],
    5,
  );
  await mount(films);
  const note = page.getByRole('note', { name: 'Outside what was checked' });
  await expect.element(note).toHaveTextContent('Ceiling on channel: joists 196.9 in apart (checked 16 to 24 in)');
});

describe('a layer in one scenario only', () => {
  const floorsOf = (notebook: Notebook, ids: readonly string[]) =>
    ids.map((id) => normaliseConstruction(resolveStack(notebook, id, 'floor')));
  const slabMenu = async () => {
    await page.getByRole('button', { name: 'Add at deck' }).click();
    return page.getByRole('group', { name: 'Add at deck' });
  };
  const rowsSaying = (list: HTMLElement, text: string) =>
    [...list.shadowRoot!.querySelectorAll('.layer')].filter((row) => row.textContent!.includes(text)).length;

  test('is what a fork gets unless told otherwise, and counts as added against the reference', async () => {
    const before = practiceRoom({ active: 'hung' });
    const { element, notebook, edits } = await mountOpen(before);
    const added = () => {
      const rows = [...element.shadowRoot!.querySelectorAll('.totals tbody tr')];
      const row = rows.find((r) => r.textContent!.includes('Ceiling on channel'))!;
      return Number.parseFloat(row.querySelectorAll('td')[1]!.textContent!);
    };
    const fill_kg_m2 = added();
    const menu = await slabMenu();
    await expect.element(menu.getByRole('radio', { name: 'in “Ceiling on channel” only' })).toBeChecked();
    await menu.getByRole('button', { name: 'Add a floating slab on a mat above' }).click();
    expect(edits).toEqual(['add a floating slab']);
    const others = ['base', 'slab', 'both'];
    expect(floorsOf(notebook(), others)).toEqual(floorsOf(before, others));
    expect(floorsOf(notebook(), ['hung'])[0]!.leaves).toHaveLength(3);
    await element.updateComplete;
    expect(added() - fill_kg_m2).toBeCloseTo(0.038 * 1760, 0);
  });

  test('is what every scenario gets where that is chosen, and from the reference', async () => {
    const { notebook } = await mountOpen(practiceRoom({ active: 'hung' }));
    const menu = await slabMenu();
    await menu.getByRole('radio', { name: 'in every scenario' }).click();
    await menu.getByRole('button', { name: 'Add a floating slab on a mat above' }).click();
    for (const { leaves } of floorsOf(notebook(), ['base', 'slab', 'hung', 'both'])) expect(leaves).toHaveLength(3);
  });

  test.each([
    ['hung', 'What is added stands in “Ceiling on channel” only', 'Whatever is forked from “Ceiling on channel” later'],
    [
      'slab',
      'in “Slab on top” only',
      'The forks that it has already stay as they are. Whatever is forked from “Slab on',
    ],
  ])('says what forks get of it: %s', async (active, choice, said) => {
    const { list } = await mountOpen(practiceRoom({ active }));
    const menu = await slabMenu();
    await expect.element(menu).toHaveTextContent(choice);
    await expect.element(menu).toHaveTextContent(said);
    await menu.getByRole('radio', { name: 'in every scenario' }).click();
    await list.updateComplete;
    await expect.element(menu).not.toHaveTextContent('later starts like it');
  });

  test('is what can differ, not the place of one: every button that moves, or turns a cavity, says so before', async () => {
    const { list } = await mountOpen(practiceRoom({ active: 'hung' }));
    const movers = [...list.shadowRoot!.querySelectorAll<HTMLElement>('[aria-label^="Move "], .grip')];
    expect(movers.length).toBeGreaterThan(6);
    for (const { title } of movers) expect(title).toMatch(/ in every scenario$/);
    await expect.element(page.getByText('Moving a layer, sheet or fill')).toHaveTextContent('changes every scenario.');
    await page.getByRole('button', { name: 'More for joists' }).click();
    await expect.element(page.getByRole('button', { name: 'Make it a mat, in every scenario' })).toBeVisible();
  });

  test('is no matter where there is one scenario', async () => {
    const { list } = await mountOpen(oneScenario());
    expect(list.shadowRoot!.querySelector('.moves')).toBeNull();
    expect(list.shadowRoot!.innerHTML).not.toContain('every scenario');
  });

  test('is every scenario’s where the reference is worked in', async () => {
    await mountOpen(practiceRoom({ active: 'base' }));
    await expect.element((await slabMenu()).getByRole('radio', { name: 'in every scenario' })).toBeChecked();
  });

  test('is taken out of this one only, says so in its row, and is put in again', async () => {
    const before = practiceRoom({ active: 'slab' });
    const { list, notebook, element } = await mountOpen(before);
    await page.getByRole('button', { name: 'Remove ceiling', exact: true }).click();
    const menu = page.getByRole('group', { name: 'Remove ceiling', exact: true });
    await expect.element(menu.getByRole('radio', { name: 'in “Slab on top” only' })).toBeChecked();
    await menu.getByRole('button', { name: 'Remove ceiling' }).click();
    expect(floorsOf(notebook(), ['slab'])[0]!.interlayers).toEqual([]);
    const others = ['base', 'hung', 'both'];
    expect(floorsOf(notebook(), others)).toEqual(floorsOf(before, others));
    await list.updateComplete;
    expect(rowsSaying(list, 'Not in “Slab on top”')).toBe(2);
    await page.getByRole('button', { name: 'Remove ceiling', exact: true }).click();
    await expect.element(page.getByRole('button', { name: 'Remove ceiling from every scenario' })).toBeVisible();
    // The signs that come with the pointer are fading in or out for a moment.
    await expect.poll(() => axeProblems(element)).toEqual([]);
    await userEvent.keyboard('{Escape}');
    await page.getByRole('button', { name: 'Put ceiling in, as in “As built”' }).click();
    expect(floorsOf(notebook(), ['slab'])).toEqual(floorsOf(before, ['slab']));
    await list.updateComplete;
    expect(rowsSaying(list, 'Not in “Slab on top”')).toBe(0);
  });
});

describe('materials of the notebook', () => {
  async function openMaterials(notebook = practiceRoom({ active: 'base' })) {
    const mounted = await mountOpen(notebook);
    await page.getByText("Materials of this notebook's own (").click();
    return mounted;
  }

  test('are added, described, and can then be chosen for a sheet', async () => {
    const mounted = await openMaterials();
    await page.getByRole('button', { name: 'Add a sheet material' }).click();
    await userEvent.fill(page.getByRole('textbox', { name: 'name', exact: true }), 'pressed straw');
    await userEvent.keyboard('{Tab}');
    await userEvent.fill(page.getByRole('group', { name: 'pressed straw' }).getByLabelText('density'), '25 lb/ft3');
    await userEvent.keyboard('{Tab}');
    const [material] = mounted.notebook().materials;
    expect(material).toMatchObject({ name: 'pressed straw', kind: 'sheet' });
    expect(material!.kind === 'sheet' && material!.density_kg_m3).toBeCloseTo(400.46, 1);
    const picker = (await field(mounted, ['layers', 2, 'sheets', 0, 'material'])).shadowRoot!.querySelector('select')!;
    await userEvent.selectOptions(picker, 'pressed straw');
    expect(resolveStack(mounted.notebook(), 'base', 'floor').layers[2]).toMatchObject({
      sheets: [{ name: 'pressed straw' }],
    });
    await page.getByRole('button', { name: 'Remove pressed straw' }).click();
    expect(mounted.notebook().materials).toHaveLength(1);
    await expect.element(page.getByRole('alert')).toHaveTextContent('must be unused');
  });

  test('are removed when nothing uses them', async () => {
    const mounted = await openMaterials();
    await page.getByRole('button', { name: 'Add a fibre' }).click();
    await page.getByRole('button', { name: 'Remove own fibre' }).click();
    expect(mounted.notebook().materials).toEqual([]);
    expect(await axeProblems(mounted.element)).toEqual([]);
  });
});

test('a mat takes the values of a known mat, and says where they come from', async () => {
  const { list, notebook } = await mountOpen();
  await page.getByRole('button', { name: 'Add at deck' }).click();
  await page.getByRole('button', { name: 'Add a floating slab on a mat above' }).click();
  await page.getByRole('button', { name: 'Take a known mat for mat' }).click();
  const [first] = MAT_PRODUCTS;
  await page.getByRole('button', { name: first!.name, exact: true }).click();
  expect(notebook().stacks[0]!.layers[1]).toMatchObject({
    dynamicStiffness_N_m3: first!.dynamicStiffness_N_m3,
    thickness_m: first!.thickness_m,
  });
  await list.updateComplete;
  expect(list.shadowRoot!.querySelector('.product')!.textContent).toContain(MATERIAL_SOURCES.mat[first!.key]);
});

test('a mat of one’s own says where its numbers come from, until the values of a known mat are taken', async () => {
  const { list, notebook, edits, element } = await mountOpen(oneScenario());
  await page.getByRole('button', { name: 'Add at deck' }).click();
  await page.getByRole('button', { name: 'Add a floating slab on a mat above' }).click();
  const mat = () => notebook().stacks[0]!.layers[1] as MatLayer;
  const box = page.getByRole('textbox', { name: 'where its numbers come from' });
  const say = async (text: string) => {
    await userEvent.fill(box, text);
    await userEvent.keyboard('{Enter}');
  };
  await say('  data sheet of the maker, invented ');
  expect(mat().source).toBe('data sheet of the maker, invented');
  expect(edits.at(-1)).toBe('source of mat');
  await say('');
  expect(mat()).not.toHaveProperty('source');
  await say('estimate, invented');
  expect(notebookProblems(notebook())).toEqual([]);
  expect(await axeProblems(element)).toEqual([]);

  await page.getByRole('button', { name: 'Take a known mat for mat' }).click();
  await page.getByRole('button', { name: MAT_PRODUCTS[0]!.name, exact: true }).click();
  expect(mat()).not.toHaveProperty('source');
  await list.updateComplete;
  expect(list.shadowRoot!.querySelector('.mat-source')).toBeNull();
});

test('a stack is copied, and removed again', async () => {
  const { notebook } = await mountOpen();
  await page.getByRole('button', { name: 'More for Floor of the practice room' }).click();
  await page.getByRole('button', { name: 'Add a copy of this stack to the notebook' }).click();
  expect(notebook().stacks.map((s) => s.name)).toEqual([
    'Floor of the practice room',
    'Floor of the practice room, copy',
  ]);
  expect(resolveStack(notebook(), 'slab', notebook().stacks[1]!.id)).toEqual(resolveStack(notebook(), 'slab', 'floor'));
});

test('the fields of all sheets stand under each other, in a leaf of one sheet and in leaves of more', async () => {
  await page.viewport(1280, 900);
  const { list } = await mountOpen();
  const lefts = (field: string) =>
    [...list.shadowRoot!.querySelectorAll(`.sheet stack-field.${field}`)].map((f) => f.getBoundingClientRect().left);
  const sheets = [...list.shadowRoot!.querySelectorAll('ul')].map((ul) => ul.querySelectorAll('.sheet').length);
  expect(new Set(sheets).size).toBeGreaterThan(1);
  for (const field of ['thickness_m', 'density_kg_m3']) expect(new Set(lefts(field)).size).toBe(1);
});

test('masses on springs appear on request and swing only when asked', async () => {
  const { element } = await mount();
  await page.getByRole('button', { name: 'Show as masses on springs' }).click();
  await expect.poll(() => element.shadowRoot!.querySelector('swing-row')?.shadowRoot).toBeTruthy();
  const row = element.shadowRoot!.querySelector('swing-row')!;
  const pictures = () => [...row.shadowRoot!.querySelectorAll('swing-picture')];
  await expect.poll(() => pictures().length).toBe(4);
  expect(pictures().map((p) => p.phase)).toEqual([0, 0, 0, 0]);
  const words = pictures().map((p) => p.shadowRoot!.querySelector('svg')!.getAttribute('aria-label'));
  expect(words[0]).toMatch(/^As built as masses on springs: deck of [\d.]+ kg\/m² on air and joists, ceiling of/);
  expect(words[2]).toContain(' on air and channel, ');
  await page.getByRole('button', { name: 'Swing' }).click();
  await expect.poll(() => pictures().every((p) => p.phase !== 0)).toBe(true);
  // A pressed button that takes the look of hovering is paper on paper.
  await page.getByRole('button', { name: 'Stop' }).hover();
  expect(await axeProblems(element)).toEqual([]);
  await page.getByRole('button', { name: 'Stop' }).click();
  await row.updateComplete;
  expect(pictures().map((p) => p.phase)).toEqual([0, 0, 0, 0]);
});

test.each([
  ['closed', false, practiceRoom()],
  ['open', true, practiceRoom({ active: 'slab' })],
  ['without a shown scenario', false, practiceRoom({ shown: [] })],
  ['with eight scenarios', true, percussionNotebook(8)],
] as const)('axe finds nothing wrong with a stack cell %s', async (_, open, notebook) => {
  const { element } = open ? await mountOpen(notebook) : await mount(notebook);
  await element.updateComplete;
  expect(await axeProblems(element)).toEqual([]);
});

test.each([360, 1600])('at %d px nothing is wider than the page, open and with eight scenarios', async (width) => {
  await page.viewport(width, 800);
  const { element } = await mountOpen(percussionNotebook(8));
  await expect.poll(() => drawings(element).length).toBe(8);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});
