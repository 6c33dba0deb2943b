import { beforeEach, expect, test } from 'vitest';
import type { ResultsView } from '#cells/contract.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { type PredictionSender, ResultsService } from '#src/app/results.ts';
import { forkScenario } from '#src/notebook/edits/fork-scenario.ts';
import { setParameter } from '#src/notebook/edits/set-parameter.ts';
import { setTitle } from '#src/notebook/edits/set-title.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { CurvesCell, Notebook } from '#src/notebook/types.ts';
import type { PredictOutcome } from '#workers/predict.api.ts';
import { practiceRoom } from '../browser/practice-room.ts';
import { MAT, SLAB } from '../notebook/floating-layers.ts';

class Superseded extends Error {}

interface Call {
  readonly slot: string;
  readonly construction: Construction;
  readonly lowestBand_Hz: number;
  resolve(outcome: PredictOutcome): void;
  reject(why: unknown): void;
}

/** Sends nothing anywhere: the test answers when it likes. */
class Desk implements PredictionSender {
  readonly calls: Call[] = [];
  readonly dropped: string[] = [];

  send(slot: string, construction: Construction, lowestBand_Hz: number): Promise<PredictOutcome> {
    return new Promise((resolve, reject) => this.calls.push({ slot, construction, lowestBand_Hz, resolve, reject }));
  }

  drop(slot: string): void {
    this.dropped.push(slot);
  }

  isSuperseded(why: unknown): boolean {
    return why instanceof Superseded;
  }

  /** Answers every call; the floor's top sheet tells predictions apart. */
  async answerAll(): Promise<void> {
    for (const call of this.calls.splice(0)) call.resolve({ ok: true, prediction: predictionOf(call.construction) });
    await Promise.resolve();
    await Promise.resolve();
  }
}

/** Carries the slab's thickness as its height: enough to see which construction was computed. */
function predictionOf({ layers: [top] }: Construction): Prediction {
  return made(top?.kind === 'leaf' ? top.sheets[0]!.thickness_m : NaN);
}

const made = (height_m: number) => ({ bands_Hz: [50], height_m }) as unknown as Prediction;

let desk: Desk;
let asked: { readonly show: () => void; readonly complete: boolean } | undefined;
let views: ResultsView[];
let service: ResultsService;

beforeEach(() => {
  desk = new Desk();
  asked = undefined;
  views = [];
  service = new ResultsService({
    sender: desk,
    onView: (view) => views.push(view),
    pace: {
      ask: (show, complete) => {
        asked = { show, complete };
      },
    },
  });
});

/** Shows what the service asked to show. */
function shown(): ResultsView {
  asked?.show();
  return views.at(-1)!;
}

const oneScenario = () => practiceRoom({ shown: ['slab'], active: 'slab', reference: 'slab' });
const slab = (notebook: Notebook, thickness_m: number) => setParameter(notebook, 'slab', thickness_m, 'slab');

test('every shown scenario is asked for once, the active one first', () => {
  service.update(practiceRoom());
  expect(desk.calls.map((c) => c.slot)).toEqual(['slab/floor', 'base/floor', 'hung/floor', 'both/floor']);
});

test('the view is computing, then ready', async () => {
  service.update(practiceRoom());
  expect(shown().of('base', 'floor')).toEqual({ state: 'computing' });
  await desk.answerAll();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.038) });
});

test('what there is can be asked for at any time and is the same object until it changes', async () => {
  service.update(oneScenario());
  const computing = service.view;
  expect(computing.of('slab', 'floor')).toEqual({ state: 'computing' });
  expect(service.view).toBe(computing);
  await desk.answerAll();
  expect(service.view.of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.038) });
});

test('a view is said to be complete once nothing is computed any more', async () => {
  service.update(practiceRoom());
  const [last, ...others] = desk.calls.splice(0);
  for (const call of others) call.resolve({ ok: true, prediction: predictionOf(call.construction) });
  await Promise.resolve();
  expect(asked!.complete).toBe(false);
  last!.resolve({ ok: false, message: 'refused' });
  await Promise.resolve();
  expect(asked!.complete).toBe(true);
  expect(service.computing).toBe(false);
});

test('a snapshot that was handed out does not change afterwards', async () => {
  service.update(practiceRoom());
  const before = shown();
  await desk.answerAll();
  shown();
  expect(before.of('base', 'floor')).toEqual({ state: 'computing' });
});

test('the old prediction stays until the new one is there', async () => {
  service.update(oneScenario());
  await desk.answerAll();
  service.update(slab(oneScenario(), 0.05));
  expect(shown().of('slab', 'floor')).toEqual({ state: 'computing', prediction: made(0.038) });
  await desk.answerAll();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.05) });
});

test('another notebook with the same scenarios shows nothing of the one before, not even what comes late', async () => {
  service.update(oneScenario());
  await desk.answerAll();
  service.update(slab(oneScenario(), 0.05));
  const [late] = desk.calls.splice(0);
  service.update({ ...slab(oneScenario(), 0.07), id: 'another' });
  expect(shown().of('slab', 'floor')).toEqual({ state: 'computing' });
  late!.resolve({ ok: true, prediction: predictionOf(late!.construction) });
  await Promise.resolve();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'computing' });
  await desk.answerAll();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.07) });
});

test('a copy of a notebook shows at once what was computed for the original', async () => {
  service.update(oneScenario());
  await desk.answerAll();
  service.update({ ...oneScenario(), id: 'copy' });
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.038) });
  expect(desk.calls).toEqual([]);
});

test('content that was computed before comes from the cache, at once', async () => {
  service.update(oneScenario());
  await desk.answerAll();
  service.update(slab(oneScenario(), 0.05));
  await desk.answerAll();
  service.update(oneScenario());
  expect(desk.calls).toEqual([]);
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.038) });
});

test('a change that leaves the construction alone asks for nothing', async () => {
  service.update(practiceRoom());
  await desk.answerAll();
  service.update(setTitle(practiceRoom(), 'Another title'));
  expect(desk.calls).toEqual([]);
});

test('a fork without changes shares the request of its parent and both are settled', async () => {
  const forked = forkScenario(practiceRoom(), 'slab', { id: 'fork', name: 'Fork' });
  service.update(forked);
  expect(desk.calls.map((c) => c.slot)).not.toContain('slab/floor');
  await desk.answerAll();
  const view = shown();
  expect(view.of('fork', 'floor').prediction).toBe(view.of('slab', 'floor').prediction);
});

test('when the slot that carried a shared request moves on, the other one asks again', async () => {
  const forked = forkScenario(practiceRoom(), 'slab', { id: 'fork', name: 'Fork' });
  service.update(forked);
  const shared = desk.calls.splice(0).find((c) => c.slot === 'fork/floor')!;
  service.update(setParameter(forked, 'slab', 0.07, 'fork'));
  shared.reject(new Superseded());
  await Promise.resolve();
  await Promise.resolve();
  expect(desk.calls.map((c) => c.slot)).toEqual(['fork/floor', 'slab/floor']);
  await desk.answerAll();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.038) });
});

test('what nobody wants any more is taken back', () => {
  service.update(oneScenario());
  service.update(slab(oneScenario(), 0.05));
  expect(desk.dropped).toEqual(['slab/floor']);
});

test('an answer that comes late is kept for later but not shown', async () => {
  service.update(oneScenario());
  const [late] = desk.calls.splice(0);
  service.update(slab(oneScenario(), 0.05));
  await desk.answerAll();
  late!.resolve({ ok: true, prediction: predictionOf(late!.construction) });
  await Promise.resolve();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.05) });
  service.update(oneScenario());
  expect(desk.calls).toEqual([]);
});

test('in a drag faster than the workers the newest answer stands in until the last one is there', async () => {
  service.update(oneScenario());
  await desk.answerAll();
  service.update(slab(oneScenario(), 0.05));
  service.update(slab(oneScenario(), 0.06));
  const [first, last] = desk.calls.splice(0);
  first!.resolve({ ok: true, prediction: predictionOf(first!.construction) });
  await Promise.resolve();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'computing', prediction: made(0.05) });
  last!.resolve({ ok: true, prediction: predictionOf(last!.construction) });
  await Promise.resolve();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.06) });
});

test('an answer older than what is shown does not stand in for what is computed', async () => {
  service.update(oneScenario());
  await desk.answerAll();
  service.update(slab(oneScenario(), 0.05));
  const [old] = desk.calls.splice(0);
  service.update(oneScenario());
  service.update(slab(oneScenario(), 0.06));
  old!.resolve({ ok: true, prediction: predictionOf(old!.construction) });
  await Promise.resolve();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'computing', prediction: made(0.038) });
});

test('a refusal of the engine is shown with its reason, beside the last good prediction', async () => {
  service.update(oneScenario());
  await desk.answerAll();
  service.update(slab(oneScenario(), 0.05));
  desk.calls.splice(0)[0]!.resolve({ ok: false, message: 'thickness_m must be > 0' });
  await Promise.resolve();
  await Promise.resolve();
  expect(shown().of('slab', 'floor')).toEqual({
    state: 'failed',
    message: 'thickness_m must be > 0',
    prediction: made(0.038),
  });
});

test('after the death of a worker a retry asks again, and only for what failed that way', async () => {
  service.update(practiceRoom());
  const [active, ...others] = desk.calls.splice(0);
  active!.reject(new Error('worker exited'));
  others[0]!.resolve({ ok: false, message: 'refused' });
  for (const other of others.slice(1)) other.resolve({ ok: true, prediction: predictionOf(other.construction) });
  await new Promise((done) => setTimeout(done));
  expect(shown().of('slab', 'floor')).toEqual({ state: 'failed', message: 'worker exited' });
  service.retry();
  expect(desk.calls.map((c) => c.slot)).toEqual(['slab/floor']);
});

test('a stack that cannot be resolved fails by itself and leaves the others alone', async () => {
  const room = practiceRoom();
  const [floor] = room.stacks;
  const broken = { ...floor!, id: 'broken', width_m: { parameter: 'nobody' } };
  const notebook = {
    ...room,
    stacks: [floor!, broken],
    cells: [...room.cells, { kind: 'stack', id: 'more', folded: false, stack: 'broken' } as const],
  };
  service.update(notebook);
  await desk.answerAll();
  const view = shown();
  expect(view.of('base', 'broken')).toEqual({
    state: 'failed',
    message: 'parameter must be one of the notebook\'s, got "nobody"',
  });
  expect(view.of('base', 'floor').state).toBe('ready');
});

test('a hundred edits before the first answer end with the last one', async () => {
  for (let i = 1; i <= 100; i++) service.update(slab(oneScenario(), i / 1000));
  await desk.answerAll();
  expect(shown().of('slab', 'floor')).toEqual({ state: 'ready', prediction: made(0.1) });
});

/** One scenario of one floor; `changes` go to its cell of curves. */
function curvesOf(changes: Partial<CurvesCell>, notebook = oneScenario()): Notebook {
  return { ...notebook, cells: notebook.cells.map((c) => (c.kind === 'curves' ? { ...c, ...changes } : c)) };
}

test('one cell of curves from 20 Hz: one prediction from there serves all, who did not ask see it from 50 Hz', async () => {
  service.update(curvesOf({ lowestBand_Hz: 20 }));
  const [call, ...more] = desk.calls.splice(0);
  expect(more).toEqual([]);
  expect(call!.lowestBand_Hz).toBe(20);
  const floor = resolveStack(oneScenario(), 'slab', 'floor');
  call!.resolve({ ok: true, prediction: predict(floor, { lowestBand_Hz: 20 }) });
  await Promise.resolve();
  const view = shown();
  expect(view.of('slab', 'floor', { lowestBand_Hz: 20 }).prediction!.bands_Hz[0]).toBe(20);
  expect(view.of('slab', 'floor').prediction).toEqual(predict(floor));
  expect(view.of('slab', 'floor').prediction).toBe(view.of('slab', 'floor').prediction);
});

/** The floor with a slab on a mat on top. */
function floating(notebook: Notebook): Notebook {
  const [floor, ...others] = notebook.stacks;
  return { ...notebook, stacks: [{ ...floor!, layers: [SLAB, MAT, ...floor!.layers] }, ...others] };
}

test('what lies below a floating part is asked for beside the whole floor, and only under impact', async () => {
  const room = floating(oneScenario());
  service.update(curvesOf({ overlays: ['floating-floor'], quantity: 'airborne' }, room));
  expect(desk.calls.map((c) => c.slot)).toEqual(['slab/floor']);
  service.update(curvesOf({ overlays: ['floating-floor'], quantity: 'impact' }, room));
  expect(desk.calls.map((c) => [c.slot, c.construction.layers.length])).toEqual([
    ['slab/floor', 5],
    ['slab/floor/below-floating', 3],
  ]);
  desk.calls[1]!.resolve({ ok: true, prediction: made(0.2) });
  await Promise.resolve();
  expect(shown().of('slab', 'floor', { part: 'below-floating' })).toEqual({ state: 'ready', prediction: made(0.2) });
  expect(shown().of('slab', 'floor').state).toBe('computing');
});

const unfolded = (notebook: Notebook, laidPart = true): Notebook => ({
  ...notebook,
  cells: notebook.cells.map((c) => (c.kind === 'ratings' ? { ...c, laidPart } : c)),
});

test('what lies on a floor is asked for on the standard slab once it is unfolded, the slab itself once for all', async () => {
  const room = floating(practiceRoom({ shown: ['base', 'hung'], active: 'base', reference: 'base' }));
  service.update(room);
  await desk.answerAll();
  service.update(unfolded(room));
  // Both scenarios lay the same on it.
  expect(desk.calls.map((c) => [c.slot, c.construction.layers.length])).toEqual([
    ['base/floor/bare-slab', 1],
    ['base/floor/laid-on-slab', 3],
  ]);
  await desk.answerAll();
  expect(shown().of('hung', 'floor', { part: 'bare-slab' })).toEqual({ state: 'ready', prediction: made(0.14) });
  expect(shown().of('hung', 'floor', { part: 'laid-on-slab' })).toEqual({ state: 'ready', prediction: made(0.038) });
  service.update(setParameter(unfolded(room), 'support', 'clips'));
  expect(desk.calls.map((c) => c.slot)).toEqual(['base/floor']);
});

test('a floor that nothing lies on has no part on the standard slab, and nobody is asked for it', () => {
  service.update(unfolded(oneScenario()));
  expect(desk.calls.map((c) => c.slot)).toEqual(['slab/floor', 'slab/floor/bare-slab']);
  expect(shown().of('slab', 'floor', { part: 'laid-on-slab' })).toMatchObject({
    state: 'failed',
    message: 'a covering or a leaf on a mat must lie on the floor, got none that does',
  });
});
