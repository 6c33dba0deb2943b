import { afterEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '#cells/paths/paths-cell.ts';
import type { Result, ResultsView } from '#cells/contract.ts';
import { NumberStudyRequest } from '#cells/number-study-request.ts';
import { joinedStudy } from '#src/acoustics/joined-study.ts';
import { type NumberStudy, studyNumbers } from '#src/acoustics/number-study.ts';
import { answerStudy } from '#src/app/number-studies.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { axeProblems } from './axe-problems.ts';
import { mountCell, readyResults } from './mounted-cell.ts';
import { practiceRoom } from './practice-room.ts';

const stop = { listening: new AbortController() };
afterEach(() => stop.listening.abort());

const studyOf = (notebook: Notebook, scenario: string): NumberStudy => {
  const construction = resolveStack(notebook, scenario, 'floor');
  return studyNumbers(construction, studiedNumbers(construction));
};

/** As the page's: the same prediction as long as nothing changed. */
function steadyResults(notebook: Notebook): ResultsView {
  const known = new Map<string, Result>();
  const { of } = readyResults(notebook);
  return {
    of(scenario, stack) {
      const result = known.get(scenario) ?? of(scenario, stack);
      known.set(scenario, result);
      return result;
    },
  };
}

type Answer = (request: NumberStudyRequest, notebook: Notebook) => Promise<NumberStudy> | undefined;
const here: Answer = async ({ scenario }, notebook) => studyOf(notebook, scenario);

async function mount(answer: Answer = here, start = practiceRoom(), resultsOf = steadyResults) {
  const requests: NumberStudyRequest[] = [];
  stop.listening = new AbortController();
  const mounted = await mountCell(document.createElement('paths-cell'), start, 'paths', resultsOf);
  document.addEventListener(
    NumberStudyRequest.type,
    (event) => {
      const request = event as NumberStudyRequest;
      requests.push(request);
      request.answer = answer(request, mounted.notebook());
    },
    { signal: stop.listening.signal },
  );
  return { ...mounted, requests };
}

const unfold = async () => {
  const summary = page.getByText('What would change it');
  (summary.element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
};
const table = () => page.getByRole('table', { name: 'What 10 % more of each number changes' });
const stiffness = () => table().getByRole('row', { name: 'resilient channel, stiffness of one support' });

test('nothing is asked for before it is unfolded, by keyboard', async () => {
  const { requests } = await mount();
  await new Promise((resolve) => setTimeout(resolve, 400));
  expect(requests).toEqual([]);
  await unfold();
  await expect.element(table()).toBeVisible();
  expect(requests).toHaveLength(1);
  expect(requests[0]).toMatchObject({ scenario: 'slab', stack: 'floor' });
});

test('the strip shows the numbers of the engine, coloured by sign, and follows the kind of sound', async () => {
  await mount(here, practiceRoom({ active: 'both' }));
  await unfold();
  await page.getByRole('button', { name: /Show \d+ more/ }).click();
  await expect.element(stiffness()).toBeVisible();
  const slopes = studyOf(practiceRoom(), 'both').numbers.find((n) => n.path === 'layers/1/supportStiffness_N_m')!;
  const told = () => [...stiffness().element().querySelectorAll('.effect')];
  const values = () => told().map((cell) => Number(cell.textContent!.replace('\u2212', '-')));
  const rounded = (all: readonly number[]) => all.map((s) => Number((s * Math.log(1.1)).toFixed(1)) + 0);
  expect(values()).toEqual(rounded(slopes.dR_dB));
  const strongest = values().indexOf(Math.min(...values()));
  expect(told()[strongest]!.classList.contains('down')).toBe(true);
  await page.getByText('Impact', { exact: true }).click();
  await expect.poll(values).toEqual(rounded(slopes.dLn_dB));
  const loudest = values().indexOf(Math.max(...values()));
  expect(told()[loudest]!.classList.contains('down')).toBe(true);
});

test('the first eight rows stand there, the others on request', async () => {
  await mount(here, practiceRoom({ active: 'both' }));
  await unfold();
  await expect.element(table()).toBeVisible();
  const rows = () => table().element().querySelectorAll('tbody tr').length;
  expect(rows()).toBe(8);
  await page.getByRole('button', { name: /Show \d+ more/ }).click();
  await expect.poll(rows).toBeGreaterThan(8);
  await page.getByRole('button', { name: 'Show the first 8' }).click();
  await expect.poll(rows).toBe(8);
});

test('the lower rows are uncertainties: of the assumed ranges, and of model and laboratories', async () => {
  await mount(here, practiceRoom({ active: 'both' }));
  await unfold();
  const byTolerances = table().getByRole('row', { name: 'uncertain by all that is assumed' });
  await expect.element(byTolerances).toBeVisible();
  const { standardR_dB } = studyOf(practiceRoom(), 'both');
  const numbers = [...byTolerances.element().querySelectorAll('td')].map((cell) => cell.textContent);
  expect(numbers).toEqual(standardR_dB.map((u) => u.toFixed(1)));
  await expect.element(table().getByRole('row', { name: 'uncertain by model and laboratories' })).toBeVisible();
});

test('while a floor is computed nothing is asked for, and what stood there stays, marked busy', async () => {
  let computing = false;
  let { of } = steadyResults(practiceRoom());
  const { element, requests } = await mount(here, practiceRoom(), () => ({
    of: (...floor) => (computing ? { ...of(...floor), state: 'computing' as const } : of(...floor)),
  }));
  await unfold();
  await expect.element(table()).toBeVisible();
  computing = true;
  element.results = { ...element.results };
  await expect.poll(() => table().element().closest('[aria-busy="true"]')).toBeTruthy();
  await new Promise((resolve) => setTimeout(resolve, 400));
  expect(requests).toHaveLength(1);
  computing = false;
  ({ of } = steadyResults(practiceRoom()));
  element.results = { ...element.results };
  await expect.poll(() => requests.length).toBe(2);
  await expect.poll(() => table().element().closest('[aria-busy="false"]')).toBeTruthy();
});

test('folding it away or moving on ends what is being computed', async () => {
  const { requests } = await mount(() => new Promise(() => {}));
  await unfold();
  await expect.element(page.getByText('Changing one number after the other')).toBeVisible();
  await expect.poll(() => requests.length).toBe(1);
  await page.getByRole('radio', { name: 'As built' }).click();
  await expect.poll(() => requests.length).toBe(2);
  expect(requests[0]!.signal.aborted).toBe(true);
  await page.getByText('What would change it').click();
  await expect.poll(() => requests[1]!.signal.aborted).toBe(true);
});

/** A study that stands still after some of its numbers until it is let go. */
function slowStudy(first: number) {
  const waiting: (() => void)[] = [];
  const answer: Answer = ({ scenario, signal, tell }, notebook) => {
    const whole = studyOf(notebook, scenario);
    const outcomes = [...whole.numbers, ...whole.atTheEdge];
    const upTo = (done: number) => tell({ done, total: outcomes.length, study: joinedStudy(outcomes.slice(0, done)) });
    return new Promise((resolve, reject) => {
      signal.addEventListener('abort', () => reject(signal.reason));
      for (let done = 0; done <= first; done += 1) upTo(done);
      waiting.push(() => {
        upTo(first + 1);
        waiting.push(() => resolve(whole));
      });
    });
  };
  return { answer, goOn: () => waiting.pop()!() };
}

const bar = () => page.getByRole('progressbar', { name: 'Numbers of the floor changed so far' });

/** What holds the keyboard, inside of whatever shadow root. */
function focusedElement(): Element | null {
  let found = document.activeElement;
  while (found?.shadowRoot?.activeElement) found = found.shadowRoot.activeElement;
  return found;
}
const focused = () => focusedElement()?.textContent?.trim();
const rowsShown = () => table().element().querySelectorAll('tbody tr').length;

test('a long study shows how far it has come, and after a second what it has so far', async () => {
  const { answer, goOn } = slowStudy(3);
  await mount(answer, practiceRoom({ active: 'both' }));
  await unfold();
  await expect.element(bar()).toHaveAttribute('value', '3');
  const total = studyOf(practiceRoom(), 'both').numbers.length;
  await expect.element(bar()).toHaveAttribute('max', String(total));
  await expect.element(page.getByText(`Changing one number after the other: 3 of ${total}\u00a0…`)).toBeVisible();
  await expect.element(table()).not.toBeInTheDocument();
  await new Promise((resolve) => setTimeout(resolve, 1000));
  goOn();
  await expect.element(table().getByRole('row', { name: 'uncertain by the ± of the 4 so far' })).toBeVisible();
  expect(rowsShown()).toBeLessThanOrEqual(4);
  goOn();
  await expect.element(page.getByText(`All ${total} numbers have been changed in turn.`)).toBeVisible();
  await expect.element(bar()).not.toBeInTheDocument();
  await expect.element(table().getByRole('row', { name: 'uncertain by all that is assumed' })).toBeVisible();
  expect(rowsShown()).toBe(8);
});

test('stopping by keyboard keeps what is there, says how much that is, and goes on when asked', async () => {
  const { answer, goOn } = slowStudy(3);
  const { element, requests } = await mount(answer, practiceRoom({ active: 'both' }));
  await unfold();
  const stopButton = page.getByRole('button', { name: 'Stop' });
  await expect.element(stopButton).toBeVisible();
  (stopButton.element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  const total = studyOf(practiceRoom(), 'both').numbers.length;
  await expect.element(page.getByRole('status')).toHaveTextContent(`Stopped after 3 of ${total} numbers`);
  expect(requests[0]!.signal.aborted).toBe(true);
  await expect.element(table()).toBeVisible();
  expect(rowsShown()).toBeLessThanOrEqual(3);
  expect(table().element().closest('[aria-busy]')!.getAttribute('aria-busy')).toBe('false');
  expect(await axeProblems(element)).toEqual([]);
  expect(focused()).toBe('Go on');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => requests.length).toBe(2);
  await new Promise((resolve) => setTimeout(resolve, 800));
  expect(focused()).toBe('Stop');
  goOn();
  goOn();
  await expect.element(page.getByText(`All ${total} numbers`)).toBeVisible();
  expect(rowsShown()).toBe(8);
});

test('one stopped before its first number leaves no table of another floor', async () => {
  const { answer } = slowStudy(0);
  await mount(answer);
  await unfold();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect.element(page.getByRole('status')).toHaveTextContent('Stopped before the first number was done.');
  await expect.element(table()).not.toBeInTheDocument();
  await expect.element(page.getByRole('alert')).not.toBeInTheDocument();
});

test('one stopped before anything was told says so, and goes on when asked', async () => {
  let silent = true;
  const { requests } = await mount((request, notebook) => (silent ? new Promise(() => {}) : here(request, notebook)));
  await unfold();
  await expect.poll(() => requests.length).toBe(1);
  const stopButton = page.getByRole('button', { name: 'Stop' });
  await expect.element(stopButton).toBeVisible();
  (stopButton.element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('status')).toHaveTextContent('Stopped before the first number was done.');
  silent = false;
  expect(focused()).toBe('Go on');
  await userEvent.keyboard('{Enter}');
  await expect.element(table()).toBeVisible();
});

test('what goes on is the table of the same floor: it says how much it holds, and does not fade', async () => {
  const { answer } = slowStudy(3);
  const { requests } = await mount(answer, practiceRoom({ active: 'both' }));
  await unfold();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect.element(table()).toBeVisible();
  await page.getByRole('button', { name: 'Go on' }).click();
  const told = () => ({
    label: table().element().querySelector('tfoot th')!.textContent,
    faded: table().element().closest('.awaited') !== null,
  });
  const right = { label: 'uncertain by the ± of the 3 so far', faded: false };
  await expect.element(page.getByRole('button', { name: 'Stop' })).toBeVisible();
  expect(told()).toEqual(right);
  await expect.poll(() => requests.length).toBe(2);
  expect(told()).toEqual(right);
});

test('stopping again before it goes on keeps what was known', async () => {
  const { answer } = slowStudy(3);
  const { requests } = await mount(answer, practiceRoom({ active: 'both' }));
  await unfold();
  await page.getByRole('button', { name: 'Stop' }).click();
  const goOnButton = page.getByRole('button', { name: 'Go on' });
  await expect.element(goOnButton).toBeVisible();
  const button = goOnButton.element() as HTMLElement;
  button.click();
  await expect.poll(() => button.textContent!.trim()).toBe('Stop');
  button.click();
  await expect.element(page.getByRole('status')).toHaveTextContent('Stopped after 3 of');
  expect(rowsShown()).toBeLessThanOrEqual(3);
  expect(requests).toHaveLength(1);
});

test('some of a study of the floor before still says how much it is, and fades', async () => {
  const { answer } = slowStudy(3);
  let { of } = steadyResults(practiceRoom());
  const { element, requests } = await mount(answer, practiceRoom({ active: 'both' }), () => ({
    of: (...floor) => of(...floor),
  }));
  await unfold();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect.element(table()).toBeVisible();
  ({ of } = steadyResults(practiceRoom()));
  element.results = { ...element.results };
  await expect.poll(() => table().element().closest('.awaited')).toBeTruthy();
  await expect.element(table().getByRole('row', { name: 'uncertain by the ± of the 3 so far' })).toBeVisible();
  await expect.poll(() => requests.length).toBe(2);
});

test('the keyboard stays on the button while the first rows come', async () => {
  const { answer, goOn } = slowStudy(3);
  await mount(answer, practiceRoom({ active: 'both' }));
  await unfold();
  const stopButton = page.getByRole('button', { name: 'Stop' });
  await expect.element(stopButton).toBeVisible();
  (stopButton.element() as HTMLElement).focus();
  await new Promise((resolve) => setTimeout(resolve, 1000));
  goOn();
  await expect.element(table()).toBeVisible();
  expect(focused()).toBe('Stop');
  goOn();
  await expect.element(page.getByText('numbers have been changed in turn')).toBeVisible();
  expect(focusedElement()?.className).toContain('scroll');
});

test('a change of the floor ends a study, and one that was stopped starts anew', async () => {
  const { answer } = slowStudy(3);
  let { of } = steadyResults(practiceRoom());
  const { element, requests } = await mount(answer, practiceRoom(), () => ({ of: (...floor) => of(...floor) }));
  const change = () => {
    ({ of } = steadyResults(practiceRoom()));
    element.results = { ...element.results };
  };
  await unfold();
  await expect.element(bar()).toHaveAttribute('value', '3');
  change();
  await expect.poll(() => requests.length).toBe(2);
  expect(requests[0]!.signal.aborted).toBe(true);
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect.element(page.getByRole('status')).toHaveTextContent('Stopped after 3');
  change();
  await expect.poll(() => requests.length).toBe(3);
  await expect.element(page.getByRole('status')).not.toHaveTextContent('Stopped');
});

test('a cell that moves in the page starts again what that has ended', async () => {
  const { element, requests } = await mount();
  await unfold();
  await expect.element(table()).toBeVisible();
  document.body.append(element);
  await expect.poll(() => requests.length).toBe(2);
  await expect.element(table()).toBeVisible();
});

test('a failure is told, and tried again on request', async () => {
  let fails = true;
  await mount(async (request, notebook) => {
    if (fails) throw new Error('the worker stopped');
    return await here(request, notebook)!;
  });
  await unfold();
  await expect.element(page.getByRole('alert')).toHaveTextContent('the worker stopped');
  fails = false;
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect.element(table()).toBeVisible();
  await expect.element(page.getByRole('alert')).not.toBeInTheDocument();
});

test('a study that is tried again shows how far it has come, and keeps the keyboard', async () => {
  let fails = true;
  const { answer } = slowStudy(3);
  await mount((request, notebook) => (fails ? Promise.reject(new Error('it stopped')) : answer(request, notebook)));
  await unfold();
  const again = page.getByRole('button', { name: 'Try again' });
  await expect.element(again).toBeVisible();
  fails = false;
  (again.element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  await expect.element(bar()).toHaveAttribute('value', '3');
  await expect.element(page.getByRole('button', { name: 'Stop' })).toBeVisible();
  expect(focusedElement()?.className).toContain('status');
});

test('the worker gives what the engine gives', async () => {
  await mount((request, notebook) => answerStudy(notebook, request), practiceRoom({ active: 'both' }));
  const notebook = practiceRoom();
  const request = new NumberStudyRequest('both', 'floor', new AbortController().signal);
  expect(await answerStudy(notebook, request)).toEqual(studyOf(notebook, 'both'));
});

test.each([
  ['ready', here],
  ['computing', () => new Promise<NumberStudy>(() => {})],
  ['failed', () => Promise.reject(new Error('the worker stopped'))],
] as const)('axe finds nothing wrong when it is %s', async (state, answer) => {
  const { element } = await mount(answer);
  await unfold();
  const mark = { ready: 'is quieter below', computing: 'Changing one number', failed: 'could not be worked out' }[
    state
  ];
  await expect.element(page.getByText(mark)).toBeVisible();
  expect(await axeProblems(element)).toEqual([]);
});

test.each([360, 1600])('at %d px nothing is wider than the page', async (width) => {
  await page.viewport(width, 800);
  await mount();
  await unfold();
  await expect.element(table()).toBeVisible();
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
});
