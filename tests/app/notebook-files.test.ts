import { expect, test } from 'vitest';
import { datedFileName, readNotebookFile } from '#src/app/notebook-files.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { writeNotebook } from '#src/notebook/write-file.ts';
import { practiceRoom } from '../browser/practice-room.ts';

test('a file is named after the title and the day', () => {
  expect(datedFileName(practiceRoom(), new Date(2026, 2, 7))).toBe(
    'percussion-above-the-reading-room-2026-03-07.slabspring.json',
  );
});

test('what was written is read back as the same notebook', async () => {
  const file = new File([writeNotebook(practiceRoom())], 'a.slabspring.json');
  expect(await readNotebookFile(file)).toEqual({ ok: true, notebook: practiceRoom() });
});

test('a file that is too long is refused by its size, unread', async () => {
  const file = { size: LIMITS.fileBytes + 1, text: () => Promise.reject(new Error('was read')) } as unknown as File;
  const reading = await readNotebookFile(file);
  expect(reading.ok ? [] : reading.problems.map((p) => p.message)).toEqual([expect.stringContaining('bytes')]);
});

test('a file of something else is refused with the place of what is wrong', async () => {
  const reading = await readNotebookFile(new File(['{"format": 1,'], 'a.json'));
  expect(reading.ok ? '' : reading.problems[0]!.message).toContain('line 1');
});

test('whoever opens measured bands as a notebook is told where they belong', async () => {
  const messages = async (name: string) => {
    const reading = await readNotebookFile(new File(['f (Hz),R (dB)\n100,23\n'], name));
    return reading.ok ? [] : reading.problems.map((p) => p.message);
  };
  expect(await messages('Bands.CSV')).toEqual([expect.stringContaining('“Measured bands …”')]);
  expect(await messages('bands.json')).toEqual([expect.not.stringContaining('Measured bands')]);
});
