import { describe, expect, test } from 'vitest';
import { addMeasured, describeMeasured, removeMeasured } from '#src/notebook/edits/edit-measured.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import { readNotebook, readNotebookValue } from '#src/notebook/read-file.ts';
import type { CurvesCell, MeasuredBands, Notebook } from '#src/notebook/types.ts';
import { writeNotebook } from '#src/notebook/write-file.ts';
import { smallNotebook } from './small-notebook.ts';

/** Invented data. */
const MEASURED: MeasuredBands = {
  id: 'before',
  name: 'before the club moved in',
  source: 'invented for tests',
  quantity: 'airborne',
  bands_Hz: [100, 125, 160],
  values_dB: [24.5, 28, 31.2],
};

const withOne = (measured: MeasuredBands = MEASURED) => addMeasured(smallNotebook(), 'curves', [measured]);
const cellOf = (notebook: Notebook) => notebook.cells.find((c) => c.kind === 'curves') as CurvesCell;

test('measured bands are written to a file and read back equal', () => {
  const notebook = withOne();
  expect(readNotebook(writeNotebook(notebook))).toEqual({ ok: true, notebook });
});

describe('a file with something wrong in measured bands is refused with the place', () => {
  test.each<[string, object, string]>([
    [
      'no source',
      { source: ' ' },
      'Cell “Transmission loss”, measured bands “before the club moved in”: source must be words on the origin of the numbers, got " " (/cells/3/measured/0/source)',
    ],
    [
      'another quantity',
      { quantity: 'level' },
      'Cell “Transmission loss”, measured bands “before the club moved in”: quantity must be "airborne" or "impact", got "level" (/cells/3/measured/0/quantity)',
    ],
    [
      'a frequency that is no band',
      { bands_Hz: [100, 130, 160] },
      'Cell “Transmission loss”, measured bands “before the club moved in”: entry 2 of bands in Hz must be a nominal mid-band frequency of IEC 61260-1, got 130 (/cells/3/measured/0/bands_Hz/1)',
    ],
    [
      'a band below all',
      { bands_Hz: [1, 125, 160] },
      'Cell “Transmission loss”, measured bands “before the club moved in”: entry 1 of bands in Hz must be at least 10, got 1 (/cells/3/measured/0/bands_Hz/0)',
    ],
    [
      'bands that do not ascend',
      { bands_Hz: [100, 160, 125] },
      'Cell “Transmission loss”, measured bands “before the club moved in”: entry 3 of bands in Hz must be more than 160, since bands ascend, got 125 (/cells/3/measured/0/bands_Hz/2)',
    ],
    [
      'a value too few',
      { values_dB: [24, 28] },
      'Cell “Transmission loss”, measured bands “before the club moved in”: values in dB must be 3 long, like bands_Hz, got 2 (/cells/3/measured/0/values_dB)',
    ],
    [
      'a gap',
      { values_dB: [24, null, 28] },
      'Cell “Transmission loss”, measured bands “before the club moved in”: entry 2 of values in dB must be a number, got null (/cells/3/measured/0/values_dB/1)',
    ],
    [
      'a value of another unit',
      { values_dB: [24, 28, 1e4] },
      'Cell “Transmission loss”, measured bands “before the club moved in”: entry 3 of values in dB must be at most 200, got 10000 (/cells/3/measured/0/values_dB/2)',
    ],
  ])('%s', (_name, changes, message) => {
    const reading = readNotebookValue(withOne({ ...MEASURED, ...changes }));
    expect(reading.ok ? [] : reading.problems.map((p) => p.message)).toEqual([message]);
  });

  test('an id that stands twice, and more sets than a cell may hold', () => {
    const many = Array.from({ length: LIMITS.measured + 1 }, () => MEASURED);
    const reading = readNotebookValue(addMeasured(smallNotebook(), 'curves', many));
    const paths = reading.ok ? [] : reading.problems.map((p) => p.path);
    expect(paths).toContain('/cells/3/measured');
    expect(paths).toContain('/cells/3/measured/1/id');
  });
});

describe('edits', () => {
  test('change what measured bands are called and where they come from, not their numbers', () => {
    const edited = describeMeasured(withOne(), 'curves', 'before', { source: 'test report 7, invented' });
    expect(cellOf(edited).measured).toEqual([{ ...MEASURED, source: 'test report 7, invented' }]);
  });

  test('with the last ones gone the cell is as it was before', () => {
    const added = addMeasured(withOne(), 'curves', [{ ...MEASURED, id: 'after' }]);
    const one = removeMeasured(added, 'curves', 'before');
    expect(cellOf(one).measured?.map((m) => m.id)).toEqual(['after']);
    expect(removeMeasured(one, 'curves', 'after')).toEqual(smallNotebook());
  });

  test('an id that is taken, one that is not there and a cell without curves are refused', () => {
    expect(() => addMeasured(withOne(), 'curves', [MEASURED])).toThrow('must be new, got "before"');
    expect(() => removeMeasured(withOne(), 'curves', 'x')).toThrow('must be the cell\'s, got "x"');
    expect(() => describeMeasured(withOne(), 'curves', 'x', {})).toThrow(RangeError);
    expect(() => addMeasured(smallNotebook(), 'ratings', [MEASURED])).toThrow(RangeError);
  });
});
