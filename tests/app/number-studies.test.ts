import { expose } from 'comlink';
import { expect, test } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import type { NumberOutcome, StudiedNumber } from '#src/acoustics/number-study.ts';
import { NumberStudies } from '#src/app/number-studies.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import type { StudyApi, StudyOutcome } from '#workers/study.api.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const floorOf = (scenario: string) => resolveStack(practiceRoom(), scenario, 'floor');
const ALIVE = () => new AbortController().signal;

interface Asked {
  readonly construction: Construction;
  readonly number: StudiedNumber;
  readonly answer: (outcome: StudyOutcome) => void;
}

/** Workers that answer when the test likes, on a channel of messages, or by `answerAll` at once. */
function desk({ answerAll = false } = {}) {
  const asked: Asked[] = [];
  const ports: MessagePort[] = [];
  let ended = 0;
  const studies = new NumberStudies(() => {
    const { port1, port2 } = new MessageChannel();
    ports.push(port1, port2);
    const api = {
      study: (construction: Construction, number: StudiedNumber) =>
        new Promise<StudyOutcome>((answer) => {
          asked.push({ construction, number, answer });
          if (answerAll) answer(done(number));
        }) as unknown as StudyOutcome,
    } satisfies StudyApi;
    expose(api, port2);
    return {
      endpoint: port1,
      terminate() {
        ended += 1;
        for (const port of ports) port.close();
      },
      onDeath: () => {},
    };
  });
  const close = () => {
    for (const port of ports) port.close();
  };
  return { studies, asked, close, ended: () => ended };
}

/** A number at the edge is an answer that needs no bands. */
const edge = (number: StudiedNumber): NumberOutcome => ({ ...number, reason: 'it is the answer of a test' });
const done = (number: StudiedNumber): StudyOutcome => ({ ok: true, outcome: edge(number) });

test('every number of a floor is studied once, whoever asks', async () => {
  const { studies, asked, close } = desk({ answerAll: true });
  const numbers = studiedNumbers(floorOf('both'));
  const first = studies.of(floorOf('both'), ALIVE());
  const second = studies.of(floorOf('both'), ALIVE());
  expect((await first).atTheEdge).toEqual(numbers.map(edge));
  expect(await second).toEqual(await first);
  expect(asked.map((a) => a.number.path)).toEqual(numbers.map((n) => n.path));
  close();
});

test('it tells how far it has come: before the first number and after each', async () => {
  const { studies, close } = desk({ answerAll: true });
  const told: string[] = [];
  const { atTheEdge } = await studies.of(floorOf('both'), ALIVE(), ({ done, total, study }) => {
    expect(study.atTheEdge).toHaveLength(done);
    told.push(`${done} of ${total}`);
  });
  const total = atTheEdge.length;
  expect(total).toBeGreaterThan(20);
  expect(told).toEqual(Array.from({ length: total + 1 }, (_, done) => `${done} of ${total}`));
  close();
});

test('an abort ends the study at once, and the next one starts in a fresh worker', async () => {
  const { studies, asked, close, ended } = desk();
  const leaving = new AbortController();
  const first = studies.of(floorOf('both'), leaving.signal);
  await expect.poll(() => asked.length).toBe(1);
  const second = studies.of(floorOf('hung'), ALIVE());
  second.catch(() => {});
  leaving.abort(new Error('the slider moved on'));
  await expect(first).rejects.toThrow('the slider moved on');
  expect(ended()).toBe(1);
  await expect.poll(() => asked.length).toBe(2);
  expect(asked[1]!.construction).toEqual(floorOf('hung'));
  close();
});

test('what an ended study had done is kept: the next one of the floor goes on from there', async () => {
  const { studies, asked, close } = desk();
  const numbers = studiedNumbers(floorOf('both'));
  const stopping = new AbortController();
  const first = studies.of(floorOf('both'), stopping.signal);
  for (const time of [1, 2, 3]) {
    await expect.poll(() => asked.length).toBe(time);
    if (time < 3) asked[time - 1]!.answer(done(asked[time - 1]!.number));
  }
  stopping.abort(new Error('stopped'));
  await expect(first).rejects.toThrow('stopped');
  const told: number[] = [];
  const leaving = new AbortController();
  const second = studies.of(floorOf('both'), leaving.signal, ({ done }) => told.push(done));
  await expect.poll(() => asked.length).toBe(4);
  expect(told).toEqual([2]);
  expect(asked[3]!.number).toEqual(numbers[2]);
  leaving.abort(new Error('the end of the test'));
  await expect(second).rejects.toThrow('the end of the test');
  close();
});

test('one that was given up while it waited is never sent, and tells nothing', async () => {
  const { studies, asked, close } = desk();
  const leaving = new AbortController();
  const first = studies.of(floorOf('both'), leaving.signal);
  const waiting = new AbortController();
  const told: number[] = [];
  const second = studies.of(floorOf('hung'), waiting.signal, ({ done }) => told.push(done));
  await expect.poll(() => asked.length).toBe(1);
  waiting.abort(new Error('gone'));
  await expect(second).rejects.toThrow('gone');
  leaving.abort(new Error('gone too'));
  await expect(first).rejects.toThrow('gone too');
  await expect(studies.of(floorOf('hung'), waiting.signal)).rejects.toThrow('gone');
  expect(asked).toHaveLength(1);
  expect(told).toEqual([]);
  close();
});

test('what the engine has against a floor comes as an error, and is asked again', async () => {
  const { studies, asked, close } = desk();
  for (const time of [1, 2]) {
    const failing = studies.of(floorOf('both'), ALIVE());
    await expect.poll(() => asked.length).toBe(time);
    asked[time - 1]!.answer({ ok: false, message: 'length_m must be within 0.3 and 100' });
    await expect(failing).rejects.toThrow('length_m must be within');
  }
  close();
});
