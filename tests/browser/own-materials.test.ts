import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/stack/stack-cell.ts';
import { coveringDeltaLw_dB } from '#src/acoustics/covering-stiffness.ts';
import { laidImprovement } from '#src/acoustics/laid-improvement.ts';
import { notebookProblems } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

async function mountOpen() {
  const mounted = await mountCell(document.createElement('stack-cell'), practiceRoom({ active: 'base' }), 'section');
  mounted.element.shadowRoot!.querySelector<HTMLDetailsElement>('details.layers')!.open = true;
  await expect.element(page.getByRole('list', { name: 'Layers from the upper room down' })).toBeVisible();
  return mounted;
}

const NEW = 'Add a material of your own …';
const name = () => page.getByRole('textbox', { name: 'name', exact: true });
const source = () => page.getByRole('textbox', { name: 'where its numbers come from' });

test('a material of one’s own is made where a sheet’s material is picked, and described at once', async () => {
  const { notebook, element } = await mountOpen();
  await userEvent.selectOptions(page.getByRole('combobox', { name: 'material' }).last(), NEW);
  const [made] = notebook().materials;
  expect(resolveStack(notebook(), 'base', 'floor').layers[2]).toMatchObject({ sheets: [{ name: made!.name }] });
  const list = element.shadowRoot!.querySelector('own-materials')!.shadowRoot!;
  await expect.poll(() => list.activeElement).toBe(name().element());
  await expect.element(source()).toHaveAttribute('aria-invalid', 'true');
  await expect.element(page.getByText('Say where the numbers come from', { exact: false })).toBeVisible();
  expect(await axeProblems(element)).toEqual([]);

  await userEvent.fill(name(), 'club board');
  await userEvent.fill(source(), 'maker’s data sheet');
  await userEvent.keyboard('{Tab}');
  await expect.element(source()).toHaveAttribute('aria-invalid', 'false');
  expect(notebook().materials[0]).toMatchObject({ name: 'club board', source: 'maker’s data sheet' });
  expect(notebookProblems(notebook())).toEqual([]);
});

test('a fibre of one’s own is made where the fill is picked, even where that is a parameter', async () => {
  const { notebook } = await mountOpen();
  await userEvent.selectOptions(page.getByRole('combobox', { name: 'fill' }), NEW);
  const [made] = notebook().materials;
  expect(made).toMatchObject({ kind: 'fibre', source: '' });
  const cavity = resolveStack(notebook(), 'base', 'floor').layers[1];
  expect(cavity?.kind === 'cavity' && cavity.fill.map((f) => f.name)).toEqual([made!.name]);
  await expect.element(page.getByText('Used in parameter "cavity fill".')).toBeVisible();
});

test('a covering of one’s own is made where the covering is picked, with numbers in the reader’s units', async () => {
  const { notebook, element } = await mountOpen();
  const covering = () => page.getByRole('combobox', { name: 'covering' });
  await userEvent.selectOptions(covering(), NEW);
  const [made] = notebook().materials;
  expect(made).toMatchObject({ kind: 'covering', name: 'own covering', source: '' });
  expect(resolveStack(notebook(), 'base', 'floor').covering).toMatchObject({ name: 'own covering' });
  await expect.element(page.getByText('Used in stack "Floor of the practice room": floor covering.')).toBeVisible();

  const numbers = page.getByRole('group', { name: 'own covering' });
  const type = async (label: string, text: string) => {
    await userEvent.fill(numbers.getByRole('textbox', { name: label }), text);
    await userEvent.keyboard('{Enter}');
  };
  await type('surface mass', '1.4 lb/ft2');
  await type('thickness', '1/4 in');
  await type('contact stiffness', '900 N/mm');
  await type('where its numbers come from', 'maker’s data sheet');
  const { name, surfaceMass_kg_m2, ...rest } = resolveStack(notebook(), 'base', 'floor').covering!;
  expect(rest).toEqual({ thickness_m: 0.00635, contactStiffness_N_m: 900_000 });
  expect(surfaceMass_kg_m2).toBeCloseTo(6.835, 3);
  const told = covering().element().parentElement!.textContent;
  expect(told).toContain('maker’s data sheet');

  // 900 kN/m, and the stiffness that the whole model gives 24 dB with.
  const dLw = numbers.getByRole('textbox', { name: 'ΔLw on concrete' });
  await expect.element(dLw).toHaveValue(`${coveringDeltaLw_dB(900_000)} dB`);
  await type('ΔLw on concrete', '24');
  await expect.element(dLw).toHaveValue('24 dB');
  const { covering: soft } = resolveStack(notebook(), 'base', 'floor');
  expect(soft!.contactStiffness_N_m).toBeLessThan(600_000);
  const { dLw: predicted_dB } = laidImprovement(resolveStack(notebook(), 'base', 'floor'))!;
  expect(Math.abs(predicted_dB - 24)).toBeLessThanOrEqual(1);
  await type('ΔLw on concrete', '80');
  await expect
    .element(numbers.getByRole('alert'))
    .toHaveTextContent('ΔLw on concrete must be at most 50 dB, got 80 dB.');
  await type('ΔLw on concrete', '24');
  await expect.element(numbers.getByRole('alert')).not.toBeInTheDocument();

  await type('surface mass', '600 kg/m2');
  await expect
    .element(numbers.getByRole('alert'))
    .toHaveTextContent('surface mass must be at most 500 kg/m², got 600 kg/m2.');
  expect(resolveStack(notebook(), 'base', 'floor').covering).toMatchObject({ surfaceMass_kg_m2 });
  expect(await axeProblems(element)).toEqual([]);
  expect(notebookProblems(notebook())).toEqual([]);
});

test('one that is in use says where, and stays', async () => {
  const { notebook } = await mountOpen();
  await userEvent.selectOptions(page.getByRole('combobox', { name: 'material' }).last(), NEW);
  const remove = `Remove ${notebook().materials[0]!.name}`;
  await expect
    .element(page.getByText('Used in stack "Floor of the practice room": ceiling material.', { exact: true }))
    .toBeVisible();
  await userEvent.click(page.getByRole('button', { name: remove }));
  await expect.element(page.getByRole('alert')).toHaveTextContent('must be unused');
  expect(notebook().materials).toHaveLength(1);
});

test('a number that may be empty goes out of the material when it is emptied', async () => {
  const { notebook } = await mountOpen();
  await userEvent.selectOptions(page.getByRole('combobox', { name: 'material' }).last(), NEW);
  const across = page.getByRole('textbox', { name: "Young's modulus across", exact: false });
  await userEvent.fill(across, '1 GPa');
  await userEvent.keyboard('{Enter}');
  expect(notebook().materials[0]).toMatchObject({ youngsModulusAcross_Pa: 1e9 });
  await userEvent.clear(across);
  await userEvent.keyboard('{Enter}');
  expect(notebook().materials[0]).not.toHaveProperty('youngsModulusAcross_Pa');
});

test('a button that fades in is judged as it will be', async () => {
  const button = document.createElement('button');
  button.textContent = 'Remove';
  button.style.cssText = 'opacity: 0.1; transition: opacity 100s; color: #000; background: #fff';
  document.body.append(button);
  getComputedStyle(button).opacity;
  button.style.opacity = '1';
  expect(await axeProblems(button)).toEqual([]);
});
