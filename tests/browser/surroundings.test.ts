import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/stack/stack-cell.ts';
import { predict } from '#src/acoustics/predict.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { FlankingWall, Notebook } from '#src/notebook/types.ts';
import { northWall } from '../notebook/north-wall.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

async function mountOpen(notebook = practiceRoom({ active: 'base' })) {
  const mounted = await mountCell(document.createElement('stack-cell'), notebook, 'section');
  mounted.element.shadowRoot!.querySelector<HTMLDetailsElement>('details.layers')!.open = true;
  await userEvent.click(page.getByText('Ways past the floor (', { exact: false }));
  await expect.element(choice('ordinary')).toBeVisible();
  return mounted;
}

const choice = (name: string) => page.getByRole('radio', { name, exact: true });
const walls = (notebook: Notebook) => notebook.flanking.walls ?? [];
const withWall = (wall: Partial<FlankingWall>): Notebook =>
  practiceRoom({
    active: 'base',
    flanking: {
      kind: 'by the walls',
      R500_dB: 58,
      slope_dB_per_octave: 3,
      walls: [{ ...northWall(0.24), ...wall } as FlankingWall],
    },
  });

/** The surroundings come after the layers, which have fields of the same names. */
async function typed(name: string, text: string): Promise<void> {
  await userEvent.fill(page.getByRole('textbox', { name, exact: true }).last(), text);
  await userEvent.keyboard('{Enter}');
}

test('stands as a line under the drawing, from which it can be changed', async () => {
  const { element } = await mountCell(document.createElement('stack-cell'), practiceRoom(), 'section');
  await expect.element(page.getByText('ordinary walls, assumed; no gaps', { exact: false }).first()).toBeVisible();
  await userEvent.click(page.getByRole('button', { name: 'Change these ways' }));
  await expect.element(choice('ordinary')).toBeVisible();
  const surroundings = element.shadowRoot!.querySelector('stack-surroundings')!;
  const chosen = () => surroundings.shadowRoot!.querySelector('flanking-choice')!.shadowRoot!.activeElement;
  await expect.poll(chosen).toBe(choice('ordinary').element());
});

describe('what goes around the floor', () => {
  test('is chosen and explained, the assumed value with it', async () => {
    const { notebook } = await mountOpen();
    await expect.element(choice('ordinary')).toBeChecked();
    await expect.element(page.getByText('below 58 dB at 500 Hz', { exact: false })).toBeVisible();
    await userEvent.click(page.getByText('well isolated', { exact: true }));
    expect(notebook().flanking.kind).toBe('well isolated');
    await expect.element(page.getByText('below 68 dB at 500 Hz', { exact: false })).toBeVisible();
    await userEvent.click(choice('none'));
    expect(resolveStack(notebook(), 'base', 'floor')).not.toHaveProperty('flanking');
  });

  test('is chosen by the arrow keys too', async () => {
    const { notebook } = await mountOpen();
    (choice('ordinary').element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(notebook().flanking.kind).toBe('weak');
  });

  test('may be a limit of one’s own', async () => {
    const { notebook } = await mountOpen();
    await userEvent.click(page.getByText('own limit', { exact: true }));
    await typed('limit at 500 Hz', '61 dB');
    await typed('more per octave', '2');
    expect(resolveStack(notebook(), 'base', 'floor').flanking).toEqual({ R500_dB: 61, slope_dB_per_octave: 2 });
  });

  test('by the walls begins with one for each side of the floor, which go on being kept', async () => {
    const { notebook } = await mountOpen();
    await userEvent.click(page.getByText('by the walls', { exact: true }));
    expect(walls(notebook()).map((w) => [w.name, w.junctionLength_m])).toEqual([
      ['north wall', 4],
      ['south wall', 4],
      ['east wall', 2.5],
      ['west wall', 2.5],
    ]);
    expect(walls(notebook())[0]!.junction).toBe('joists');
    expect(notebookProblems(notebook())).toEqual([]);
    await userEvent.click(page.getByText('weak', { exact: true }));
    await userEvent.click(page.getByText('by the walls', { exact: true }));
    expect(walls(notebook())).toHaveLength(4);
  });
});

describe('a wall', () => {
  test('tells its mass and rating, and follows its fields', async () => {
    const { notebook } = await mountOpen(withWall({}));
    await expect.element(page.getByText('420 kg/m², Rw', { exact: false })).toBeVisible();
    await typed('thickness', '115 mm');
    await typed('length along the floor', '3.2 m');
    expect(walls(notebook())[0]).toMatchObject({ thickness_m: 0.115, junctionLength_m: 3.2 });
    await expect.element(page.getByText('201 kg/m², Rw', { exact: false })).toBeVisible();
  });

  test('of another make starts with the mass and rating that the old one had', async () => {
    const { notebook } = await mountOpen(withWall({}));
    await userEvent.selectOptions(page.getByRole('combobox', { name: 'made of' }), 'rated');
    const [rated] = walls(notebook());
    expect(rated).toMatchObject({ kind: 'rated', surfaceMass_kg_m2: 420 });
    await typed('Rw', '45');
    expect(walls(notebook())[0]).toMatchObject({ Rw_dB: 45 });
    await expect.element(page.getByText('420 kg/m², Rw 45 dB')).toBeVisible();
    await userEvent.selectOptions(page.getByRole('combobox', { name: 'made of' }), 'concrete');
    expect(walls(notebook())[0]).toMatchObject({ kind: 'homogeneous', material: 'concrete' });
    expect(notebookProblems(notebook())).toEqual([]);
  });

  test('asks for K only where it is stated', async () => {
    const { notebook } = await mountOpen(withWall({}));
    expect(page.getByRole('textbox', { name: 'K straight on' }).elements()).toEqual([]);
    await userEvent.selectOptions(page.getByRole('combobox', { name: 'meets the floor as' }), 'measured');
    await typed('K straight on', '12');
    expect(walls(notebook())[0]).toMatchObject({ junction: 'measured', straightK_dB: 12 });
  });

  test('is added and removed, and what it lets past changes the prediction', async () => {
    const { notebook } = await mountOpen(withWall({ kind: 'rated', surfaceMass_kg_m2: 100, Rw_dB: 35 } as never));
    const one = predict(resolveStack(notebook(), 'both', 'floor')).ratings.STC;
    await userEvent.click(page.getByRole('button', { name: 'Add a wall' }));
    expect(walls(notebook())).toHaveLength(2);
    await userEvent.click(page.getByRole('button', { name: 'Remove north wall' }));
    expect(walls(notebook()).map((w) => w.name)).toEqual(['wall 2']);
    expect(predict(resolveStack(notebook(), 'both', 'floor')).ratings.STC).toBeGreaterThan(one);
    await userEvent.click(page.getByRole('button', { name: 'Remove wall 2' }));
    await expect.element(page.getByText('No wall is described', { exact: false })).toBeVisible();
  });
});

describe('gaps', () => {
  test('are added, measured in the notebook’s units, and removed', async () => {
    const { notebook } = await mountOpen();
    await userEvent.click(page.getByRole('button', { name: 'Add a slit' }));
    await typed('width', '2 mm');
    await userEvent.click(page.getByRole('button', { name: 'Add a hole' }));
    await typed('diameter', '50 mm');
    expect(resolveStack(notebook(), 'base', 'floor').leaks).toEqual([
      { name: 'gap at the wall', width_m: 0.002, length_m: 4, depth_m: 0.27 },
      { name: 'pipe penetration', width_m: 0.05, depth_m: 0.27 },
    ]);
    await userEvent.click(page.getByRole('button', { name: 'Remove gap at the wall' }));
    expect(notebook().stacks[0]!.leaks!.map((l) => l.name)).toEqual(['pipe penetration']);
    expect(notebookProblems(notebook())).toEqual([]);
  });

  test('begin as deep as the floor, and say where they are not', async () => {
    const { element, notebook } = await mountOpen();
    await userEvent.click(page.getByRole('button', { name: 'Add a slit' }));
    const remark = page.getByText('does not follow the floor', { exact: false });
    expect(remark.elements()).toEqual([]);
    element.notebook = { ...notebook(), active: 'both' };
    await expect
      .element(remark)
      .toHaveTextContent('Its depth, 270 mm, does not follow the floor, which is 320.6 mm high in this scenario.');
    await typed('depth', '50 mm');
    await expect.element(remark).toHaveTextContent('Its depth, 50 mm,');
  });

  test('can be sealed in one scenario only', async () => {
    const { notebook, element } = await mountOpen();
    await userEvent.click(page.getByRole('button', { name: 'Add a slit' }));
    element.notebook = { ...notebook(), active: 'both' };
    await element.updateComplete;
    const forked = element.notebook;
    let edited: Notebook | undefined;
    element.addEventListener('notebook-edit', (event) => {
      edited = event.edit(forked);
    });
    await typed('width', '0 mm');
    expect(resolveStack(edited!, 'both', 'floor').leaks![0]!.width_m).toBe(0);
    expect(resolveStack(edited!, 'base', 'floor').leaks![0]!.width_m).toBe(0.001);
  });

  test('stand with the caution about fire', async () => {
    await mountOpen();
    await expect
      .element(page.getByText('Closing a penetration for sound is not fire stopping', { exact: false }))
      .toBeVisible();
  });

  test('are found, opened and focused from elsewhere', async () => {
    const notebook = practiceRoom();
    const leaks = [{ kind: 'hole', id: 'pipe', name: 'pipe', diameter_m: 0.02, depth_m: 0.3 }] as const;
    const stacks = notebook.stacks.map((stack) => ({ ...stack, leaks }));
    const { element } = await mountCell(document.createElement('stack-cell'), { ...notebook, stacks }, 'section');
    await element.reveal(['leaks', 0, 'depth_m']);
    const surroundings = element.shadowRoot!.querySelector('stack-surroundings')!;
    const rows = surroundings.shadowRoot!.querySelector('leak-rows')!;
    const focused = rows.shadowRoot!.activeElement as HTMLElementTagNameMap['stack-field'];
    expect(focused.path).toEqual(['leaks', 0, 'depth_m']);
  });
});

test.each([360, 1600])('at %d px axe finds nothing and nothing is wider than the page', async (width) => {
  await page.viewport(width, 900);
  const { element } = await mountOpen(withWall({ junction: 'measured' }));
  await userEvent.click(page.getByRole('button', { name: 'Add a slit' }));
  await expect.element(page.getByRole('textbox', { name: 'width', exact: true }).last()).toBeVisible();
  expect(await axeProblems(element)).toEqual([]);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});
