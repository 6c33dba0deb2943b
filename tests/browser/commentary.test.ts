import { render } from 'lit';
import { expect, test } from 'vitest';
import { cdp, page, userEvent } from 'vitest/browser';
import '#cells/commentary/commentary-cell.ts';
import { FORMULAS } from '#cells/commentary/formulas.ts';
import { renderText } from '#cells/commentary/render-text.ts';
import type { ResultsView } from '#cells/contract.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell, readyResults } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

function withText(text: string) {
  return practiceRoom({ cells: [{ kind: 'commentary', id: 'text', folded: false, text }] });
}

async function mountText(text: string, results?: (n: ReturnType<typeof practiceRoom>) => ResultsView) {
  const mounted = await mountCell(document.createElement('commentary-cell'), withText(text), 'text', results);
  await expect.poll(() => mounted.element.renderRoot.querySelector('.page > div')).not.toBeNull();
  return mounted;
}

const live = (element: HTMLElement) => element.shadowRoot!.querySelector<HTMLElement>('.live')!;

test('a live value shows the number of the active scenario instead of the one that was written', async () => {
  const { element } = await mountText('STC [99](value:floor/stc)');
  const expected = readyResults(withText('')).of('slab', 'floor').prediction!.ratings.STC;
  expect(live(element).textContent).toBe(String(expected));
  expect(live(element).title).toBe('ASTC of Floor of the practice room, Slab on top, floor and walls together');
});

test('a live value that names a scenario shows that one, with its unit', async () => {
  const { element } = await mountText('[?](value:base/floor/surface-mass)');
  expect(live(element).textContent).toMatch(/^[\d.]+ kg\/m²$/);
});

test('a gain is the difference to the reference scenario, with its sign', async () => {
  const { element } = await mountText('[?](value:both/floor/stc-gain)');
  const results = readyResults(withText(''));
  const stc = (scenario: string) => results.of(scenario, 'floor').prediction!.ratings.STC;
  expect(live(element).textContent).toBe(`+${stc('both') - stc('base')}`);
});

test('while computing the old value stays and says so; without one the written text stands', async () => {
  const { element } = await mountText('[41](value:floor/stc)', () => ({ of: () => ({ state: 'computing' }) }));
  expect(live(element).textContent).toBe('41');
  expect(live(element).getAttribute('aria-busy')).toBe('true');
});

test.each([
  ['value:attic/stc', 'There is no stack "attic".'],
  ['value:nobody/floor/stc', 'There is no scenario "nobody".'],
  ['value:floor/loudness', 'There is no value "loudness".'],
  ['value:floor', 'A live value is value:stack/quantity.'],
])('%s is no number in the text, and says: %s', async (destination, about) => {
  const { element } = await mountText(`[41](${destination})`);
  expect(live(element).className).toBe('live missing');
  expect(live(element).title).toBe(about);
  const reason = about.charAt(0).toLowerCase() + about.slice(1, -1);
  expect(live(element).textContent).toBe(`[no value: ${reason}; “41” was written here]`);
  expect(getComputedStyle(live(element)).fontWeight).toBe('400');
});

test('a formula that there is not says so where it would stand', async () => {
  const { element } = await mountText('[the law](formula:nope)');
  expect(live(element).textContent).toBe('[no value: there is no formula "nope"; “the law” was written here]');
});

test('a block quote that begins with Answer: is folded, with the words of its first line on the fold', async () => {
  const { element } = await mountText('Why?\n\n> Answer: the *air* rules\n> It is a spring.\n>\n> Always.');
  const details = element.shadowRoot!.querySelector('details')!;
  expect(details.open).toBe(false);
  expect(details.querySelector('summary')!.textContent).toBe('the air rules');
  expect(details.textContent).toContain('It is a spring.');
  expect(details.querySelector('summary em')!.textContent).toBe('air');
});

test('an answer without further words on its first line is called Answer', async () => {
  const { element } = await mountText('> Answer:\n> It is a spring.');
  expect(element.shadowRoot!.querySelector('summary')!.textContent).toBe('Answer');
});

test('on paper a folded answer stays folded and says so, an opened one shows its words', async () => {
  const { element } = await mountText('> Answer: shut\n> It is a spring.\n\nAnd?\n\n> Answer: opened\n> It is a mass.');
  const [shut, opened] = element.shadowRoot!.querySelectorAll('details');
  opened!.open = true;
  await cdp().send('Emulation.setEmulatedMedia', { media: 'print' });
  try {
    const said = (details: Element) => getComputedStyle(details.querySelector('summary')!, '::after').content;
    const shows = (details: Element) => details.querySelector('p')!.checkVisibility({ contentVisibilityAuto: true });
    expect([said(shut!), shows(shut!)]).toEqual(['" (answer folded)"', false]);
    expect([said(opened!), shows(opened!)]).toEqual(['none', true]);
  } finally {
    await cdp().send('Emulation.setEmulatedMedia', { media: '' });
  }
});

test('other block quotes stay what they are', async () => {
  const { element } = await mountText('> No answer: just words.');
  expect(element.shadowRoot!.querySelector('details')).toBeNull();
  expect(element.shadowRoot!.querySelector('blockquote')).not.toBeNull();
});

test.each(FORMULAS.map((f) => f.key))('every part of the formula %s is MathML and takes room', async (key) => {
  const { element } = await mountText(`[f](formula:${key})`);
  const math = element.shadowRoot!.querySelector('math')!;
  const parts = [math, ...math.querySelectorAll('*')];
  expect(parts.length).toBeGreaterThan(5);
  expect(parts.filter((part) => !(part instanceof MathMLElement)).map((part) => part.localName)).toEqual([]);
  const roomless = parts.filter((part) => part.localName !== 'mspace' && part.getBoundingClientRect().height === 0);
  expect(roomless.map((part) => part.outerHTML)).toEqual([]);
  const fractions = parts.filter((part) => part.localName === 'mfrac');
  expect(fractions.map((fraction) => fraction.children.length)).toEqual(fractions.map(() => 2));
});

test('the mass law and the resonance of two masses keep all their letters', async () => {
  const letters = async (key: string) => {
    const { element } = await mountText(`[f](formula:${key})`);
    const parts = element.shadowRoot!.querySelectorAll('mi, mn, mo');
    return [...parts]
      .filter((p) => p.getBoundingClientRect().width > 0)
      .map((p) => p.textContent)
      .join('');
  };
  expect(await letters('mass-law')).toBe('R0=20lgπfm′ρ0c0');
  expect(await letters('mass-spring-mass')).toBe('f0=12πs′(1m1′+1m2′)');
});

test('words in a formula keep their distance from its letters: plain spaces at their ends would be dropped', () => {
  const host = document.createElement('div');
  for (const { math } of FORMULAS) render(math, host.appendChild(document.createElement('div')));
  const words = [...host.querySelectorAll('mtext')].map((part) => part.textContent!);
  expect(words.some((text) => text.startsWith('\u00a0'))).toBe(true);
  expect(words.filter((text) => /^[ \n]|[ \n]$/.test(text))).toEqual([]);
});

test.each([
  '<script>globalThis.hit = 1</script>',
  '<img src=x onerror="globalThis.hit = 1">',
  'text <b onmouseover="globalThis.hit = 1">bold</b>',
  '<svg onload="globalThis.hit = 1"></svg>',
  '<iframe srcdoc="<script>parent.hit = 1</script>"></iframe>',
  '[a](javascript:globalThis.hit=1)',
  '[a](JaVaScRiPt:globalThis.hit=1)',
  '[a](&#106;avascript:globalThis.hit=1)',
  '[a](data:text/html,<script>parent.hit=1</script>)',
  '[a](vbscript:x)',
  '[a](http://insecure.example/)',
  '[a](//host.example/x)',
  '[a](file:///etc/passwd)',
  '[a](blob:https://x/1)',
  '<javascript:globalThis.hit=1>',
  '![a](https://tracker.example/pixel.png)',
  '![a](javascript:globalThis.hit=1)',
  '[a]: javascript:globalThis.hit=1\n\n[a]',
  '<math><mtext><table><mglyph><style><!--</style><img title="--&gt;&lt;img src=1 onerror=globalThis.hit=1&gt;">',
  '[a](https://ok.example/ "x\\" onclick=\\"globalThis.hit=1")',
  '> Answer: <img src=x onerror="globalThis.hit = 1">\n> b',
])('hostile text stays text: %s', async (text) => {
  const host = document.createElement('div');
  host.append(renderText(text, document));
  document.body.append(host);
  const all = [...host.querySelectorAll('*')];
  expect(all.filter((e) => ['script', 'img', 'svg', 'iframe', 'math', 'style', 'b'].includes(e.localName))).toEqual([]);
  expect(all.flatMap((e) => e.getAttributeNames()).filter((name) => name.startsWith('on'))).toEqual([]);
  const destinations = [...host.querySelectorAll('a')].map((a) => a.getAttribute('href'));
  expect(destinations.filter((href) => !/^(https|mailto):/.test(href ?? ''))).toEqual([]);
  host.querySelectorAll('a').forEach((a) => {
    expect(a.rel).toBe('noopener noreferrer nofollow');
  });
  await new Promise((done) => setTimeout(done, 20));
  expect((globalThis as { hit?: number }).hit).toBeUndefined();
});

test('links to https and mailto stay links', () => {
  const host = document.createElement('div');
  host.append(renderText('[a](https://a.example/b) [c](mailto:c@d.example) <https://e.example>', document));
  expect([...host.querySelectorAll('a')].map((a) => a.getAttribute('href'))).toEqual([
    'https://a.example/b',
    'mailto:c@d.example',
    'https://e.example',
  ]);
});

test('the highest heading of a text is h2 and the distance between headings stays', () => {
  const host = document.createElement('div');
  host.append(renderText('## a\n\n#### b', document));
  expect([...host.children].map((e) => e.localName)).toEqual(['h2', 'h4']);
});

test('quotes nested a thousand deep are laid out', () => {
  const host = document.createElement('div');
  host.append(renderText(`${'> '.repeat(1000)}deep`, document));
  expect(host.textContent).toContain('deep');
});

test('writing goes out as edits of one merge run, and the preview follows', async () => {
  const { element, edits, notebook } = await mountText('Old');
  await page.getByRole('button', { name: 'Edit the text' }).click();
  await userEvent.type(page.getByRole('textbox', { name: 'Text, in Markdown' }), ' **new**');
  expect(notebook().cells[0]).toMatchObject({ text: 'Old **new**' });
  expect(new Set(edits)).toEqual(new Set(['text']));
  await expect.poll(() => element.shadowRoot!.querySelector('strong')?.textContent).toBe('new');
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => element.shadowRoot!.activeElement?.textContent?.trim()).toBe('Edit the text');
});

test('a live value and a formula are put in where the cursor stands', async () => {
  const { notebook } = await mountText('ab');
  await page.getByRole('button', { name: 'Edit the text' }).click();
  (page.getByRole('textbox', { name: 'Text, in Markdown' }).element() as HTMLTextAreaElement).setSelectionRange(1, 1);
  await page.getByRole('button', { name: 'Insert value' }).click();
  expect(notebook().cells[0]).toMatchObject({ text: 'a[STC](value:floor/stc)b' });
  await page.getByRole('button', { name: 'Insert its name' }).click();
  expect(notebook().cells[0]).toMatchObject({ text: 'a[STC](value:floor/stc)[STC](value:floor/stc-name)b' });
  await page.getByRole('combobox', { name: /^Value/ }).selectOptions('mass per area');
  await expect.element(page.getByRole('button', { name: 'Insert its name' })).toBeDisabled();
});

test('a text takes no more than a file may hold, typed or put in', async () => {
  const full = 'x'.repeat(LIMITS.commentary);
  const { notebook } = await mountText(full);
  await page.getByRole('button', { name: 'Edit the text' }).click();
  const field = page.getByRole('textbox', { name: 'Text, in Markdown' }).element() as HTMLTextAreaElement;
  expect(field.maxLength).toBe(LIMITS.commentary);
  await page.getByRole('button', { name: 'Insert value' }).click();
  expect(notebook().cells[0]).toMatchObject({ text: full });
});

test('Escape that ends a composed word leaves the editor open', async () => {
  const { element } = await mountText('ab');
  await page.getByRole('button', { name: 'Edit the text' }).click();
  const field = page.getByRole('textbox', { name: 'Text, in Markdown' }).element();
  const pressEscape = (isComposing: boolean) =>
    field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', isComposing, bubbles: true, composed: true }));
  pressEscape(true);
  await element.updateComplete;
  expect(element.renderRoot.querySelector('textarea')).not.toBeNull();
  pressEscape(false);
  await element.updateComplete;
  expect(element.renderRoot.querySelector('textarea')).toBeNull();
});

test('an empty text says what may stand there', async () => {
  await mountText('');
  await expect.element(page.getByText('Nothing is written here yet', { exact: false })).toBeVisible();
});

test('axe finds nothing in view and in edit state', async () => {
  const { element } = await mountText(
    '# Title\n\nSTC [1](value:floor/stc), [link](https://a.example/)\n\n> Answer:\n> [f](formula:mass-law)',
  );
  expect(await axeProblems(element)).toEqual([]);
  await page.getByRole('button', { name: 'Edit the text' }).click();
  expect(await axeProblems(element)).toEqual([]);
});
