import { describe, expect, it } from 'vitest';
import { type LevelSpectrum, levelsOf, readLevels } from '../../src/commands/read-levels.ts';

describe('levels from a CSV file', () => {
  it('one-third octaves are taken as they are', () => {
    expect(levelsOf('a/drums.csv', '# invented\nf;level\n100;80,5\n125;\n')).toEqual({
      file: 'drums.csv',
      bands_Hz: [100, 125],
      values_dB: [80.5, Number.NaN],
      notices: [],
    });
  });

  it('octaves are spread over their thirds, 10 lg 3 = 4.77 dB less each, and that is said', () => {
    const read = levelsOf('drums.csv', 'frequency,level\n63,90\n125,84.77\n');
    expect(read).toMatchObject({ bands_Hz: [50, 63, 80, 100, 125, 160] });
    const { values_dB, notices } = read as LevelSpectrum;
    expect(values_dB[0]).toBeCloseTo(85.229, 3);
    expect(values_dB[5]).toBeCloseTo(79.999, 3);
    expect(notices).toEqual([
      'octaves are spread over their one-third octaves with equal energy, 4.77 dB less each (assumed)',
    ]);
  });

  it('other columns are left out, and that is said too', () => {
    expect(levelsOf('x.csv', 'f,level,R\n100,80,40\n')).toMatchObject({
      notices: ['column "R" is left out: it holds no levels'],
    });
  });

  it.each([
    ['', 'Expected a heading line and bands, got nothing (line 1).'],
    ['f,level\n', 'Expected bands after the heading line, got none (line 1).'],
    [
      'f,level\n110,80\n',
      'Expected a mid-band frequency of IEC 61260-1 in Hz, such as 125, got "110" (line 2, column 1).',
    ],
    ['f,level\n100,loud\n', 'Expected a level from -50 to 200 dB, or nothing, got "loud" (line 2, column 2).'],
    ['f,level\n100,\n', 'Expected a level in at least one band, got none.'],
    ['f,R\n100,40\n', 'Expected one column of levels (heading "level", dB), got "R".'],
    [
      'f,level drums,level bells\n100,80,70\n',
      'Expected one column of levels (heading "level", dB), got "level drums", "level bells".',
    ],
  ])('%j is refused: %s', (text, problem) => {
    expect(levelsOf('drums.csv', text)).toEqual([`drums.csv: ${problem}`]);
  });

  it('a file that is not there is named', () => {
    expect(readLevels('nowhere/drums.csv')).toEqual([expect.stringMatching(/^drums\.csv cannot be read: ENOENT/)]);
  });
});
