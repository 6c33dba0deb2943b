import { describe, expect, it } from 'vitest';
import { readBandCsv } from '#src/quantities/band-csv.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';

/** Long enough that work growing with the square of the length would outlast the test's time limit many times over. */
const LONG = 400_000;

describe('text made to be slow to read', () => {
  it.each([
    ['blanks inside a number', `1${' '.repeat(LONG)}x`],
    ['digits', '1'.repeat(LONG)],
    ['groups of digits', '1 111'.repeat(LONG / 5)],
    ['separators', '1.,'.repeat(LONG / 3)],
    ['dashes', `1${' -'.repeat(LONG / 2)}`],
    ['quotes', `5${"'".repeat(LONG)}`],
    ['letters', `5 ${'m'.repeat(LONG)}`],
    ['slashes', '1/'.repeat(LONG / 2)],
  ])('a quantity of many %s is refused in good time', (_what, text) => {
    for (const kind of ['length', 'density', 'ratio'] as const) expect(parseQuantity(text, kind, 'SI').ok).toBe(false);
  });

  it.each([
    ['brackets in the heading', `f;R;${'('.repeat(LONG)}\n100;5;1`],
    ['quotes', `f;R\n100;${'"'.repeat(LONG)}`],
    ['cells', `f;R\n${';'.repeat(LONG)}`],
    ['lines', `f;R\n${'\n'.repeat(LONG)}100;x`],
    ['blanks', `f R\n100${' '.repeat(LONG)}x`],
  ])('a table with many %s is read or refused in good time', (_what, text) => {
    const reading = readBandCsv(text);
    expect(reading.ok ? reading.bands_Hz : reading.problems.length).toBeTruthy();
  });
});
