import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#src/app/slab-spring-app.ts';
import type { SlabSpringApp } from '#src/app/slab-spring-app.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { type NotebookStore, notebookStore } from '#src/store/notebook-store.ts';
import { memoryKeyValues } from '../store/memory-key-values.ts';
import { axeProblems } from './axe-problems.ts';
import { deep } from './deep.ts';
import { practiceRoom } from './practice-room.ts';

const workers: Worker[] = [];
const BrowserWorker = globalThis.Worker;

/** Remembers what was started. */
class ObservedWorker extends BrowserWorker {
  constructor(url: string | URL, options?: WorkerOptions) {
    super(url, options);
    workers.push(this);
  }
}

let app: SlabSpringApp;
let store: NotebookStore;

/** The first picture in it, as drawn. */
function pictureIn(element: Element): string {
  const { style, children } = element.querySelector<SVGElement>('svg.line-sample')!;
  return [style.color, ...[...children].map((part) => part.outerHTML)].join(' ');
}

function focused(root: DocumentOrShadowRoot = document): Element | null {
  const element = root.activeElement;
  return element?.shadowRoot?.activeElement ? focused(element.shadowRoot) : element;
}

const cellTitles = () => deep('cell-frame').map((f) => f.shadowRoot!.querySelector('section')!.ariaLabel);
const stored = async (): Promise<Notebook> => {
  const loaded = await store.load('practice-room');
  if (!loaded.ok) throw new Error(loaded.problem.message);
  return loaded.value.history.present;
};
const computed = () => expect.poll(() => deep('.live.ready').length, { timeout: 5000 }).toBe(2);

/** The page without what other tests look at: text, sliders and ratings load quickly. */
function lightRoom(): Notebook {
  const room = practiceRoom();
  return { ...room, cells: room.cells.filter((c) => ['commentary', 'parameters', 'ratings'].includes(c.kind)) };
}

beforeEach(async () => {
  workers.length = 0;
  vi.stubGlobal('Worker', ObservedWorker);
  document.documentElement.lang = 'en';
  store = notebookStore(memoryKeyValues(), Date.now);
  await store.add(lightRoom());
  await store.markOpened('practice-room');
  app = document.createElement('slab-spring-app');
  app.store = store;
  document.body.append(app);
  await computed();
  await expect.poll(() => deep('cell-frame[pending]').length, { timeout: 5000 }).toBe(0);
});

afterEach(() => {
  vi.unstubAllGlobals();
});

test('the notebook that was open last stands there, computed', async () => {
  expect(document.title).toBe('Percussion above the reading room · Slab & Spring');
  await expect
    .element(page.getByRole('textbox', { name: 'Title of the notebook' }))
    .toHaveValue('Percussion above the reading room');
  expect(cellTitles()).toEqual([expect.stringContaining('The percussion club'), 'Try it', 'Ratings']);
});

test('dragging a slider changes the live value, and undo takes the whole drag back', async () => {
  const [live] = deep('.live');
  const before = live!.textContent;
  const slider = page.getByRole('slider', { name: 'slab thickness' });
  const input = slider.element() as HTMLInputElement;
  for (const value of [50, 60, 70, 90]) {
    input.value = String(value);
    input.dispatchEvent(new Event('input'));
    await new Promise((done) => requestAnimationFrame(done));
  }
  await expect.poll(() => live!.textContent).not.toBe(before);
  await page.getByRole('button', { name: 'Undo: slab thickness' }).click();
  await expect.poll(() => live!.textContent).toBe(before);
  await expect.element(slider).toHaveValue('38');
});

test('a dragged value and what it changes are shown in one picture, and until then the page says that it is busy', async () => {
  const input = page.getByRole('slider', { name: 'slab thickness' }).element() as HTMLInputElement;
  const typed = page.getByRole('textbox', { name: 'slab thickness, typed' }).element() as HTMLInputElement;
  const nextFrame = () => new Promise((done) => requestAnimationFrame(done));
  const stillComputed: number[] = [];
  for (const value of [52, 56, 60, 64, 68]) {
    input.value = String(value);
    input.dispatchEvent(new Event('input'));
    expect(app.ariaBusy).toBe('true');
    while (typed.value !== `${value} mm`) await nextFrame();
    expect(app.ariaBusy).toBe('false');
    stillComputed.push(deep('.live[aria-busy="true"]').length);
    await computed();
  }
  // A busy machine may need longer than the page waits, but not each time.
  expect(stillComputed).toContain(0);
});

test('a choice is shown at once, beside results that say that they are computed', async () => {
  const busy = () => deep('[aria-busy="true"]').length;
  await expect.poll(busy).toBe(0);
  (page.getByRole('radio', { name: 'isolation clips' }).element() as HTMLInputElement).click();
  // No task of a worker comes in between: what is seen now is what the click alone changed.
  for (let i = 0; i < 100 && busy() === 0; i++) await Promise.resolve();
  expect(busy()).toBeGreaterThan(0);
  expect(app.ariaBusy).toBe('false');
  await expect.poll(busy).toBe(0);
});

test('a worker that dies in the middle is replaced; the page says so and goes on', async () => {
  const input = page.getByRole('slider', { name: 'slab thickness' }).element() as HTMLInputElement;
  input.value = '71';
  input.dispatchEvent(new Event('input'));
  workers.at(-1)!.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' }));
  await expect.element(page.getByRole('alert')).toHaveTextContent('A calculation stopped (out of memory).');
  await computed();
  expect(workers.length).toBeGreaterThan(1);
});

test('a scenario forked above others leaves them the marks they had, in every cell, and gets one of its own', async () => {
  // Each marked scenario of the rail, of the sliders and of the ratings, with the picture that stands before its name.
  const rail = () =>
    new Map(deep('li[data-scenario]').map((card) => [card.getAttribute('data-scenario'), pictureIn(card)] as const));
  const heads = () =>
    deep('ratings-cell').flatMap((cell) => [...cell.shadowRoot!.querySelectorAll('th.number')].map(pictureIn));
  const columns = () =>
    deep('parameters-cell').flatMap((cell) =>
      [...cell.shadowRoot!.querySelectorAll('.heads .scenario')].map(pictureIn),
    );
  const before = rail();
  expect([...before.values()]).toEqual(heads());
  await page.getByRole('button', { name: 'Fork As built' }).click();
  await expect.poll(() => rail().size).toBe(before.size + 1);
  for (const [id, picture] of before) expect(rail().get(id)).toBe(picture);
  expect(new Set(rail().values()).size).toBe(rail().size);
  await expect.poll(heads).toEqual([...rail().values()]);
  expect(columns()).toEqual([...rail().values()]);
});

test('Ctrl+Z and Ctrl+Shift+Z go back and forth; inside a text field they are the field’s', async () => {
  await page.getByRole('radio', { name: 'Both' }).click();
  await page.getByRole('button', { name: 'Fork Both' }).click();
  await expect.element(page.getByRole('radio', { name: 'Both 2' })).toBeChecked();
  await userEvent.keyboard('{Control>}z{/Control}');
  expect(page.getByRole('radio', { name: 'Both 2' }).elements()).toEqual([]);
  await userEvent.keyboard('{Control>}{Shift>}z{/Shift}{/Control}');
  await expect.element(page.getByRole('radio', { name: 'Both 2' })).toBeChecked();
  await userEvent.click(page.getByRole('textbox', { name: 'Title of the notebook' }));
  await userEvent.keyboard('{Control>}z{/Control}');
  await expect.element(page.getByRole('radio', { name: 'Both 2' })).toBeInTheDocument();
});

test('a fork says that it is the same, then what differs, in words', async () => {
  await page.getByRole('button', { name: 'Fork Slab on top' }).click();
  await expect.element(page.getByText('the same as Slab on top')).toBeVisible();
  const entry = page.getByRole('textbox', { name: 'slab thickness, typed' });
  await userEvent.fill(entry, '76 mm');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByText('slab thickness 38 → 76 mm')).toBeVisible();
});

/** Chooses from the menu of a cell. */
async function arrange(cell: string, what: string): Promise<void> {
  await page.getByRole('button', { name: `Arrange this cell: ${cell}` }).click();
  const menu = page.getByRole('group', { name: `Arrange this cell: ${cell}` });
  await menu.getByRole('button', { name: what }).click();
}

test('scenarios are hidden, made the reference, renamed, moved and removed', async () => {
  await page.getByRole('button', { name: 'Show Ceiling on channel' }).click();
  await page.getByRole('button', { name: 'More for Both' }).click();
  await page.getByRole('button', { name: 'Make it the reference' }).click();
  await userEvent.fill(page.getByRole('textbox', { name: 'Name of the scenario Both' }), 'Slab and channel');
  await userEvent.keyboard('{Enter}');
  await page.getByRole('button', { name: 'Move Slab and channel up' }).click();
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await expect.element(page.getByRole('dialog', { name: 'Notebooks' })).toBeVisible();
  expect(await stored()).toMatchObject({ shown: ['base', 'slab', 'both'], reference: 'both' });
  expect((await stored()).scenarios.map((s) => s.name)).toEqual([
    'As built',
    'Slab on top',
    'Slab and channel',
    'Ceiling on channel',
  ]);
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Remove Slab and channel' }).click();
  await expect.element(page.getByRole('button', { name: 'Undo: remove “Slab and channel”' })).toBeEnabled();
});

test('a change can be merged into the parent', async () => {
  await page.getByRole('button', { name: 'More for Slab on top' }).click();
  await page.getByRole('button', { name: 'Merge into As built: slab thickness' }).click();
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await expect.element(page.getByRole('dialog', { name: 'Notebooks' })).toBeVisible();
  expect((await stored()).parameters[0]).toMatchObject({ value: 0.038 });
});

test('Alt and an arrow moves a scenario and a cell from the keyboard', async () => {
  (page.getByRole('radio', { name: 'Ceiling on channel' }).element() as HTMLElement).focus();
  await userEvent.keyboard('{Alt>}{ArrowUp}{/Alt}');
  await expect
    .poll(() => deep('[data-scenario]').map((e) => e.getAttribute('data-scenario')))
    .toEqual(['base', 'hung', 'slab', 'both']);
  (page.getByRole('button', { name: 'Arrange this cell: Ratings' }).element() as HTMLElement).focus();
  await userEvent.keyboard('{Alt>}{ArrowUp}{/Alt}');
  await expect.poll(() => cellTitles()[1]).toBe('Ratings');
  expect(focused()?.ariaLabel).toBe('Arrange this cell: Ratings');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => focused()?.textContent).toBe('Fold');
  await userEvent.keyboard('{ArrowDown}{Enter}');
  await expect.poll(() => cellTitles()[0]).toBe('Ratings');
  expect(focused()?.ariaLabel).toBe('Arrange this cell: Ratings');
});

test('the focus stays with the work: on the fork that was made, on the parent of what was removed', async () => {
  (page.getByRole('button', { name: 'Fork Both' }).element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => focused()?.closest('li')?.textContent).toContain('Both 2');
  await page.getByRole('button', { name: 'More for Both 2' }).click();
  await page.getByRole('button', { name: 'Remove Both 2' }).click();
  await expect.poll(() => focused()?.closest('li')?.querySelector('.name')?.textContent).toBe('Both');
});

test('cells are added, folded, duplicated and deleted, and undo brings them back', async () => {
  await arrange('Try it', 'Add a cell above');
  await page.getByRole('group', { name: 'Kind of the new cell' }).getByRole('button', { name: 'Text' }).click();
  await expect.poll(cellTitles).toEqual([expect.anything(), 'Text', 'Try it', 'Ratings']);
  await arrange('Text', 'Delete');
  await expect.poll(() => cellTitles().length).toBe(3);
  await expect.poll(() => focused()?.ariaLabel).toBe('Arrange this cell: Try it');
  await page.getByRole('button', { name: 'Undo: delete “Text”' }).click();
  await expect.poll(() => cellTitles().length).toBe(4);
  await arrange('Ratings', 'Duplicate');
  await expect.poll(() => cellTitles().length).toBe(5);
  await arrange('Try it', 'Fold');
  expect(page.getByRole('slider').elements()).toEqual([]);
  await page.getByRole('button', { name: 'Unfold Try it' }).click();
  await expect.element(page.getByRole('slider', { name: 'slab thickness' })).toBeVisible();
});

test('the title is edited where it stands; Escape takes it back', async () => {
  const title = page.getByRole('textbox', { name: 'Title of the notebook' });
  await userEvent.fill(title, 'Quiet reading');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => document.title).toBe('Quiet reading · Slab & Spring');
  await userEvent.fill(title, 'Something else');
  await userEvent.keyboard('{Escape}');
  await expect.element(title).toHaveValue('Quiet reading');
});

test('units are switched for the whole notebook without changing a value', async () => {
  const before = (await stored()).parameters;
  await page.getByText('inch-pound').click();
  await expect.element(page.getByRole('textbox', { name: 'slab thickness, typed' })).toHaveValue('1 1/2 in');
  expect((await stored()).parameters).toEqual(before);
});

test('a file that cannot be opened is refused with every reason, and the notebook stays', async () => {
  const transfer = new DataTransfer();
  transfer.items.add(new File(['{"format":"slab-and-spring","version":1,"title":3}'], 'bad.slabspring.json'));
  window.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, cancelable: true, bubbles: true }));
  await expect.element(page.getByRole('alert')).toHaveTextContent('“bad.slabspring.json” was not opened');
  expect(page.getByRole('alert').getByRole('listitem').elements().length).toBeGreaterThan(3);
  await expect
    .element(page.getByRole('textbox', { name: 'Title of the notebook' }))
    .toHaveValue('Percussion above the reading room');
  expect(await stored()).toMatchObject({ title: 'Percussion above the reading room' });
});

test('the shelf lists notebooks; one is duplicated, deleted and brought back', async () => {
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await page.getByRole('button', { name: 'Duplicate Percussion above the reading room' }).click();
  await expect.poll(() => document.title).toContain('copy');
  await page.getByRole('button', { name: 'Notebooks' }).click();
  const list = page.getByRole('list', { name: 'Notebooks in this browser' });
  await expect.poll(() => list.getByRole('listitem').elements().length).toBe(2);
  await page.getByRole('button', { name: 'Delete Percussion above the reading room', exact: true }).click();
  await expect.poll(() => list.getByRole('listitem').elements().length).toBe(1);
  // While the dialog is open the rest of the page is out of reach: what undoes it stands within.
  const dialog = page.getByRole('dialog', { name: 'Notebooks' });
  const notice = page.getByRole('status').filter({ hasText: 'was deleted' });
  const undo = notice.getByRole('button', { name: 'Undo', exact: true });
  await undo.click();
  await expect.element(dialog).toBeVisible();
  await expect.poll(() => list.getByRole('listitem').elements().length).toBe(2);
  // Left alone, the notice outlives the dialog.
  await page.getByRole('button', { name: 'Delete Percussion above the reading room', exact: true }).click();
  await expect.poll(() => list.getByRole('listitem').elements().length).toBe(1);
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await undo.click();
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await expect.poll(() => list.getByRole('listitem').elements().length).toBe(2);
});

test('a file whose title is here already is told apart from the other in the list, and keeps its title', async () => {
  const text = JSON.stringify({ ...lightRoom(), id: 'from-a-file' });
  const transfer = new DataTransfer();
  transfer.items.add(new File([text], 'room.slabspring.json', { type: 'application/json' }));
  window.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
  await expect.poll(() => location.href).toContain('from-a-file');
  expect(document.title).toBe('Percussion above the reading room · Slab & Spring');
  await page.getByRole('button', { name: 'Notebooks' }).click();
  const list = page.getByRole('list', { name: 'Notebooks in this browser' });
  const rows = () => list.getByRole('listitem').elements();
  await expect.poll(() => rows().length).toBe(2);
  expect(rows().map((row) => row.querySelector('button')!.textContent!.replace(/\s+/g, ' ').trim())).toEqual([
    'Percussion above the reading room (2)',
    'Percussion above the reading room (1)',
  ]);
  for (const row of rows()) expect(row.textContent).toMatch(/here since \d/);
  const kept = await store.load('from-a-file');
  expect(kept.ok && kept.value.history.present.title).toBe('Percussion above the reading room');
  expect(await axeProblems(app)).toEqual([]);

  await page.getByRole('button', { name: 'Delete Percussion above the reading room (1)', exact: true }).click();
  await expect.poll(() => rows().length).toBe(1);
  expect(rows()[0]!.textContent).not.toMatch(/\(\d\)|here since/);
  expect(await store.load('practice-room')).toMatchObject({ ok: false });
});

test('axe finds nothing on the page, with everything open', async () => {
  expect(await axeProblems(app)).toEqual([]);
  await page.getByRole('button', { name: 'More for Both' }).click();
  await page.getByRole('button', { name: 'Add a cell at the end' }).click();
  await page.getByRole('button', { name: 'Edit the text' }).click();
  expect(await axeProblems(app)).toEqual([]);
  await page.getByRole('button', { name: 'Notebooks' }).click();
  await expect.element(page.getByRole('dialog', { name: 'Notebooks' })).toBeVisible();
  expect(await axeProblems(app)).toEqual([]);
});
