import type { Browser, Page } from 'playwright';
import { expect as expectSoon } from 'playwright/test';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { practiceRoom } from '../browser/practice-room.ts';
import {
  card,
  cell,
  freshPage,
  launch,
  newNotebook,
  openFile,
  savedFile,
  settled,
  shownNotebook,
  title,
} from './page.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const textCell = (page: Page, name: string) => cell(page, name).locator('commentary-cell');

test('a teacher writes a lesson with live values, a folded answer, a formula and scenarios; the file carries it all', async () => {
  const { context, page, problems } = await freshPage(browser, inject('baseURL'));
  await page.goto('/');
  await newNotebook(page);
  await title(page).fill('Lesson: mass');
  await title(page).press('Enter');

  // Scenarios are prepared.
  await page.getByRole('button', { name: 'Fork As built' }).click();
  const thickness = page.getByRole('textbox', { name: 'slab thickness, typed' });
  await thickness.fill('240 mm');
  await thickness.press('Enter');
  await page.getByRole('button', { name: 'More for As built 2' }).click();
  const name = page.getByRole('textbox', { name: 'Name of the scenario As built 2' });
  await name.fill('Twice as thick');
  await name.press('Enter');
  await expectSoon(card(page, 'Twice as thick')).toContainText('slab thickness 120 → 240 mm');

  // The text is written with what the bar puts into it; the preview follows.
  await page.getByRole('button', { name: 'Arrange this cell: Parameters' }).click();
  await page.getByRole('button', { name: 'Add a cell above' }).click();
  await page.getByRole('group', { name: 'Kind of the new cell' }).getByRole('button', { name: /^Text/ }).click();
  await page.getByRole('button', { name: 'Edit the text' }).click();
  const editor = page.getByRole('textbox', { name: 'Text, in Markdown' });
  await expectSoon(editor).toBeFocused();
  await page.keyboard.type('# Twice the mass\n\nThe thin slab reaches STC ');
  const bar = page.getByRole('group', { name: 'Put into the text' });
  await bar.getByRole('combobox', { name: /^Value/ }).selectOption({ label: 'STC' });
  await bar.getByRole('combobox', { name: /^in\b/ }).selectOption({ label: 'As built' });
  await bar.getByRole('button', { name: 'Insert value' }).click();
  await expectSoon(editor).toBeFocused();
  await page.keyboard.type(', this one ');
  await bar.getByRole('combobox', { name: /^in\b/ }).selectOption({ label: 'the active scenario' });
  await bar.getByRole('button', { name: 'Insert value' }).click();
  await page.keyboard.type('.');
  await bar.getByRole('button', { name: 'Insert folded answer' }).click();
  await bar.getByRole('combobox', { name: /^Formula/ }).selectOption({ label: 'mass law, sound straight on' });
  await bar.getByRole('button', { name: 'Insert formula' }).click();
  const preview = page.getByRole('region', { name: 'Preview' });
  await expectSoon(preview.getByRole('heading', { name: 'Twice the mass', level: 2 })).toBeVisible();
  await expectSoon(preview.locator('.live.ready')).toHaveText([/^\d\d$/, /^\d\d$/]);
  await expectSoon(preview.locator('math')).toBeVisible();
  await editor.press('Escape');
  await expectSoon(page.getByRole('button', { name: 'Edit the text' })).toBeFocused();
  await settled(page);

  const lesson = textCell(page, 'Twice the mass');
  const [thin, active] = await lesson.locator('.live').allTextContents();
  expect(Number(active) - Number(thin)).toBeGreaterThan(5);
  await card(page, 'As built').getByRole('radio').check();
  await expectSoon(lesson.locator('.live')).toHaveText([thin!, thin!]);
  await card(page, 'Twice as thick').getByRole('radio').check();

  // The file is opened where nothing was before.
  const file = await savedFile(page);
  const pupil = await freshPage(browser, inject('baseURL'));
  await pupil.page.goto('/');
  await openFile(pupil.page, file);
  await expectSoon(title(pupil.page)).toHaveValue('Lesson: mass');
  await settled(pupil.page);
  const read = textCell(pupil.page, 'Twice the mass');
  await expectSoon(read.getByRole('heading', { name: 'Twice the mass' })).toBeVisible();
  await expectSoon(read.locator('.live')).toHaveText([thin!, active!]);
  await expectSoon(read.locator('math')).toBeVisible();
  await expectSoon(read.getByText('Because …')).toBeHidden();
  await read.getByText('the reason').click();
  await expectSoon(read.getByText('Because …')).toBeVisible();
  await expectSoon(card(pupil.page, 'Twice as thick').getByRole('radio')).toBeChecked();
  expect(await savedFile(pupil.page)).toBe(file);

  expect([...problems, ...pupil.problems]).toEqual([]);
  await context.close();
  await pupil.context.close();
});

const room = JSON.stringify(practiceRoom());
const REFUSED: readonly (readonly [string, string, readonly RegExp[]])[] = [
  ['broken JSON', `${room.slice(0, 400)},,`, [/must be JSON: .* expected, got .* \(line 1, column 401\)/]],
  ['bytes of a picture', '\u0089PNG\r\n\u001a\n', [/must be JSON/]],
  ['another kind of file', '{"format":"shopping","items":[]}', [/format must be "slab-and-spring", got "shopping"/]],
  ['a newer version', room.replace('"version":2', '"version":999'), [/version .*999/]],
  [
    'wrong types in several places',
    room.replace('"title":"Percussion above the reading room"', '"title":3').replace('"max":0.1', '"max":"much"'),
    [/\/title\b/, /\/parameters\/0\/max/],
  ],
  [
    'a hand at the prototype',
    room.replace('"title":', '"__proto__":{"polluted":true},"constructor":1,"title":'),
    [/key "__proto__" is not allowed/, /key "constructor" is not allowed/],
  ],
  ['references into nothing', room.replace('"active":"slab"', '"active":"gone"'), [/\/active/]],
  ['three megabytes', room.replace('The percussion', 'x'.repeat(3_000_000)), [/at most 2000000 bytes long, got 3/]],
  ['a hundred thousand brackets', '['.repeat(100_000) + ']'.repeat(100_000), [/nested at most 16 deep/]],
];

describe('a stranger’s file', () => {
  let opened: Awaited<ReturnType<typeof freshPage>>;
  let before: string;

  beforeAll(async () => {
    opened = await freshPage(browser, inject('baseURL'));
    await opened.page.goto('/');
    await openFile(opened.page, room);
    await expectSoon(title(opened.page)).toHaveValue('Percussion above the reading room');
    await settled(opened.page);
    before = await shownNotebook(opened.page);
  });
  afterAll(() => opened.context.close());

  /** The page shows what it showed, and what is stored is the same after a reload. */
  async function untouched() {
    const { page, problems } = opened;
    expect(await shownNotebook(page)).toBe(before);
    await page.reload();
    await expectSoon(title(page)).toHaveValue('Percussion above the reading room');
    expect(await shownNotebook(page)).toBe(before);
    expect(await page.evaluate(() => ({}) as { polluted?: unknown }).then((o) => o.polluted)).toBeUndefined();
    expect(problems).toEqual([]);
  }

  test.each(REFUSED)(
    'with %s is refused with every problem named, and nothing is touched',
    async (_, file, reasons) => {
      const { page } = opened;
      await openFile(page, file, 'from-a-stranger.json');
      const alert = page.getByRole('alert').filter({ hasText: '“from-a-stranger.json” was not opened' });
      await expectSoon(alert).toBeVisible();
      const lines = await alert.getByRole('listitem').allTextContents();
      for (const reason of reasons) expect(lines).toContainEqual(expect.stringMatching(reason));
      expect(lines.length).toBe(reasons.length);
      await untouched();
    },
  );

  test('with scripts and unsafe links in its text opens as plain words', async () => {
    const { page } = opened;
    const requests: string[] = [];
    page.on('request', (request) => requests.push(request.url()));
    const hostile = practiceRoom({
      id: 'hostile',
      title: '<img src=x onerror="window.harmed=1">',
      cells: [
        {
          kind: 'commentary',
          id: 'trap',
          folded: false,
          text: [
            'Before <script>window.harmed=1</script><img src="https://stranger.invalid/x.png" onerror="window.harmed=1">',
            '[plain](javascript:window.harmed=1) [coded](&#106;avascript:window.harmed=1) [data](data:text/html,x)',
            '[spaced](java&Tab;script:window.harmed=1) [file](file:///etc/hosts) ![picture](https://stranger.invalid/y.png)',
            '<svg onload="window.harmed=1"><a xlink:href="javascript:window.harmed=1">x</a></svg>',
            '[good](https://example.org/reading) [post](mailto:club@example.org)',
            '[value:floor/stc](value:__proto__/constructor/stc) [f](formula:__proto__)',
          ].join('\n\n'),
        },
      ],
    });
    await openFile(page, JSON.stringify(hostile), 'trap.slabspring.json');
    await expectSoon(title(page)).toHaveValue(hostile.title);
    const text = page.locator('commentary-cell .page');
    await expectSoon(text).toContainText('<script>window.harmed=1</script>');
    for (const words of ['plain', 'coded', 'data', 'spaced', 'file']) await text.getByText(words).first().click();
    expect(await text.locator('a').evaluateAll((all) => all.map((a) => a.getAttribute('href')))).toEqual([
      'https://example.org/reading',
      'mailto:club@example.org',
    ]);
    await expectSoon(text.locator('img, script, svg, iframe, [onerror], [onload]')).toHaveCount(0);
    expect(await page.evaluate(() => 'harmed' in window)).toBe(false);
    expect(requests.filter((url) => url.includes('stranger'))).toEqual([]);

    // The other notebook stands on the shelf as it was.
    await page.getByRole('button', { name: 'Notebooks' }).click();
    await page.getByRole('button', { name: 'Percussion above the reading room', exact: true }).click();
    await expectSoon(title(page)).toHaveValue('Percussion above the reading room');
    await untouched();
  });

  test('with the id of a stored notebook is opened beside it, as a copy', async () => {
    const { page } = opened;
    await openFile(page, JSON.stringify(practiceRoom({ title: 'In disguise' })));
    await expectSoon(title(page)).toHaveValue('In disguise');
    await expectSoon(page.getByRole('status').filter({ hasText: 'opened beside it, as a copy' })).toBeVisible();
    await page.getByRole('button', { name: 'Notebooks' }).click();
    await page.getByRole('button', { name: 'Percussion above the reading room', exact: true }).click();
    await expectSoon(title(page)).toHaveValue('Percussion above the reading room');
    await untouched();
  });
});
