import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantityOfHeading } from '#src/quantities/band-columns.ts';
import { readBandCsv } from '#src/quantities/band-csv.ts';

function problemsOf(text: string): string[] {
  const reading = readBandCsv(text);
  return reading.ok ? [] : reading.problems.map((p) => p.message);
}

describe('a table of bands', () => {
  it.each([
    ['commas', 'f (Hz),R (dB),Ln\n100,20.4,67\n125,16.3,67.5\n160,,68\n'],
    ['semicolons and decimal commas', "Frequency;TL;L'n\r\n125;16,3;67,5\r\n100;20,4;67\r\n160;-;68\r\n"],
    ['tabs', '# measured in March\n\nHz\tR [dB]\tLn,dB\n160\tn/a\t68\n100\t20.4\t67\n125\t16.3\t67.5'],
    ['blanks', 'f_Hz TL_dB Ln_dB\n100 20.4 67\n125 16.3 67.5\n160 NaN 68\n'],
    ['quotes and a byte order mark', '\uFEFF"f","R, ""north""","Ln"\n"100","20.4","67"\n125,16.3,67.5\n160,,68'],
  ])('is read with %s', (_how, text) => {
    const reading = readBandCsv(text);
    if (!reading.ok) throw new Error(reading.problems[0]?.message);
    expect(reading.bandWidth).toBe('third');
    expect(reading.bands_Hz).toEqual([100, 125, 160]);
    expect(reading.columns.map((c) => [c.quantity, c.values_dB])).toEqual([
      ['R', [20.4, 16.3, NaN]],
      ['Ln', [67, 67.5, 68]],
    ]);
  });

  it('takes exact mid-bands, kilohertz and 31 for 31.5, and sees octaves', () => {
    const reading = readBandCsv('f,R\n31,20\n63.1,25\n125.89,30\n1k,50\n2 kHz,60\n');
    expect(reading).toMatchObject({ ok: true, bandWidth: 'octave', bands_Hz: [31.5, 63, 125, 1000, 2000] });
  });

  it('keeps several columns of one quantity apart by their headings', () => {
    const reading = readBandCsv('f;R floor 1;R floor 2\n500;50;55\n');
    expect(reading).toMatchObject({ columns: [{ name: 'R floor 1' }, { name: 'R floor 2' }] });
  });

  it('says which column it leaves out and which value was a lower limit', () => {
    const reading = readBandCsv('f;R;remark\n500;≥ 61,5;loud fan\n');
    expect(reading).toMatchObject({
      ok: true,
      columns: [{ values_dB: [61.5] }],
      notices: [
        'column 3 "remark" is left out: its heading is not known',
        'line 2, column 2: "≥ 61,5" counts as 61.5 dB',
      ],
    });
  });
});

describe('headings', () => {
  it.each([
    [
      'frequency',
      ['f', 'f_Hz', 'Freq. (Hz)', 'Hz', 'Band', 'One-third octave', 'Centre frequency [Hz]', 'octave band'],
    ],
    [
      'R',
      ['R', 'R (dB)', 'R_dB', 'TL', 'TL dB', 'STL', 'Transmission loss', 'sound reduction index', 'SRI', 'R’ lab 2'],
    ],
    ['Ln', ['Ln', 'L_n', 'L’n', "L'n, dB", 'Ln_dB', 'normalized impact sound pressure level', 'Impact level']],
    ['improvement', ['ΔL', '∆L dB', 'dL', 'delta L', 'Improvement', 'Reduction of impact sound']],
    ['level', ['L', 'Lp', 'SPL', 'Level', 'Noise (dB)', 'Sound pressure level']],
    [undefined, ['', 'remark', 'T', 'Rw', 'Limit', 'number', "D'nT"]],
    [undefined, ['Level difference D', 'Noise reduction (dB)', 'R uncertainty', 'TL, standard deviation', 'Ln error']],
  ] as const)('%s', (quantity, headings) => {
    expect(headings.map(quantityOfHeading)).toEqual(headings.map(() => quantity));
  });
});

describe('what cannot be read', () => {
  it.each([
    ['', 'Expected a heading line and bands, got nothing (line 1).'],
    ['100;20\n125;30', 'Expected a heading for the frequency, such as "f (Hz)", got "100 | 20" (line 1).'],
    ['f;T\n100;20', 'Expected a heading for values (frequency, R or TL, Ln, delta L, level), got "f | T" (line 1).'],
    ['f;R;Hz\n100;20;1', 'Expected one frequency column, got another (line 1, column 3).'],
    ['f;R\n', 'Expected bands after the heading line, got none (line 1).'],
    [
      'f,R\n100,20,4\n',
      'Expected 2 cells as in the heading (with decimal commas, separate by ; or tab), got 3 (line 2).',
    ],
    ['f;R\n130;20', 'Expected a mid-band frequency of IEC 61260-1 in Hz, such as 125, got "130" (line 2, column 1).'],
    ['f;R\n;20', 'Expected a mid-band frequency of IEC 61260-1 in Hz, such as 125, got nothing (line 2, column 1).'],
    ['f;R\n100;2O', 'Expected a level from -50 to 200 dB, or nothing, got "2O" (line 2, column 2).'],
    ['f;R\n100;1e9', 'Expected a level from -50 to 200 dB, or nothing, got "1e9" (line 2, column 2).'],
    ['f;R\n100;20\n#\n100;21', 'Expected each band once (100 Hz also in line 2), got 100 Hz (line 4, column 1).'],
  ])('%j', (text, message) => {
    expect(problemsOf(text)[0]).toBe(message);
  });

  it('names all problems at once, up to twenty, and counts the rest', () => {
    expect(problemsOf('f;R\n100;x\n125;y\n7;1')).toHaveLength(3);
    const many = problemsOf(`f;R\n${'x;y\n'.repeat(100)}`);
    expect(many).toHaveLength(21);
    expect(many.at(-1)).toBe('180 more problems are not listed.');
  });

  it('refuses a text too long to be a table of bands', () => {
    expect(problemsOf('f;R\n'.repeat(300_000))).toEqual(['Expected at most 1000000 characters, got 1200000.']);
  });

  it('never throws, and never gives bands out of order or twice', () => {
    const cell = fc.oneof(fc.constantFrom('f', 'R', 'Ln', '100', '125', '1,5', '"', '', '#', '≥3'), fc.string());
    const text = fc.array(
      fc.array(cell, { maxLength: 4 }).map((cells) => cells.join(';')),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(text, (lines) => {
        const reading = readBandCsv(['f;R', ...lines].join('\n'));
        const steps = reading.ok ? reading.bands_Hz.slice(1).map((f, i) => f - reading.bands_Hz[i]!) : [];
        expect(reading.ok || reading.problems.length > 0).toBe(true);
        expect(steps.every((s) => s > 0)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
