import { describe, expect, it } from 'vitest';
import { PUBLISHED_CASES } from '../published/ratings-cases.ts';
import { runCommand } from './run-command.ts';

const rate = (input: string, ...args: string[]) => runCommand('rate', args, input);

const bands = PUBLISHED_CASES.find((c) => c.id === 'iso717-1-C2')!.input as Record<string, number>;
const csv = `f;R\n${Object.entries(bands)
  .map(([f, r]) => `${f};${String(r).replace('.', ',')}`)
  .join('\n')}\n`;

describe('npm run rate', { timeout: 60_000 }, () => {
  it('ISO 717-1 Annex C, table C.2: prints Rw 30 (−2; −4 from 50 to 5000 Hz) and how it came about', () => {
    const { code, out, err } = rate(csv, '-');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/Rw +30 +ISO 717-1 +deficiencies 31\.8 in all, 8\.5 at 3150 Hz; the sum governs/);
    expect(out).toMatch(/Ctr,50-5000 +−4/);
  });

  it('prints the same as JSON, gaps as null', () => {
    const { code, out } = rate('f,R,Ln\n500,40,60\n', '-', '--json');
    expect(code).toBe(0);
    const result = JSON.parse(out);
    expect(result).toMatchObject({ file: 'standard input', bandWidth: 'third', bands_Hz: [500] });
    expect(result.columns[0].ratings[0]).toMatchObject({ name: 'STC', value: null });
  });

  it('names what is wrong, with line and column, and exits with 1', () => {
    const { code, out, err } = rate('f,R\n500,4O\n130,5\n', '-');
    expect([code, out]).toEqual([1, '']);
    expect(err).toBe(
      'standard input: Expected a level from -50 to 200 dB, or nothing, got "4O" (line 2, column 2).\n' +
        'standard input: Expected a mid-band frequency of IEC 61260-1 in Hz, such as 125, got "130" (line 3, column 1).\n',
    );
  });

  it('exits with 1 for a file that is not there and with 2 for wrong use', () => {
    expect(rate('', 'no-such-file.csv')).toMatchObject({
      code: 1,
      err: expect.stringContaining('no-such-file.csv cannot be read'),
    });
    expect(rate('')).toMatchObject({ code: 2, err: expect.stringContaining('Usage') });
    expect(rate('', '--unknown', '-').code).toBe(2);
    expect(rate('', '--help')).toMatchObject({ code: 0, out: expect.stringContaining('Usage') });
  });
});
