import type { Browser, Locator, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { CELL_KINDS } from '#cells/cell-registry.ts';
import { practiceRoom } from '../browser/practice-room.ts';
import {
  card,
  cell,
  freshPage,
  launch,
  openNotebook,
  problemsOf,
  settled,
  shownNotebook,
  tabTo,
  title,
} from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** Text, parameters and ratings only: what is tested here is around the cells. */
function lightRoom() {
  const { cells } = practiceRoom();
  const [, parameters] = cells;
  return practiceRoom({
    cells: [
      { kind: 'commentary', id: 'welcome', folded: false, text: 'Welcome to the club.' },
      parameters!,
      cells.find((c) => c.kind === 'ratings')!,
    ],
  });
}

/** The light room in a fresh profile, computed. */
async function openRoom() {
  const opened = await freshPage(browser, inject('baseURL'));
  await opened.page.goto('/');
  await openNotebook(opened.page, lightRoom());
  return opened;
}

/** A way to work with the page. */
interface Hand {
  press(target: Locator): Promise<void>;
  undo(label: string): Promise<void>;
  redo(label: string): Promise<void>;
}

function mouse(page: Page): Hand {
  const named = (name: string) => page.getByRole('button', { name, exact: true });
  return {
    press: (target) => target.click(),
    undo: (label) => named(`Undo: ${label}`).click(),
    redo: (label) => named(`Redo: ${label}`).click(),
  };
}

function keyboard(page: Page): Hand {
  const can = (name: string) => expectSoon(page.getByRole('button', { name, exact: true })).toBeEnabled();
  return {
    async press(target) {
      await tabTo(page, target);
      await page.keyboard.press('Enter');
    },
    async undo(label) {
      await can(`Undo: ${label}`);
      await page.keyboard.press('Control+z');
    },
    async redo(label) {
      await can(`Redo: ${label}`);
      await page.keyboard.press('Control+Shift+z');
    },
  };
}

const HANDS = [
  ['the mouse', mouse],
  ['the keyboard alone', keyboard],
] as const;

/** Does something; undo gives the identical notebook back, redo the changed one. */
async function undoable(page: Page, hand: Hand, label: string, work: () => Promise<void>): Promise<void> {
  const before = await shownNotebook(page);
  await work();
  await expect.poll(() => shownNotebook(page), { message: label }).not.toBe(before);
  const after = await shownNotebook(page);
  await hand.undo(label);
  await expect.poll(() => shownNotebook(page), { message: `undo: ${label}` }).toBe(before);
  await hand.redo(label);
  await expect.poll(() => shownNotebook(page), { message: `redo: ${label}` }).toBe(after);
}

const cellTitles = (page: Page) =>
  page.locator('cell-frame').evaluateAll((all) => all.map((f) => f.shadowRoot!.querySelector('section')!.ariaLabel));

/** Chooses from the menu of a cell. */
async function arrange(page: Page, hand: Hand, title: string, what: string | RegExp): Promise<void> {
  await hand.press(page.getByRole('button', { name: `Arrange this cell: ${title}`, exact: true }));
  await hand.press(
    page.getByRole('group', { name: `Arrange this cell: ${title}` }).getByRole('button', { name: what }),
  );
}

describe.each(HANDS)('with %s', (_, handOf) => {
  const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

  test('cells of every kind are added, renamed, moved, folded, duplicated and deleted; undo and redo give back each state', async () => {
    const { context, page, problems } = await openRoom();
    const hand = handOf(page);
    const titles = () => expect.poll(() => cellTitles(page));

    for (const { kind, label } of CELL_KINDS) {
      await undoable(page, hand, `add ${label.toLowerCase()}`, async () => {
        await arrange(page, hand, 'Welcome to the club.', 'Add a cell above');
        const group = page.getByRole('group', { name: 'Kind of the new cell' });
        await hand.press(group.getByRole('button', { name: new RegExp(`^${label} `) }));
        await expectSoon(page.locator('cell-frame').first()).toHaveAttribute('kind', kind);
      });
      await hand.undo(`add ${label.toLowerCase()}`);
    }
    await titles().toEqual(['Welcome to the club.', 'Try it', 'Ratings']);

    await undoable(page, hand, 'title of the cell', async () => {
      const field = cell(page, 'Try it').getByRole('textbox', { name: 'Title of the cell' });
      await tabTo(page, field);
      await page.keyboard.press('Control+a');
      await page.keyboard.type('Drag these');
      await page.keyboard.press('Enter');
    });
    await undoable(page, hand, 'text', async () => {
      await hand.press(button(page, 'Edit the text'));
      await expectSoon(page.getByRole('textbox', { name: 'Text, in Markdown' })).toBeFocused();
      await page.keyboard.press('Control+End');
      await page.keyboard.type(' Come **in**.');
      await page.keyboard.press('Escape');
      await expectSoon(page.locator('commentary-cell strong')).toHaveText('in');
    });
    const text = 'Welcome to the club. Come in.';
    await undoable(page, hand, `move “${text}”`, () => arrange(page, hand, text, /^Move down/));
    await titles().toEqual(['Drag these', text, 'Ratings']);
    await undoable(page, hand, 'move “Ratings”', () => arrange(page, hand, 'Ratings', /^Move up/));
    await titles().toEqual(['Drag these', 'Ratings', text]);
    await undoable(page, hand, 'fold “Drag these”', () => arrange(page, hand, 'Drag these', 'Fold'));
    await expectSoon(page.getByRole('slider')).toHaveCount(0);
    await undoable(page, hand, 'unfold “Drag these”', () => hand.press(button(page, 'Unfold Drag these')));
    await expectSoon(page.getByRole('slider')).toHaveCount(2);
    await undoable(page, hand, 'duplicate “Ratings”', () => arrange(page, hand, 'Ratings', 'Duplicate'));
    await titles().toEqual(['Drag these', 'Ratings', 'Ratings', text]);
    await undoable(page, hand, `delete “${text}”`, () => arrange(page, hand, text, 'Delete'));
    await titles().toEqual(['Drag these', 'Ratings', 'Ratings']);
    await settled(page);
    expect(problems).toEqual([]);
    await context.close();
  });

  test('scenarios are forked, named, hidden, made the reference, moved, merged, duplicated and removed; undo and redo give back each state', async () => {
    const { context, page, problems } = await openRoom();
    const hand = handOf(page);
    const more = async (name: string) => {
      const toggle = button(page, `More for ${name}`);
      if ((await toggle.getAttribute('aria-expanded')) === 'false') await hand.press(toggle);
    };
    const names = () =>
      expect.poll(() => page.locator('scenario-rail .name').evaluateAll((all) => all.map((n) => n.textContent)));

    await undoable(page, hand, 'fork “Both”', () => hand.press(button(page, 'Fork Both')));
    await expectSoon(card(page, 'Both 2')).toContainText('the same as Both');
    await undoable(page, hand, 'rename “Both 2”', async () => {
      await more('Both 2');
      const field = page.getByRole('textbox', { name: 'Name of the scenario Both 2' });
      await tabTo(page, field);
      await page.keyboard.press('Control+a');
      await page.keyboard.type('Heavier still');
      await page.keyboard.press('Enter');
    });
    await undoable(page, hand, 'slab thickness', async () => {
      const field = page.getByRole('textbox', { name: 'slab thickness, typed' });
      await tabTo(page, field);
      await page.keyboard.press('Control+a');
      await page.keyboard.type('76 mm');
      await page.keyboard.press('Enter');
      await button(page, 'Undo: slab thickness').focus();
    });
    await expectSoon(card(page, 'Heavier still')).toContainText('slab thickness 38 → 76 mm');
    await undoable(page, hand, 'hide “Slab on top”', () => hand.press(button(page, 'Show Slab on top')));
    await expectSoon(page.getByRole('columnheader', { name: 'Slab on top' })).toHaveCount(0);
    await undoable(page, hand, 'show “Slab on top”', () => hand.press(button(page, 'Show Slab on top')));
    await expectSoon(page.getByRole('columnheader', { name: 'Slab on top' })).toHaveCount(1);
    await undoable(page, hand, 'reference “Heavier still”', async () => {
      await more('Heavier still');
      await hand.press(button(page, 'Make it the reference'));
    });
    await expectSoon(card(page, 'Heavier still')).toContainText('reference');
    await undoable(page, hand, 'move “Heavier still”', () => hand.press(button(page, 'Move Heavier still up')));
    await names().toEqual(['As built', 'Slab on top', 'Ceiling on channel', 'Heavier still', 'Both']);
    await undoable(page, hand, 'merge slab thickness into “Both”', async () => {
      await more('Heavier still');
      await hand.press(button(page, 'Merge into Both: slab thickness'));
    });
    await expectSoon(card(page, 'Heavier still')).toContainText('the same as Both');
    await expectSoon(card(page, 'Both')).toContainText('slab thickness 38 → 76 mm');
    await undoable(page, hand, 'take back slab thickness', async () => {
      await more('Both');
      await hand.press(button(page, 'Take back slab thickness'));
    });
    await undoable(page, hand, 'duplicate “Both”', async () => {
      await more('Both');
      await hand.press(button(page, 'Duplicate, independent'));
    });
    await undoable(page, hand, 'remove “Both”', async () => {
      await more('Both');
      await hand.press(button(page, 'Remove Both'));
    });
    await expectSoon(card(page, 'Both')).toHaveCount(0);
    await settled(page);
    expect(problems).toEqual([]);
    await context.close();
  });
});

test('cells and scenarios are dragged to another place', async () => {
  const { context, page, problems } = await openRoom();
  await undoable(page, mouse(page), 'move “Try it”', async () => {
    await cell(page, 'Try it').hover();
    await cell(page, 'Try it')
      .locator('.grip')
      .first()
      .dragTo(cell(page, 'Welcome to the club.'), {
        targetPosition: { x: 200, y: 4 },
      });
  });
  expect(await cellTitles(page)).toEqual(['Try it', 'Welcome to the club.', 'Ratings']);
  await undoable(page, mouse(page), 'move “Both”', () =>
    card(page, 'Both').dragTo(card(page, 'Slab on top'), { sourcePosition: { x: 120, y: 60 } }),
  );
  expect(await page.locator('scenario-rail .name').allTextContents()).toEqual([
    'As built',
    'Both',
    'Slab on top',
    'Ceiling on channel',
  ]);
  expect(problems).toEqual([]);
  await context.close();
});

test('Alt with an arrow moves the cell or the scenario that has the focus; arrows choose the scenario to work in', async () => {
  const { context, page, problems } = await openRoom();
  const hand = keyboard(page);
  await undoable(page, hand, 'move “Try it”', async () => {
    await tabTo(page, page.getByRole('button', { name: 'Arrange this cell: Try it' }));
    await page.keyboard.press('Alt+ArrowUp');
    await expectSoon(page.getByRole('button', { name: 'Arrange this cell: Try it' })).toBeFocused();
  });
  await undoable(page, hand, 'move “Slab on top”', async () => {
    await tabTo(page, page.getByRole('radio', { name: 'Slab on top' }));
    await page.keyboard.press('Alt+ArrowDown');
    await expectSoon(page.getByRole('radio', { name: 'Slab on top' })).toBeFocused();
  });
  await tabTo(page, page.getByRole('radio', { name: 'Slab on top' }));
  await page.keyboard.press('ArrowDown');
  await expectSoon(page.getByRole('radio', { name: 'Both' })).toBeChecked();
  await expectSoon(page.locator('parameters-cell').getByText('Working in')).toContainText('Both');
  expect(problems).toEqual([]);
  await context.close();
});

test('what is being typed stays while the page changes around it', async () => {
  const { context, page, problems } = await openRoom();
  await page.getByRole('button', { name: 'Fork Both' }).click();
  const fields = [
    title(page),
    cell(page, 'Try it').getByRole('textbox', { name: 'Title of the cell' }),
    page.getByRole('textbox', { name: 'slab thickness, typed' }),
  ];
  for (const field of fields)
    for (const step of ['Undo: fork “Both”', 'Redo: fork “Both”']) {
      await field.click();
      await page.keyboard.press('Control+a');
      await page.keyboard.type('half a w');
      // Pressed by script, so that the focus stays where it is.
      await page.getByRole('button', { name: step, exact: true }).evaluate((button: HTMLElement) => button.click());
      await expectSoon(card(page, 'Both 2')).toHaveCount(step.startsWith('Undo') ? 0 : 1);
      await settled(page);
      await expectSoon(field).toHaveValue('half a w');
      await field.press('Escape');
      await expectSoon(field).not.toHaveValue('half a w');
    }
  expect(problems).toEqual([]);
  await context.close();
});

test('of two tabs on one notebook one writes and the other follows; either may take over, or go on with a copy', async () => {
  const { context, page: first, problems } = await freshPage(browser, inject('baseURL'));
  await first.goto('/');
  await openNotebook(first, lightRoom());
  const second = await context.newPage();
  const others = problemsOf(second);
  await second.goto(first.url());
  const banner = second.getByRole('region', { name: 'Read only' });
  await expectSoon(banner).toBeVisible();
  await expectSoon(second.getByRole('heading', { level: 1 })).toHaveText('Percussion above the reading room');

  await first.getByRole('button', { name: 'Fork Both' }).click();
  await expectSoon(card(second, 'Both 2')).toBeVisible();
  await banner.getByRole('button', { name: 'Work here instead' }).click();
  await expectSoon(banner).toBeHidden();
  await expectSoon(first.getByRole('region', { name: 'Read only' })).toBeVisible();
  await title(second).fill('Taken over');
  await title(second).press('Enter');
  await expectSoon(first.getByRole('heading', { level: 1 })).toHaveText('Taken over');
  expect(await shownNotebook(first)).toBe(await shownNotebook(second));

  await first.getByRole('button', { name: 'Work on a copy' }).click();
  await expectSoon(title(first)).toHaveValue('Taken over, copy');
  await first.getByRole('button', { name: 'Fork Both', exact: true }).click();
  await first.getByRole('button', { name: 'Notebooks' }).click();
  await expectSoon(
    first
      .getByRole('list', { name: 'Notebooks in this browser' })
      .getByRole('button', { name: /^Taken over(, copy)?$/ }),
  ).toHaveCount(2);
  await expectSoon(card(second, 'Both 3')).toHaveCount(0);
  expect([...problems, ...others]).toEqual([]);
  await context.close();
});

describe('a worker', () => {
  const ratings = (page: Page) => page.locator('ratings-cell').getByRole('row', { name: /STC/ });
  const WORKER = /\/predict\.worker-[^/]*\.js$/;

  test('that does not start is told, started again, and everything is computed', async () => {
    const { context, page, problems } = await freshPage(browser, inject('baseURL'));
    let failures = 1;
    await page.route(WORKER, (route) => (failures-- > 0 ? route.abort() : route.continue()));
    await page.goto('/');
    await expectSoon(page.getByRole('alert').filter({ hasText: 'A calculation stopped' })).toBeVisible();
    await expectSoon(ratings(page)).toContainText(/\d\d/);
    await settled(page);
    expect(problems.filter((p) => !p.includes('ERR_FAILED'))).toEqual([]);
    await context.close();
  });

  test('that never starts leaves the page at work, and “Compute again” catches up once it can', async () => {
    const { context, page } = await freshPage(browser, inject('baseURL'));
    let broken = true;
    await page.route(WORKER, (route) => (broken ? route.abort() : route.continue()));
    await page.goto('/');
    await openNotebook(page, lightRoom());
    await expectSoon(page.locator('ratings-cell')).toContainText('As built: ');
    await page.getByRole('button', { name: 'Fork Both' }).click();
    await expectSoon(card(page, 'Both 2')).toBeVisible();
    broken = false;
    await page.getByRole('button', { name: 'Compute again' }).click();
    await expectSoon(ratings(page).getByRole('cell')).toHaveText(Array.from({ length: 5 }, () => /\d\d/));
    await context.close();
  });

  test('that dies of an error of its own is replaced: the next change is computed', async () => {
    const { context, page, problems } = await openRoom();
    const before = await ratings(page).textContent();
    const workers = page.workers();
    const gone = Promise.all(workers.map((worker) => worker.waitForEvent('close')));
    for (const worker of workers)
      await worker.evaluate(() => {
        setTimeout(() => {
          throw new Error('out of memory');
        });
      });
    await gone;
    const typed = page.getByRole('textbox', { name: 'slab thickness, typed' });
    await typed.fill('90 mm');
    await typed.press('Enter');
    await expectSoon(ratings(page)).not.toHaveText(before!);
    await settled(page);
    expect(workers.length).toBeGreaterThan(0);
    expect(problems.filter((p) => !p.includes('out of memory'))).toEqual([]);
    await context.close();
  });
});

test.each(['somebody works in it', 'it is printed'])(
  'a cell that waits out of sight is up to date as soon as %s',
  async (what) => {
    const { context, page, problems } = await freshPage(browser, inject('baseURL'));
    await page.goto('/');
    await settled(page);
    const typed = page.getByRole('textbox', { name: 'slab thickness, typed' });
    await expectSoon(typed).toHaveValue('38 mm');
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await page.waitForTimeout(300);
    const radio = await page.getByRole('radio', { name: 'Existing floor' }).first().elementHandle();
    // In one go: a moment later it would be up to date by itself.
    const values = await typed.evaluate(
      async (input: HTMLInputElement, { radio, what }) => {
        const task = () => new Promise((done) => setTimeout(done));
        (radio as HTMLElement).click();
        await task();
        const before = input.value;
        if (what === 'it is printed') dispatchEvent(new Event('beforeprint'));
        else {
          input.focus({ preventScroll: true });
          await task();
        }
        return [before, input.value];
      },
      { radio, what },
    );
    expect(values).toEqual(['38 mm', '0 mm']);
    expect(problems).toEqual([]);
    await context.close();
  },
);
