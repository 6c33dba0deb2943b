import { describe, expect, test } from 'vitest';
import { bandWords, readMeasured, readMeasuredFile } from '#cells/curves/read-measured.ts';
import { LIMITS } from '#src/notebook/limits.ts';

const file = (...parts: BlobPart[]) => new File(parts, 'club floor.csv');

test('a file is named after itself, and a band without a value is left out', async () => {
  expect(await readMeasuredFile(file('f;R\n100;20\n125;\n160;22,5'), 12)).toEqual({
    ok: true,
    columns: [{ name: 'club floor', quantity: 'airborne', bands_Hz: [100, 160], values_dB: [20, 22.5] }],
    notices: [],
  });
});

test('columns of the same quantity are told apart by their headings', () => {
  const reading = readMeasured('f;R before;R after;Ln\n100;20;25;60', 'floor', 12);
  expect(reading.ok && reading.columns.map((c) => c.name)).toEqual(['floor, R before', 'floor, R after', 'floor']);
});

test.each(['utf-16le', 'utf-16be'])('a spreadsheet’s %s text with its byte order mark is read', async (encoding) => {
  const units = Uint16Array.from([...'\ufefff\tLn\n100\t61'].map((c) => c.charCodeAt(0)));
  const bytes = new Uint8Array(units.length * 2);
  const view = new DataView(bytes.buffer);
  for (const [i, unit] of units.entries()) view.setUint16(2 * i, unit, encoding === 'utf-16le');
  const reading = await readMeasuredFile(file(bytes), 12);
  expect(reading.ok && reading.columns).toEqual([
    { name: 'club floor', quantity: 'impact', bands_Hz: [100], values_dB: [61] },
  ]);
});

describe('refused', () => {
  const problems = (text: string, room = 12) => {
    const reading = readMeasured(text, 'x', room);
    return reading.ok ? [] : reading.problems;
  };

  test('a file without R or Ln', () => {
    expect(problems('f;delta L\n100;3')).toEqual(['Expected a column of R (TL) or Ln with values, got "delta L".']);
    expect(problems('f;R\n100;')).toEqual(['Expected a column of R (TL) or Ln with values, got "R".']);
  });

  test('more columns than the cell has room for', () => {
    expect(problems('f;R;R;R\n100;1;2;3', 2)).toEqual([
      `Expected at most 2 columns, since a cell holds ${LIMITS.measured}, got 3.`,
    ]);
  });

  test('a file too big to be a table of bands, before any of it is read', async () => {
    const reading = await readMeasuredFile(file(new Uint8Array(4_000_001)), 12);
    expect(reading).toEqual({ ok: false, problems: ['Expected at most 4000000 bytes, got 4000001.'] });
  });
});

test('what a set holds is said in words', () => {
  const say = (bands_Hz: readonly number[]) => bandWords({ quantity: 'airborne', bands_Hz });
  expect(say([100, 125, 160])).toBe('airborne, 3 one-third octaves, 100 to 160 Hz');
  expect(say([125, 250])).toBe('airborne, 2 octaves, 125 to 250 Hz');
  expect(say([500])).toBe('airborne, 1 one-third octave, 500 Hz');
});
