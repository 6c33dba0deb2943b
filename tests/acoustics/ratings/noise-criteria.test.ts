import { describe, expect, it } from 'vitest';
import { nc } from '#src/acoustics/ratings/nc.ts';
import { nr } from '#src/acoustics/ratings/nr.ts';
import { rcMark2 } from '#src/acoustics/ratings/rc-mark-2.ts';
import { NC_TABLES, type NcTableName } from '#src/acoustics/standards/noise-criteria.ts';
import { PUBLISHED_CASES } from '../../published/ratings-cases.ts';
import { asSpectrum } from './as-spectrum.ts';

const OCTAVES = [63, 125, 250, 500, 1000, 2000, 4000, 8000];

describe('NC', () => {
  it.each(PUBLISHED_CASES.filter((c) => c.rating === 'nc'))('$source: $id ($verified)', (c) => {
    const result = nc(asSpectrum(c.input as Record<string, number>), c.args.table as NcTableName);
    expect(result.nc).toBeCloseTo(c.expected.nc, 9);
    expect(result).toMatchObject({
      ncRounded: c.expected.nc_int,
      curve: c.expected.curve5,
      governing_Hz: c.expected.governing,
      below: c.expected.below,
      above: c.expected.above,
      SIL_dB: 44,
      exceedsSIL: true,
    });
  });

  it.each(['S12.2', 'Beranek'] as const)('each curve of %s is rated by its own number', (table) => {
    const { lowestBand_Hz, curves } = NC_TABLES[table];
    for (const [number, levels] of Object.entries(curves)) {
      const bands_Hz = [16, 31.5, ...OCTAVES].filter((f) => f >= lowestBand_Hz);
      expect(nc({ bands_Hz, values_dB: levels }, table)).toMatchObject({
        nc: Number(number),
        below: false,
        above: false,
      });
    }
  });

  it('is below the lowest curve and above the highest, and says so', () => {
    const at = (level: number) => nc({ bands_Hz: OCTAVES, values_dB: OCTAVES.map(() => level) });
    expect(at(5)).toMatchObject({ nc: 15, below: true, above: false });
    expect(at(95)).toMatchObject({ nc: 70, below: false, above: true, curve: NaN });
  });

  it('does without 16, 31.5 and 8000 Hz, names them, and refuses without 250 Hz', () => {
    const core = OCTAVES.filter((f) => f <= 4000);
    const given = nc({ bands_Hz: core, values_dB: core.map(() => 40) });
    expect(given.missing_Hz).toEqual([16, 31.5, 8000]);
    expect(given.governing_Hz).toBe(4000);
    expect(nc({ bands_Hz: [125, 500], values_dB: [40, 40] }).nc).toBeNaN();
  });
});

describe('NR', () => {
  it('own case by hand: 1000 Hz at 45 dB is NR 45; 63 Hz at 85 dB is (85 − 35.5)/0.79 = 62.66', () => {
    const quiet = { bands_Hz: OCTAVES, values_dB: [40, 40, 40, 40, 45, 30, 20, 10] };
    expect(nr(quiet)).toMatchObject({ nr: 45, nrRounded: 45, governing_Hz: 1000 });
    const rumble = { bands_Hz: OCTAVES, values_dB: [85, 40, 40, 40, 45, 30, 20, 10] };
    expect(nr(rumble).nr).toBeCloseTo(62.658, 3);
    expect(nr(rumble)).toMatchObject({ nrRounded: 63, governing_Hz: 63 });
  });

  it('is NaN without 63 Hz', () => {
    expect(nr({ bands_Hz: [125, 250, 500], values_dB: [1, 1, 1] }).nr).toBeNaN();
  });
});

describe('RC Mark II', () => {
  it.each(PUBLISHED_CASES.filter((c) => c.rating === 'rc_mark2'))('$source: $id ($verified)', (c) => {
    const result = rcMark2(asSpectrum(c.input as Record<string, number>));
    expect(result.RC).toBe(c.expected.RC);
    expect(result.tag).toBe(c.expected.tag);
    expect(result.quality).toBe('neutral');
    expect(result.QAI_dB).toBeCloseTo(c.expected.QAI, 3);
    for (const region of ['LF', 'MF', 'HF'] as const) {
      expect(result.deviation_dB[region]).toBeCloseTo(c.expected.dev[region], 3);
    }
  });

  it('a spectrum along the curve is neutral; 12 dB more below 100 Hz rumbles and may be felt', () => {
    const bands_Hz = [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000];
    const curve = [65, 65, 60, 55, 50, 45, 40, 35, 30];
    expect(rcMark2({ bands_Hz, values_dB: curve })).toMatchObject({ RC: 40, QAI_dB: expect.closeTo(0, 9), tag: 'N' });
    const rumble = rcMark2({ bands_Hz, values_dB: curve.map((l, i) => (i < 3 ? l + 12 : l)) });
    expect(rumble).toMatchObject({ RC: 40, tag: 'LF', quality: 'objectionable', vibration: 'A' });
    expect(rumble.QAI_dB).toBeCloseTo(12, 9);
  });

  it('without the lowest bands only the level is given', () => {
    const result = rcMark2({ bands_Hz: [500, 1000, 2000], values_dB: [38, 31, 24] });
    expect(result).toMatchObject({ RC: 31, QAI_dB: NaN });
    expect(result.tag).toBeUndefined();
  });
});
