import { expose } from 'comlink';
import { expect, test } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import type { NumberStudy } from '#src/acoustics/number-study.ts';
import { NumberStudies } from '#src/app/number-studies.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { StudyApi, StudyOutcome } from '#workers/study.api.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const floorOf = (scenario: string) => resolveStack(practiceRoom(), scenario, 'floor');
const ALIVE = () => new AbortController().signal;

/** Workers that answer when the test likes, on a channel of messages. */
function desk() {
  const asked: { readonly construction: Construction; readonly answer: (outcome: StudyOutcome) => void }[] = [];
  const ports: MessagePort[] = [];
  let ended = 0;
  const studies = new NumberStudies(() => {
    const { port1, port2 } = new MessageChannel();
    ports.push(port1, port2);
    const api = {
      study: (construction: Construction) =>
        new Promise<StudyOutcome>((answer) => asked.push({ construction, answer })) as unknown as StudyOutcome,
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

const study = (mark: number): NumberStudy => ({
  bands_Hz: [mark],
  numbers: [],
  standardR_dB: [],
  standardLn_dB: [],
  atTheEdge: [],
});

test('the same floor is studied once', async () => {
  const { studies, asked, close } = desk();
  const first = studies.of(floorOf('both'), ALIVE());
  const second = studies.of(floorOf('both'), ALIVE());
  await expect.poll(() => asked.length).toBe(1);
  asked[0]!.answer({ ok: true, study: study(1) });
  expect(await first).toEqual(study(1));
  expect(await second).toEqual(study(1));
  expect(asked).toHaveLength(1);
  close();
});

test('an abort ends the study at once, and the next one starts in a fresh worker', async () => {
  const { studies, asked, close, ended } = desk();
  const leaving = new AbortController();
  const first = studies.of(floorOf('both'), leaving.signal);
  await expect.poll(() => asked.length).toBe(1);
  const second = studies.of(floorOf('hung'), ALIVE());
  leaving.abort(new Error('the slider moved on'));
  await expect(first).rejects.toThrow('the slider moved on');
  expect(ended()).toBe(1);
  await expect.poll(() => asked.length).toBe(2);
  asked[1]!.answer({ ok: true, study: study(2) });
  expect(await second).toEqual(study(2));
  close();
});

test('one that was given up while it waited is never sent', async () => {
  const { studies, asked, close } = desk();
  const first = studies.of(floorOf('both'), ALIVE());
  const waiting = new AbortController();
  const second = studies.of(floorOf('hung'), waiting.signal);
  await expect.poll(() => asked.length).toBe(1);
  waiting.abort(new Error('gone'));
  asked[0]!.answer({ ok: true, study: study(1) });
  await first;
  await expect(second).rejects.toThrow('gone');
  expect(asked).toHaveLength(1);
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
